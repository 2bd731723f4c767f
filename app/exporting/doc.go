// Package exporting is the page on which everything is taken away: what, for which
// purpose, how large, where to. It previews a frame, measures what a file will take,
// writes in the background and can be cancelled. It promises that every format of
// export/formats is offered, and that the last choice is there the next time.
package exporting
