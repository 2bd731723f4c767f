// Package signal is how often to switch and how often to stay when the opponents
// aim left or right: the 2 x 2 zero-sum game of four chances of winning the rally,
// a seeded sequence of signals to print, and what the tally of a match says of
// the four chances. It promises finite figures, the same sequence for the same
// seed, and no chance where nothing has been counted.
package signal
