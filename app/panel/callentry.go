package panel

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
	"homeside/app/session"
	"homeside/model/court"
	"homeside/model/lesson"
	"homeside/words"
)

// callEntry takes the score and the team that calls it.
type callEntry struct {
	box   *fyne.Container
	entry *heard.Entry
	team  *Dropdown
	names []string
}

// callWidth holds the longest call.
const callWidth = 96

func newCallEntry(take func(text string, serving court.End)) *callEntry {
	c := &callEntry{entry: heard.NewEntry(), team: NewDropdown(nil, nil)}
	submit := func() { take(c.entry.Text, court.End(max(c.team.SelectedIndex(), 0))) }
	c.entry.OnSubmitted = func(string) { submit() }
	c.box = container.NewHBox(
		inWidth(callWidth, c.entry), widget.NewLabel(words.T("called by")), Roomy(c.team), heard.NewButton(words.T("Set"), submit),
	)
	return c
}

// show fills in what is known of a play's score.
func (c *callEntry) show(l lesson.Lesson, p lesson.Play, m session.Missing) {
	c.names = []string{words.Team(l, court.Near), words.Team(l, court.Far)}
	c.team.SetOptions(c.names)
	c.team.SetSelectedIndex(int(p.Situation.Serving))
	if m.Serving || m.Call {
		server, _ := p.Server()
		c.team.SetSelectedIndex(int(server.Team()))
	}
	c.entry.SetPlaceHolder("4-7-2")
	if l.Scoring.Format.Rally() {
		c.entry.SetPlaceHolder("4-7")
	}
	c.entry.SetText(p.Situation.Call.String())
	if m.Call {
		c.entry.SetText("")
	}
}

// focus puts the cursor into the entry, by way of a control beside it: the
// entry itself may not have been drawn yet.
func (c *callEntry) focus(beside fyne.CanvasObject) {
	if canvas := fyne.CurrentApp().Driver().CanvasForObject(beside); canvas != nil {
		canvas.Focus(c.entry)
	}
}
