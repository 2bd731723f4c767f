// Package present shows a play to a group, full screen: court and height strip
// large, event by event, with as much in words and figures as is wanted, two plays
// on one clock, and strokes drawn over it by hand. It promises that nothing of the
// lesson changes but a shot whose top is dragged.
package present
