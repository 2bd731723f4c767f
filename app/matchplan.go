package app

import (
	"io"
	"path/filepath"

	"homeside/app/panel"
	"homeside/words"
)

// newMatchPlan is the match plan's page; it takes the court's place while it is
// open, so that menus and undo keep working.
func (e *Editor) newMatchPlan() *panel.MatchPlan {
	return panel.NewMatchPlan(e.session, panel.MatchPlanEvents{
		Close: e.closeMatchPlan, Save: e.askSaveText, Pairs: e.pairEvents(),
		Painted: func() {
			e.traceControls()
			e.trace.say("painted plan")
		},
	})
}

func (e *Editor) openMatchPlan() {
	e.court.Cancel()
	e.leavePages()
	e.takePair()
	e.closeStart()
	e.session.Pause()
	e.leaveCourt()
	e.plan.Open()
	e.trace.say("match plan open")
}

func (e *Editor) closeMatchPlan() {
	e.backToCourt()
	e.trace.say("match plan closed")
}

// askSaveText asks for a file and writes a text into it.
func (e *Editor) askSaveText(name, text string) {
	path := filepath.Join(filepath.Dir(e.suggestedPath()), name)
	e.askPath(words.T("Save the text"), words.T("Save"), path, nil, func(path string) {
		if filepath.Ext(path) == "" {
			path += ".txt"
		}
		e.unlessExists(path, "", func() { e.saveText(path, text) })
	})
}

func (e *Editor) saveText(path, text string) {
	e.saveFile(path, words.T("Nothing was written. Your lesson is unchanged."), func(w io.Writer) error {
		_, err := io.WriteString(w, text)
		return err
	}, nil)
}
