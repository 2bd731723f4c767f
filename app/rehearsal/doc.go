// Package rehearsal is a play walked to a count, without a toolkit: count in, the rally at walk, half or match speed, a
// rest, and again. It promises that time only passes when told to, that every beep due in a stretch of time is told once
// and with its moment, and that nobody runs before the cautions have been read.
package rehearsal
