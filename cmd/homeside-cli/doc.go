// Command homeside-cli is the engine of Homeside without a window: it exports
// pictures and clips of a lesson and answers questions about it. Errors are one
// line on standard error; usage errors and unreadable input exit with 2.
package main
