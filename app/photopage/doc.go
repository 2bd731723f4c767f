// Package photopage is the page on which a photo is laid under the court: the
// photo with its points and the play over it, and beside it what can be done. It
// promises that every change is a step of the session, and that the picture itself
// stays where it is unless the coach asks for it to be kept in the lesson.
package photopage
