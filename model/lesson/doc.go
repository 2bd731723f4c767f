// Package lesson is the document: teams, plays, shots, keyframes, marks and
// cues, as values that are never changed in place. It promises names and units
// for everything a coach states, sensible zero values, and Validate, which
// names whatever lies outside the bounds. What follows from a lesson (times,
// ball flight, runs) is package rally's.
package lesson
