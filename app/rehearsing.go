package app

import (
	"homeside/app/drilling"
	"homeside/app/rehearse"
	"homeside/words"
)

// newRehearsing is the window for partners on court. Its pages stand here: another
// one is a line more.
func (e *Editor) newRehearsing() *rehearse.Window {
	return rehearse.New(e.app, e.trace.say,
		rehearse.Choice{Name: words.T("Walk the play"), Tag: "walk", Open: e.newWalk},
		rehearse.Choice{Name: words.T("Signal drill"), Tag: "signals", Open: func() rehearse.Page {
			var page *drilling.Signals
			page = drilling.NewSignals(e.drill(func() { e.traceNamed(page.Named()) }))
			return page
		}},
		rehearse.Choice{Name: words.T("Score drill"), Tag: "scores", Open: func() rehearse.Page {
			var page *drilling.Scores
			page = drilling.NewScores(e.drill(func() { e.traceNamed(page.Named()) }))
			return page
		}},
	)
}

func (e *Editor) newWalk() rehearse.Page {
	return rehearse.NewWalk(e.session, e.app.Preferences(), e.reduced, e.trace.say)
}

// drill is what a drill needs; painted is called from within its paints.
func (e *Editor) drill(painted func()) drilling.Options {
	return drilling.Options{Session: e.session, Prefs: e.app.Preferences(), Reduced: e.reduced, Painted: painted, Say: e.trace.say}
}

// reduced says whether nothing is to move by itself.
func (e *Editor) reduced() bool { return e.settings.Now().ReducedMotion }

// rehearse opens it.
func (e *Editor) rehearse() {
	e.leavePages()
	e.cancelDrags()
	e.rehearsing.Open()
}
