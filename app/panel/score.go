package panel

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
	"homeside/app/session"
	"homeside/model/court"
	"homeside/model/game"
	"homeside/words"
)

// Score is the score strip: the situation as a sentence, what is still missing
// of it, and who has won the rally.
type Score struct {
	Box      *fyne.Container
	session  *session.Session
	sentence *widget.Label
	ask      *fyne.Container // what is missing, in as few rows as it fits
	wrong    *widget.Label   // what could not be, in one line
	won      [2]*heard.Button
	change   *heard.Button
	call     *callEntry
	calling  bool // the call is being changed
	sides    *sidesChoice
	wanting  bool   // the sides are being chosen
	Resized  func() // called when the strip may have grown or shrunk; nil means nobody asks
}

// NewScore is the score strip of a session.
func NewScore(s *session.Session) *Score {
	p := &Score{session: s, sentence: widget.NewLabel(""), ask: container.New(&flow{}), wrong: widget.NewLabel("")}
	p.sentence.Wrapping = fyne.TextWrapWord
	p.sentence.TextStyle.Bold = true
	p.wrong.Importance = widget.DangerImportance
	p.wrong.Truncation = fyne.TextTruncateEllipsis
	p.call = newCallEntry(p.takeCall)
	p.change = heard.NewButtonWithIcon(words.T("Score"), theme.DocumentCreateIcon(), p.toggleCall)
	p.change.Importance = widget.LowImportance
	p.sides = newSidesChoice(p.toggleSides, p.wantSides)
	for _, e := range court.Ends {
		p.won[e] = heard.NewButton("", func() { p.tell(s.RallyWon(e)) })
	}
	first := container.New(&answered{}, p.sentence, container.New(&flow{}, p.change, p.sides.button, p.won[court.Near], p.won[court.Far]))
	p.Box = container.NewVBox(first, p.ask, p.wrong)
	return p
}

// Refresh says the session's situation and asks what is missing.
func (p *Score) Refresh() {
	play, ok := p.session.Play()
	l := p.session.Lesson()
	if ok {
		p.sentence.SetText(words.Situation(l, play))
	} else {
		p.sentence.SetText(words.T("This lesson has no plays yet."))
	}
	over := p.session.InMatch() && p.session.MatchState().Over()
	if over {
		p.sentence.SetText(words.T("The game is over: %s", words.GameOver(l, p.session.MatchState())))
	}
	for _, e := range court.Ends {
		p.won[e].SetText(words.Won(l, e))
		show(p.won[e], ok && !over && !p.session.OutOfMatch())
	}
	show(p.change, ok && !over)
	show(p.sides.button, ok && !over)
	p.askMissing(ok && !over)
}

// askMissing fills the row under the sentence; without anything to ask or to
// say it takes no room.
func (p *Score) askMissing(ask bool) {
	m := p.session.Missing()
	p.ask.RemoveAll()
	switch {
	case !ask:
	case p.session.OutOfMatch():
		p.add(words.T("This play is not at the score of the match."))
		p.button(words.T("Back to the match"), p.session.LastState)
		p.button(words.T("Start a match here"), func() { p.tell(p.session.StartMatch()) })
	case m.Call || m.Serving || p.calling:
		p.askCall(m)
	case p.wanting:
		p.sides.show(p.session.Lesson())
		for _, o := range p.sides.parts {
			p.ask.Add(o)
		}
	}
	if ask {
		p.questions(m)
	}
	show(p.ask, len(p.ask.Objects) > 0)
	p.tell(m.Problem)
}

func (p *Score) askCall(m session.Missing) {
	l := p.session.Lesson()
	play, _ := p.session.Play()
	server, _ := play.Server()
	switch {
	case m.Call:
		p.add(words.T("Nobody has said the score."))
	case m.Serving:
		p.add(words.T("%s serves, but the score is called by the other team.", l.NameOf(server)))
	}
	p.call.show(l, play, m)
	p.ask.Add(p.call.box)
}

// questions asks one thing after the other, the first one first.
func (p *Score) questions(m session.Missing) {
	if len(m.Questions) == 0 || p.session.OutOfMatch() {
		return
	}
	q, l := m.Questions[0], p.session.Lesson()
	p.add(words.Question(l, q))
	for i, e := range court.Ends {
		if q.Kind == game.AskBegan {
			p.button(words.Team(l, e), func() { p.session.Began(e) })
			continue
		}
		id := game.PlayerOf(q.Team, i+1)
		p.button(l.NameOf(id), func() { p.session.Started(id) })
	}
}

func (p *Score) add(text string) { p.ask.Add(widget.NewLabel(text)) }

func (p *Score) button(text string, tapped func()) { p.ask.Add(heard.NewButton(text, tapped)) }

func (p *Score) toggleCall() {
	p.calling, p.wanting = !p.calling, false
	p.Refresh()
	if p.calling {
		p.call.focus(p.change)
	}
}

func (p *Score) toggleSides() {
	p.wanting, p.calling = !p.wanting, false
	p.Refresh()
}

// wantSides takes a goal for a pair's sides and writes the play for the score.
func (p *Score) wantSides(c goalChoice) {
	p.wanting = false
	if err := p.session.PlayForGoal(c.team, c.goal, c.who); err != nil {
		p.Refresh()
		p.tell(err)
	}
}

// takeCall takes a score that was typed in.
func (p *Score) takeCall(text string, serving court.End) {
	if err := p.session.Call(text, serving); err != nil {
		p.tell(err)
		return
	}
	p.calling = false
	p.Refresh()
}

// tell says in one line what could not be; nil says nothing.
func (p *Score) tell(err error) {
	text := ""
	if err != nil {
		text = words.Sentence(err)
	}
	p.wrong.SetText(text)
	show(p.wrong, text != "")
	invoke(p.Resized)
}

// Named are the strip's controls by name, for tests of the window.
func (p *Score) Named() map[string]fyne.CanvasObject {
	named := map[string]fyne.CanvasObject{"won-near": p.won[court.Near], "won-far": p.won[court.Far], "score": p.change, "call": p.call.entry,
		"sides": p.sides.button, "sides-goal": p.sides.goal}
	for i, o := range p.ask.Objects {
		if b, ok := o.(*heard.Button); ok {
			named["answer-"+string(rune('0'+i))] = b
		}
	}
	return named
}

func show(o fyne.CanvasObject, visible bool) {
	if visible {
		o.Show()
	} else {
		o.Hide()
	}
}
