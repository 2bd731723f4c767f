package app

import (
	"time"

	"fyne.io/fyne/v2"

	"homeside/canvas/compose"
)

// frameFor tells the trace of every frame of the court: the time of day in
// nanoseconds when it was on the screen, the revision it shows and how many of
// its pixels were drawn anew. Nothing listens unless the options ask for it.
func (e *Editor) frameFor(o Options) func(revision, pixels int) {
	if !o.Frames || e.trace == nil {
		return nil
	}
	return func(revision, pixels int) {
		fyne.Do(func() { // comes after the window has been drawn and shown
			e.trace.say("frame %d %d %d", time.Now().UnixNano(), revision, pixels)
		})
	}
}

// whereabouts are what decides where things are on the court in the window.
type whereabouts struct {
	revision int
	sight    compose.Sight
	place    fyne.Position
	size     fyne.Size
	zoom     float64
}

func (e *Editor) whereabouts(revision int) whereabouts {
	return whereabouts{revision + 1, e.court.Sight(), fyne.CurrentApp().Driver().AbsolutePositionForObject(e.court), e.court.Size(), e.court.Zoomed()}
}

// zoomed tells the trace how large the court is drawn.
func (e *Editor) zoomed(scale float64) { e.trace.say("zoomed %.2f", scale) }
