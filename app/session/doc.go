// Package session is the editor's state without a window: the lesson and its
// history, the play and the moment shown, the draft of a gesture, what plays.
// It promises that Current is solved at most once for each change and that time
// comes in as an argument. It is for one goroutine.
package session
