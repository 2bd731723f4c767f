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
	e.leaveCourt()
	e.start.Open(e.recentLessons(), !e.desk.Blank())
	e.focusStart()
	e.trace.say("start page open")
}

// focusStart gives the keys to the start page, if it is shown: nothing can take them
// before it is laid out.
func (e *Editor) focusStart() {
	if e.up && e.start.Shown() {
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

// leaveCourt takes the court away for a page.
func (e *Editor) leaveCourt() {
	e.editing.Hide()
	e.guide.follow()
}

// showCourt shows the court again.
func (e *Editor) showCourt() {
	e.editing.Show()
	e.win.Canvas().Unfocus()
	e.guide.follow()
}

// backToCourt is what a page shows that is closed: the court or, without a lesson,
// the start page.
func (e *Editor) backToCourt() {
	if e.desk.Blank() {
		e.openStart()
		return
	}
	e.showCourt()
}

// closeStart goes back to the court, over which what was said of the start page is
// not true any more.
func (e *Editor) closeStart() {
	if !e.start.Shown() {
		return
	}
	e.start.Hide()
	e.say("")
	e.showCourt()
	e.trace.say("start page closed")
}

// leaveStart goes to the court where there is a lesson to see.
func (e *Editor) leaveStart() {
	if e.start.Shown() && !e.desk.Blank() {
		e.closeStart()
	}
}
