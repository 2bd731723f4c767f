// Package rallystrip is the rally strip in the window: lanes of time for the
// ball and the players, event lines, the play head. It promises that a press or
// a drag shows that moment; it talks to nothing but the session.
package rallystrip
