package app

import (
	"homeside/app/panel"
	"homeside/words"
)

// askLesson asks what holds for the whole lesson and makes it one step.
func (e *Editor) askLesson() {
	e.session.Cancel()
	form := panel.NewLessonForm(e.session.Lesson())
	use := func() {
		l, err := form.Lesson()
		if err != nil {
			e.say(words.Refused(err))
			return
		}
		e.session.Do(words.T("change what holds for the lesson"), l)
	}
	q := e.askWith(words.T("The lesson"), form.Box, answer{label: words.T("Cancel")}, answer{label: words.T("Use"), do: use})
	q.size(560, 480).focus(form.FocusOn())
	e.trace.say("asking the lesson")
}
