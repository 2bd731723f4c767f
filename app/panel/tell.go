package panel

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
	"homeside/app/session"
	"homeside/model/units"
	"homeside/words"
)

// Tell says what two plays give away while they are compared.
type Tell struct {
	Box     *fyne.Container
	session *session.Session
	said    *widget.Label
	needs   *Dropdown // an opponent's reaction and swing
	stop    *heard.Button
}

// needs are the times to choose from; the usual one is the model's own.
var needs = [...]units.Seconds{0.3, 0.4, 0.5, 0.6}

const usualNeed = 1

func needed() []string {
	all := make([]string, len(needs))
	for i, t := range needs {
		all[i] = words.Seconds(t)
	}
	return all
}

// NewTell is the tell of a session's two plays; it takes no room while none are
// compared.
func NewTell(s *session.Session) *Tell {
	p := &Tell{session: s, said: wrapped(), stop: heard.NewButton(words.T("Stop comparing"), s.StopComparing)}
	p.stop.Importance = widget.LowImportance
	p.needs = NewDropdown(needed(), func(string) { s.OpponentsNeed(needs[p.needs.SelectedIndex()]) })
	p.needs.Selected = p.needs.Options[usualNeed]
	ask := wrapped() // one line with its answer would be wider than the cards
	ask.SetText(words.OpponentsNeed())
	p.Box = container.NewVBox(p.said, ask, p.needs, p.stop)
	p.Refresh()
	return p
}

// Refresh says it of the plays as they are shown.
func (p *Tell) Refresh() {
	other, on := p.session.Comparing()
	t, _ := p.session.Tell()
	show(p.Box, on)
	if !on {
		return
	}
	if text := words.TellSentence(p.session.Lesson(), t.Tell, p.session.PlayIndex(), other); p.said.Text != text {
		p.said.SetText(text)
	}
}

// Text is what it says; empty while no plays are compared.
func (p *Tell) Text() string {
	if !p.Box.Visible() {
		return ""
	}
	return p.said.Text
}

// Named are the controls by name, for tests of the window.
func (p *Tell) Named() map[string]fyne.CanvasObject {
	if !p.Box.Visible() {
		return nil
	}
	return map[string]fyne.CanvasObject{"stop-comparing": p.stop}
}
