package panel

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"homeside/app/session"
	"homeside/words"
)

// Score is the score strip: the situation as a sentence.
type Score struct {
	Box      *fyne.Container
	session  *session.Session
	sentence *widget.Label
}

// NewScore is the score strip of a session.
func NewScore(s *session.Session) *Score {
	p := &Score{session: s, sentence: widget.NewLabel("")}
	p.sentence.Wrapping = fyne.TextWrapWord
	p.sentence.TextStyle.Bold = true
	p.Box = container.NewStack(p.sentence)
	return p
}

// Refresh says the session's situation.
func (p *Score) Refresh() {
	play, ok := p.session.Play()
	if !ok {
		p.sentence.SetText("This lesson has no plays yet.")
		return
	}
	p.sentence.SetText(words.Situation(p.session.Lesson(), play))
}
