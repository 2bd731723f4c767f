// Command homeside is the editor. It opens the lesson file it is given, or the
// built-in lesson.
package main
