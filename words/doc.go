// Package words is what Homeside says of a play, for the window, the exports and
// the command line: findings, measures, sentences about scores, shots and plans.
// It promises that every kind of finding has its sentence in every language there
// is (a test walks them all); the rest is English still.
package words
