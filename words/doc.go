// Package words is the one catalogue of what Homeside says, for the window, the
// exports and the command line: labels, findings, measures. It promises that
// every key has its words in every language (a test walks them all).
package words
