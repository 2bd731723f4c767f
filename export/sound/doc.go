// Package sound puts a solved play in beeps: a pitch each for a ball struck, a bounce and a player's arrival, and for
// counting in. It promises that in the WAV every beep begins within a sample of its moment in the clip cut with the same
// options, that no two kinds share a pitch, and that the same play makes the same bytes.
package sound
