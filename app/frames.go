package app

import (
	"fmt"
	"time"

	"fyne.io/fyne/v2"

	"homeside/canvas/compose"
)

// stripPause is how long the rally strip waits while a hand drags on the court,
// which needs the time for itself.
const stripPause = 100 * time.Millisecond

// frameFor tells the trace of every frame of the court: the time of day in
// nanoseconds when it was on the screen, the revision it shows, how many of its
// pixels were drawn anew, and where the pointer was. Nothing listens unless the
// options ask for it.
func (e *Editor) frameFor(o Options) func(revision, pixels int) {
	if !o.Frames || e.trace == nil {
		return nil
	}
	e.timing = true
	return func(revision, pixels int) {
		e.seenFrames()
		at := e.court.Pointer()
		e.unseen = append(e.unseen, fmt.Sprintf("%d %d %.0f %.0f", revision, pixels, at.X, at.Y))
		fyne.Do(e.seenFrames) // comes after the window has been drawn and shown
	}
}

// seenFrames tells of the frames drawn: whatever comes after them, a move of the
// pointer among it, they are on the screen.
func (e *Editor) seenFrames() {
	for _, f := range e.unseen {
		e.trace.say("frame %d %s", time.Now().UnixNano(), f)
	}
	e.unseen = nil
}

// beingTimed says whether frames are timed just now, of which telling where things
// are would take a part.
func (e *Editor) beingTimed() bool {
	return e.timing && (e.session.Previewing() || e.session.Playing())
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
