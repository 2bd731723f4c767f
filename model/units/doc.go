// Package units holds the units of Homeside as types, so that a foot is never
// added to a metre. Every conversion factor of the project stands here, once.
// It promises exact factors (international foot, BIPM SI brochure) and no state.
package units
