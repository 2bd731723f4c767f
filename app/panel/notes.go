package panel

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
	"homeside/app/session"
	"homeside/words"
)

// Notes is the card of a play in words: its notes and tags, to read while the
// play is shown, and the way to change them.
type Notes struct {
	Box     *fyne.Container
	session *session.Session
	notes   *widget.Label
	tags    *widget.Label
}

// NewNotes is the card of a session's play; change is asked for by its button.
func NewNotes(s *session.Session, change func()) *Notes {
	p := &Notes{session: s, notes: wrapped(), tags: wrapped()}
	p.tags.Importance = widget.LowImportance
	p.Box = container.NewVBox(p.notes, p.tags, heard.NewButton(words.T("Title, notes and tags…"), change))
	return p
}

// Refresh shows the session's play.
func (p *Notes) Refresh() {
	play, _ := p.session.Play()
	text := play.Notes
	if text == "" {
		text = words.T("No notes yet.")
	}
	setText(p.notes, text)
	setText(p.tags, strings.Join(play.Tags, ", "))
	show(p.tags, len(play.Tags) > 0)
}
