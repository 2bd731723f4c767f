// Package still writes one moment of a play as a picture: pixels (PNG) or shapes
// (SVG, PDF). It sees scenes only. It promises the same bytes for the same scene,
// one look in every format, and an end as soon as the context is cancelled.
package still
