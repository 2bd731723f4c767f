// Package panel holds the window's lists and strips of words: the plays, the
// score strip. It promises widgets that read the session and call back; they
// keep no state of the lesson.
package panel
