package app

import (
	"fyne.io/fyne/v2"

	"homeside/app/rehearse"
	"homeside/words"
)

// newRehearsing is the window for partners on court. Its pages stand here: another
// one is a line more.
func (e *Editor) newRehearsing() *rehearse.Window {
	return rehearse.New(e.app, e.trace.say,
		rehearse.Choice{Name: words.T("Walk the play"), Tag: "walk", Open: e.newWalk},
	)
}

func (e *Editor) newWalk(keys func(*fyne.KeyEvent)) rehearse.Page {
	reduced := func() bool { return e.settings.Now().ReducedMotion }
	return rehearse.NewWalk(e.session, e.app.Preferences(), reduced, e.trace.say, keys)
}

// rehearse opens it.
func (e *Editor) rehearse() {
	e.leavePages()
	e.cancelDrags()
	e.rehearsing.Open()
}
