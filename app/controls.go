package app

import (
	"maps"

	"fyne.io/fyne/v2"
)

// traceControls tells where the panels' visible controls are in the window, in
// the toolkit's units, so that a test can press them.
func (e *Editor) traceControls() { e.traceNamed(e.controls()) }

func (e *Editor) traceNamed(controls map[string]fyne.CanvasObject) {
	if !e.trace.written() {
		return
	}
	driver := fyne.CurrentApp().Driver()
	for name, o := range controls {
		corner, size := driver.AbsolutePositionForObject(o), o.Size()
		if !o.Visible() || corner.IsZero() { // folded away
			continue
		}
		e.trace.say("control %s %.0f %.0f", name, corner.X+size.Width/2, corner.Y+size.Height/2)
	}
}

func (e *Editor) controls() map[string]fyne.CanvasObject {
	all := e.score.Named()
	maps.Copy(all, e.tabs.Named())
	maps.Copy(all, e.start.Named())
	maps.Copy(all, e.guide.named())
	maps.Copy(all, e.plays.Named())
	maps.Copy(all, e.match.Named())
	maps.Copy(all, e.checks.Named())
	maps.Copy(all, e.tell.Named())
	maps.Copy(all, e.plan.Named())
	maps.Copy(all, e.reels.Named())
	maps.Copy(all, e.exports.Named())
	return all
}
