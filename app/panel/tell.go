package panel

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"homeside/app/session"
	"homeside/words"
)

// Tell says what two plays give away while they are compared.
type Tell struct {
	Box     *fyne.Container
	session *session.Session
	said    *widget.Label
	stop    *widget.Button
}

// NewTell is the tell of a session's two plays; it takes no room while none are
// compared.
func NewTell(s *session.Session) *Tell {
	p := &Tell{session: s, said: wrapped(), stop: widget.NewButton("Stop comparing", s.StopComparing)}
	p.stop.Importance = widget.LowImportance
	p.Box = container.NewVBox(p.said, p.stop)
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
