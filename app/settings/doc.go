// Package settings is what a person chooses once for every lesson: language,
// look, letters, motion, measures. It promises plain values and that who asked
// to be told hears of every change; where they are kept is the window's matter.
package settings
