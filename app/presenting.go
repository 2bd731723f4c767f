package app

import "homeside/words"

// present shows the play to a group, full screen.
func (e *Editor) present() {
	if e.session.Current() == nil {
		e.say(words.T("There is no play to show."))
		return
	}
	e.leavePages()
	e.cancelDrags()
	e.presenter.Open()
}

// tracePresenter tells what the presenter does and where its handle is.
func (e *Editor) tracePresenter(format string, args ...any) {
	if e.trace == nil {
		return
	}
	if at, ok := e.presenter.OnScreen(); ok {
		e.trace.say("at present.apex %.0f %.0f", at.X, at.Y)
	}
	e.trace.say(format, args...)
}
