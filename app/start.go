package app

import (
	"homeside/app/panel"
	"homeside/model/lesson"
)

// newStart is the start page; like the match plan it takes the court's place.
func (e *Editor) newStart() *panel.Start {
	return panel.NewStart(builtIn(), panel.StartEvents{
		Draw:    func(l lesson.Lesson) { e.openUnsaved(l, ""); e.trace.say("first play drawn"); e.beginGuide() },
		BuiltIn: func(l lesson.Lesson) { e.openLesson(l, ""); e.trace.say("built-in lesson %s", l.Title) },
		Recent:  e.open,
		Open:    e.guard(e.askOpen),
		Empty:   e.guard(e.newLesson),
		Close:   e.closeStart,
		Brief:   briefPath,
		Painted: func() {
			e.traceControls()
			e.trace.say("painted start")
		},
	})
}

// openStart shows the start page.
func (e *Editor) openStart() {
	e.leavePages()
	e.court.Cancel()
	e.session.Pause()
	e.editing.Hide()
	e.start.Open(e.recentLessons(), !e.desk.Blank())
	e.focusStart()
	e.trace.say("start page open")
}

// focusStart gives the keys to the start page, if it is shown.
func (e *Editor) focusStart() {
	if e.start.Shown() {
		e.win.Canvas().Focus(e.start.FocusOn())
	}
}

// takePair lets what is begun over the start page begin with the pair described there,
// at the score that is said.
func (e *Editor) takePair() {
	if l, at, ok := e.start.Pair(); ok && e.start.Shown() {
		e.desk.Begin(l, at)
	}
}

// backToCourt is what a page shows that is closed: the court or, without a lesson,
// the start page.
func (e *Editor) backToCourt() {
	if e.desk.Blank() {
		e.openStart()
		return
	}
	e.editing.Show()
	e.win.Canvas().Unfocus()
}

// closeStart goes back to the court.
func (e *Editor) closeStart() {
	if !e.start.Shown() {
		return
	}
	e.start.Hide()
	e.editing.Show()
	e.win.Canvas().Unfocus()
	e.trace.say("start page closed")
}

// leaveStart goes to the court where there is a lesson to see.
func (e *Editor) leaveStart() {
	if e.start.Shown() && !e.desk.Blank() {
		e.closeStart()
	}
}
