// Package edit holds the named changes of a lesson and the history of them.
// It promises pure functions: each takes a lesson or a play and gives a new
// one, sharing what did not change and changing nothing in place.
package edit
