package app

import (
	"fyne.io/fyne/v2"

	"homeside/app/panel"
	"homeside/model/court"
	"homeside/model/formation"
	"homeside/model/lesson"
	"homeside/words"
)

// askNewPlay opens the chooser of a play for the score of the play shown.
func (e *Editor) askNewPlay() {
	e.rest()
	e.takePair()
	var p *panel.NewPlay
	c := e.newChooser(words.T("Insert the play"), func() { e.inserted(p.Insert()) })
	p, err := panel.NewNewPlay(e.session, c.ready)
	if err != nil {
		e.refuse(err)
		return
	}
	state, err := e.session.ScoreState()
	if err != nil {
		e.refuse(err)
		return
	}
	c.show(words.T("New play at %v", state.Call()), p.Box, p.Gallery, p.Named())
}

// askWhatIf opens the chooser of what can be played otherwise in the play shown.
func (e *Editor) askWhatIf() { e.askVariation(words.T("What if"), panel.NewWhatIf) }

// askMistakes opens the chooser of the usual mistakes of the play shown.
func (e *Editor) askMistakes() {
	e.askVariation(words.T("As it was, as it should be"), panel.NewMistakes)
}

func (e *Editor) askVariation(title string, of func(formation.Written, court.Rect) (*panel.Variations, error)) {
	e.rest()
	w, ok := e.session.Written()
	if !ok {
		e.say(words.NotWritten())
		e.trace.say("refused")
		return
	}
	v, err := of(w, e.session.Lesson().Venue.Surface())
	if err != nil {
		e.refuse(err)
		return
	}
	insert := func(step string, plays []lesson.Play) { e.inserted(e.session.InsertPlays(step, plays...)) }
	c := e.newChooser(words.T("Insert"), func() { insert(v.Chosen()) })
	all := answer{label: words.T("Insert all"), do: func() { insert(v.All()) }}
	c.show(title, v.Box, v.Gallery, map[string]fyne.CanvasObject{"variation-1": v.Gallery.Card(0)}, all)
}

// rest ends what the hand or the clock is doing before a dialog opens.
func (e *Editor) rest() {
	e.leavePages()
	e.court.Cancel()
	e.session.Pause()
}

// inserted says in the status line what has come in, or in one line why nothing has.
func (e *Editor) inserted(err error) {
	if err != nil {
		e.refuse(err)
		return
	}
	if p, ok := e.session.Play(); ok {
		e.say(words.T("Inserted: %s. All of it can be changed.", p.Title))
	}
}

func (e *Editor) refuse(err error) {
	e.say(words.FormationRefused(err, e.session.Lesson()))
	e.trace.say("refused: %v", err)
}
