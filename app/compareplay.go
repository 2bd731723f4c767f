package app

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/dialog"

	"homeside/app/panel"
	"homeside/words"
)

// askCompare lets a play be picked that is shown beside the present one, on one clock.
func (e *Editor) askCompare() {
	e.rest()
	if len(e.session.Lesson().Plays) < 2 {
		e.say(words.T("There is no other play in this lesson to compare with."))
		return
	}
	var d *dialog.CustomDialog
	list := panel.NewPlayPicker(e.session, func(i int) {
		d.Hide()
		e.session.Compare(i)
		e.say(words.T("Dashed and hollow: play %s.", panel.PlayName(e.session, i)))
		e.trace.say("comparing: %s", e.tell.Text())
	}, func() { d.Hide() })
	d = dialog.NewCustom(words.T("Compare with another play"), words.T("Cancel"), list.List, e.win)
	d.Resize(fyne.NewSize(480, 560))
	d.Show()
	e.win.Canvas().Focus(list.List)
	e.trace.say("choosing a play to compare")
}

func (e *Editor) stopComparing() {
	e.session.StopComparing()
	e.say("")
}
