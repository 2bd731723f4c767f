package panel

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"homeside/app/session"
	"homeside/model/lesson"
)

// Shot is the card of the shot in play at the moment shown.
type Shot struct {
	Box     *fyne.Container
	session *session.Session
	title   *widget.Label
}

// NewShot is the shot card of a session.
func NewShot(s *session.Session) *Shot {
	p := &Shot{session: s, title: widget.NewLabel("")}
	p.Box = container.NewVBox(p.title)
	return p
}

// Refresh shows the shot in play.
func (p *Shot) Refresh() {
	r := p.session.Current()
	if r == nil {
		p.title.SetText("")
		return
	}
	p.title.SetText(lesson.ShotName(r.AnchorAt(p.session.Now()).Event.Shot))
}
