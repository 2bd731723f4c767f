// Package frameclock lets time pass before every paint of a window. It promises to measure what has really gone by, on the
// window's own goroutine, and to tick only while somebody needs it.
package frameclock
