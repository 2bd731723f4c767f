// Package rules is the referee: numbered checks over a solved rally, each a pure
// function that says what it found, and fixes computed when asked for.
// It promises an answer for every sound lesson, the worst finding first, and
// that mirrored ends get mirrored findings. Faults are judged as run.
//
// Source: USA Pickleball Official Rulebook 2026, by the numbers that package
// finding keeps. What is our own reading or assumption is a named constant.
package rules
