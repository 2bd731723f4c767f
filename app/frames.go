package app

import (
	"time"

	"fyne.io/fyne/v2"
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

// zoomed tells the trace anew where things are.
func (e *Editor) zoomed(scale float64) {
	e.painted = -1
	e.trace.say("zoomed %.2f", scale)
}
