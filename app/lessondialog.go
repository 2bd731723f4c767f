package app

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/dialog"

	"homeside/app/panel"
	"homeside/words"
)

// askLesson asks what holds for the whole lesson and makes it one step.
func (e *Editor) askLesson() {
	e.session.Cancel()
	form := panel.NewLessonForm(e.session.Lesson())
	d := dialog.NewCustomConfirm(words.T("The lesson"), words.T("Use"), words.T("Cancel"), form.Box, func(ok bool) {
		if !ok {
			return
		}
		l, err := form.Lesson()
		if err != nil {
			e.say(words.Refused(err))
			return
		}
		e.session.Do(words.T("change what holds for the lesson"), l)
	}, e.win)
	d.Resize(fyne.NewSize(560, 480))
	d.Show()
	e.trace.say("asking the lesson")
}
