// Package courtview is the court in the window: it shows the session's moment,
// finds what is under the pointer and hands it to a gesture. It promises one paint
// for many changes and talks to nothing but the session; what a drag means is
// package gesture's.
package courtview
