package panel

import (
	"image"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
	"homeside/app/session"
	"homeside/model/court"
	"homeside/model/plan"
	"homeside/model/roster"
	"homeside/words"
)

// MatchPlanEvents are what the match plan's page asks of the window. All may be nil.
type MatchPlanEvents struct {
	Close   func()                  // back to the court
	Save    func(name, text string) // a text to keep in a file
	Painted func()                  // the page has been painted anew
	Pairs   PairEvents
}

// MatchPlan is the page of a pair's whole game: what is asked for on top, below
// it the table, the starters, the signals or the roster of pairs.
type MatchPlan struct {
	*Page
	session *session.Session
	events  MatchPlanEvents
	team    *Dropdown
	policy  *Dropdown
	chances [2]*commitEntry
	served  [2]*widget.Label
	goal    *Dropdown
	goals   []goalChoice
	write   *heard.Button
	back    *heard.Button
	line    *widget.Label // what has been done, or what could not be
	said    lineText
	views   *views
	tall    *Tall
	table   *planTable
	scores  *planScores
	start   *starters
	signals *signals
	pairs   *pairs
	pulse   *fynecanvas.Raster
	made    int // the revision shown
}

// lineText is what stands on the page's line when no tip does.
type lineText struct {
	text       string
	importance widget.Importance
}

// NewMatchPlan is the match plan's page of a session, hidden until Open.
func NewMatchPlan(s *session.Session, events MatchPlanEvents) *MatchPlan {
	p := &MatchPlan{session: s, events: events, line: widget.NewLabel(""), made: -1}
	p.line.Truncation = fyne.TextTruncateEllipsis
	p.team = NewDropdown(nil, func(string) { p.remake() })
	p.policy = NewDropdown(nil, func(string) { p.remake() })
	p.goal = NewDropdown(nil, func(string) { p.wantFor() })
	p.goal.PlaceHolder = words.T("What do you want from your sides?")
	for _, e := range court.Ends {
		p.chances[e] = newCommitEntry(func(string) { p.remake() })
		p.chances[e].show("50")
		p.served[e] = widget.NewLabel("")
		p.served[e].Truncation = fyne.TextTruncateEllipsis
		p.served[e].Alignment = fyne.TextAlignTrailing
	}
	p.write = heard.NewButtonWithIcon(words.T("Write the whole match"), theme.ContentAddIcon(), p.writeMatch)
	p.back = heard.NewButtonWithIcon(words.T("Back to the court"), theme.NavigateBackIcon(), p.Close)
	p.pulse = fynecanvas.NewRaster(func(int, int) image.Image { p.painted(); return image.NewRGBA(image.Rect(0, 0, 1, 1)) })
	p.table, p.scores, p.start, p.signals = newPlanTable(p.open), newPlanScores(p.open), newStarters(), newSignals(s, p.save)
	p.pairs = newPairs(s, events.Pairs, p.Say, p.hint, p.pulse.Refresh)
	p.SetRoster(roster.Roster{}, "")
	p.views = newViews(p.pulse.Refresh, view{words.T("Table"), p.table.box}, view{words.T("Score by score"), p.scores.box},
		view{words.T("Starters and margins"), p.start.box}, view{words.T("Signals"), p.signals.box}, view{words.T("Pairs"), p.pairs.box})
	p.tall = NewTall(container.New(Headed{}, p.asked(), p.views.stack))
	p.Page = NewPage(p.tall.Box)
	return p
}

// asked lays out what is asked for.
func (p *MatchPlan) asked() fyne.CanvasObject {
	const entry = 60
	first := container.New(&flow{}, p.back, container.NewHBox(beside(words.T("Plan for")), Roomy(p.team)),
		container.NewHBox(beside(words.T("Stack")), Roomy(p.policy)), Roomy(p.goal))
	second := []fyne.CanvasObject{beside(words.T("Rallies won on own serve, in percent:"))}
	for _, e := range court.Ends {
		second = append(second, container.NewHBox(inWidth(170, p.served[e]), inWidth(entry, p.chances[e])))
	}
	line := container.NewBorder(nil, nil, nil, container.NewGridWrap(fyne.NewSize(1, 1), p.pulse), p.line)
	third := container.New(&answered{before: true}, line, p.views.row)
	return container.NewVBox(first, container.New(&flow{}, append(second, p.write)...), third, widget.NewSeparator())
}

// beside is a word in the middle of a row's height.
func beside(text string) fyne.CanvasObject { return container.NewCenter(widget.NewLabel(text)) }

// Reveal scrolls so that a control of the page can be seen.
func (p *MatchPlan) Reveal(o fyne.CanvasObject) { p.tall.Reveal(o) }

// Open shows the page as the lesson is now.
func (p *MatchPlan) Open() {
	p.Show()
	p.remake()
}

// SetRoster shows a roster and the file that it is kept in, empty for none.
func (p *MatchPlan) SetRoster(r roster.Roster, path string) { p.pairs.show(r, path) }

// ShowPairs shows the roster of an open page.
func (p *MatchPlan) ShowPairs() { p.views.choose(len(p.views.buttons) - 1) }

// Close goes back to the court.
func (p *MatchPlan) Close() {
	p.Hide()
	if p.events.Close != nil {
		p.events.Close()
	}
}

// remake makes the page anew, whatever was made before.
func (p *MatchPlan) remake() {
	p.made = -1
	p.Refresh()
}

// Refresh makes the page again if it is shown and something has changed.
func (p *MatchPlan) Refresh() {
	if !p.Shown() || p.made == p.session.Revision() {
		return
	}
	p.made = p.session.Revision()
	p.relabel()
	m, err := p.plan()
	p.tell(err)
	if err != nil {
		m = session.MatchPlan{}
	}
	p.write.Unless(sentence(err))
	p.table.show(m)
	p.scores.show(m, p.session.Lesson())
	p.start.show(m)
	p.signals.show(p.ask().Team)
	p.pulse.Refresh()
}

// relabel names the choices after the lesson's teams and players.
func (p *MatchPlan) relabel() {
	l := p.session.Lesson()
	relabel(p.team, []string{words.Team(l, court.Near), words.Team(l, court.Far)}, max(p.team.SelectedIndex(), 0))
	team := court.End(p.team.SelectedIndex())
	var policies []string
	for _, policy := range session.Policies {
		policies = append(policies, words.Policy(l, team, policy))
	}
	relabel(p.policy, policies, max(p.policy.SelectedIndex(), 0))
	p.goals = goalsOf(plan.Pair{Lesson: l, Team: team})
	var goals []string
	for _, g := range p.goals {
		goals = append(goals, words.Goal(l, g.goal, g.who))
	}
	relabel(p.goal, goals, -1)
	for _, e := range court.Ends {
		p.served[e].SetText(words.Team(l, e))
	}
}

// relabel gives a choice other words and keeps which one is chosen, telling
// nobody; -1 chooses none.
func relabel(s *Dropdown, options []string, chosen int) {
	s.Options, s.Selected = options, ""
	if chosen >= 0 && chosen < len(options) {
		s.Selected = options[chosen]
	}
	s.Refresh()
}

// open shows the lesson's play of a row on the court.
func (p *MatchPlan) open(play int) {
	if play < 0 {
		p.Say(words.T("The lesson has no play of this yet: write the whole match."))
		return
	}
	p.session.SelectPlay(play)
	p.Close()
}

func (p *MatchPlan) save(name, text string) {
	if p.events.Save != nil {
		p.events.Save(name, text)
	}
}

// Say shows a line on the page.
func (p *MatchPlan) Say(text string) {
	p.said = lineText{text, widget.MediumImportance}
	p.hint("")
}

func (p *MatchPlan) painted() {
	if p.events.Painted != nil {
		p.events.Painted()
	}
}

// tell says in one line what could not be; nil says nothing.
func (p *MatchPlan) tell(err error) {
	p.said = lineText{sentence(err), widget.DangerImportance}
	p.hint("")
}

// Named are the page's controls by name, for tests of the window.
func (p *MatchPlan) Named() map[string]fyne.CanvasObject {
	named := map[string]fyne.CanvasObject{
		"plan-back": p.back, "plan-write": p.write, "plan-team": p.team, "plan-policy": p.policy, "plan-goal": p.goal,
		"plan-near": p.chances[court.Near], "plan-far": p.chances[court.Far],
	}
	p.views.name(named)
	p.table.name(named)
	p.signals.name(named)
	p.pairs.name(named)
	return named
}

// hint shows a button's tip in place of what was said, which "" shows again.
func (p *MatchPlan) hint(tip string) {
	if tip == "" {
		p.line.Importance = p.said.importance
		p.line.SetText(p.said.text)
		return
	}
	p.line.Importance = widget.MediumImportance
	p.line.SetText(tip)
}

// sentence is why something cannot be done; "" for no error.
func sentence(err error) string {
	if err == nil {
		return ""
	}
	return words.Sentence(err)
}
