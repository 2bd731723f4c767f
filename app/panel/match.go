package panel

import (
	"fmt"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
	"homeside/app/session"
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/words"
)

// walkHeight shows five states at a time.
const walkHeight = 170

// Match is the walk through the lesson's match with the tally of its rallies.
type Match struct {
	Box     *fyne.Container
	session *session.Session
	states  []game.State
	list    *heard.List
	steps   *fyne.Container
	say     *widget.Label
	draw    *heard.Button
	back    *heard.Button
	begin   *heard.Button
	tally   *tally
	counts  *widget.Label
	showing bool // the list is being told where the walk is
}

// NewMatch is the match walk of a session.
func NewMatch(s *session.Session) *Match {
	p := &Match{session: s, say: wrapped(), counts: wrapped(), tally: newTally(s)}
	p.list = heard.NewList(func() int { return len(p.states) }, newState, p.fill)
	p.list.OnSelected = p.selected
	p.draw = heard.NewButton(words.T("Draw this serve"), s.DrawState)
	p.begin = heard.NewButton(words.T("Start a match here"), func() {
		if err := s.StartMatch(); err != nil {
			p.say.SetText(words.Sentence(err))
			p.say.Show()
		}
	})
	p.back = heard.NewButton(words.T("Take the last rally back"), s.TakeBackRally)
	p.back.Importance = widget.LowImportance
	p.steps = container.NewGridWithColumns(4,
		heard.NewButtonWithIcon("", theme.MediaSkipPreviousIcon(), s.FirstState).Says(func() string { return words.T("To the start of the match") }),
		heard.NewButtonWithIcon("", theme.NavigateBackIcon(), s.PreviousState).Says(func() string { return words.T("One rally back") }),
		heard.NewButtonWithIcon("", theme.NavigateNextIcon(), s.NextState).Says(func() string { return words.T("One rally on") }),
		heard.NewButtonWithIcon("", theme.MediaSkipNextIcon(), s.LastState).Says(func() string { return words.T("To the end of the match") }),
	)
	tall := fynecanvas.NewRectangle(nil)
	tall.SetMinSize(fyne.NewSize(0, walkHeight))
	p.Box = container.NewVBox(p.steps, container.NewStack(tall, p.list), p.say, p.draw, p.begin, p.tally.box, p.counts, p.back)
	return p
}

func wrapped() *widget.Label {
	l := widget.NewLabel("")
	l.Wrapping = fyne.TextWrapWord
	return l
}

func newState() fyne.CanvasObject {
	l := widget.NewLabel("")
	l.Truncation = fyne.TextTruncateEllipsis
	return l
}

func (p *Match) fill(i widget.ListItemID, o fyne.CanvasObject) {
	label := o.(*widget.Label)
	label.TextStyle.Bold = i == p.session.MatchAt()
	label.SetText(fmt.Sprintf("%d. %s", i+1, words.MatchState(p.session.Lesson(), p.states[i])))
}

func (p *Match) selected(i widget.ListItemID) {
	if !p.showing && i != p.session.MatchAt() {
		p.session.ShowState(i)
	}
}

// Refresh shows the match and where the walk is in it.
func (p *Match) Refresh() {
	l := p.session.Lesson()
	begun := l.Match.Begun() && p.session.MatchProblem() == nil
	p.states = nil
	if begun {
		p.states = p.session.Match().States()
	}
	p.list.Refresh()
	if begun {
		p.showing = true
		p.list.Select(p.session.MatchAt())
		p.showing = false
	}
	p.sayWhere(begun)
	_, noted := p.session.Tally()
	show(p.tally.box, begun && noted && p.session.InMatch())
	p.tally.refresh()
	p.sayCounts(l)
	show(p.steps, begun)
	show(p.back, len(l.Match.Rallies) > 0)
}

// sayWhere says what the list cannot: that no match is kept, that a state has no
// play, that the ends change.
func (p *Match) sayWhere(begun bool) {
	text := ""
	switch {
	case p.session.MatchProblem() != nil:
		text = words.Sentence(p.session.MatchProblem())
	case !begun:
		text = words.T("No match is kept yet. Say above who won the rally, and the score, the server and everybody's places follow.")
	case !p.session.InMatch():
		text = words.T("The play shown is at another score.")
	case p.session.Match().Rallies() > 0 && p.changesEnds():
		text = words.EndsChange()
	}
	p.say.SetText(text)
	show(p.say, text != "")
	show(p.draw, begun && !p.session.InMatch() && !p.drawn())
	_, ok := p.session.Play()
	show(p.begin, ok && (!begun || !p.session.InMatch()))
}

// drawn says whether a play of the lesson is served at the walk's state.
func (p *Match) drawn() bool {
	for _, play := range p.session.Lesson().Plays {
		if play.Fits(p.session.MatchState()) {
			return true
		}
	}
	return false
}

func (p *Match) changesEnds() bool {
	i := p.session.MatchAt()
	return i > 0 && i < len(p.states) && game.ChangesEnds(p.states[i-1], p.states[i])
}

func (p *Match) sayCounts(l lesson.Lesson) {
	text := words.Counts(l, court.Near)
	if far := words.Counts(l, court.Far); far != "" {
		if text != "" {
			text += "\n"
		}
		text += far
	}
	p.counts.SetText(text)
	show(p.counts, text != "")
}

// Named are the walk's controls by name, for tests of the window.
func (p *Match) Named() map[string]fyne.CanvasObject {
	named := map[string]fyne.CanvasObject{"draw": p.draw, "begin": p.begin, "take-back": p.back}
	for i, name := range []string{"first", "previous", "next", "last"} {
		named[name] = p.steps.Objects[i]
	}
	return named
}
