// Package page writes plays as one HTML file that needs nothing else: a phone plays them on court, steps through them,
// counts in, beeps, asks for signals and prints a storyboard. It promises that what moves stays within half an inch of the
// rally, that no text of a lesson is ever taken for markup or script, and that the file asks nothing of any network.
package page
