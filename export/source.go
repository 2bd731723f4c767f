package export

import (
	"homeside/canvas"
	"homeside/model/units"
)

// Source gives the pictures of one play. It is an immutable snapshot: the same
// time gives the same scene, also to several goroutines at once.
type Source interface {
	// Span is the first and the last moment of the play.
	Span() (from, to units.Seconds)
	// Static is what stands still for the whole clip, with its background, at a
	// size in pixels.
	Static(width, height int) *canvas.Scene
	// Moving is what is drawn over Static at time t.
	Moving(width, height int, t units.Seconds) *canvas.Scene
}
