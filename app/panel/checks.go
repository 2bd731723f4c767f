package panel

import (
	"strconv"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"homeside/app/session"
	"homeside/model/finding"
	"homeside/words"
)

// Checks is the list of what the rules find in the play shown, the worst first.
type Checks struct {
	Box     *fyne.Container
	session *session.Session
	say     func(text string)
	rows    []*checkRow
	none    *widget.Label
}

// NewChecks is the list of a session's findings. say is told what a click has
// jumped to.
func NewChecks(s *session.Session, say func(text string)) *Checks {
	p := &Checks{session: s, say: say, none: wrapped()}
	p.none.SetText(words.T("Nothing to say about this play."))
	p.Box = container.NewVBox(p.none)
	return p
}

// Title is the heading of the list with the number of findings.
func (p *Checks) Title() string { return words.ChecksTitle(p.session.Findings()) }

// Refresh shows the findings of the play as it is shown.
func (p *Checks) Refresh() {
	all := p.session.Findings()
	for len(p.rows) < len(all) {
		row := newCheckRow()
		p.rows = append(p.rows, row)
		p.Box.Add(row.box)
	}
	for i, row := range p.rows {
		if i < len(all) {
			p.fill(row, i, all[i])
		}
		show(row.box, i < len(all))
	}
	show(p.none, len(all) == 0)
}

// fill shows one finding; its number is the one on the court.
func (p *Checks) fill(row *checkRow, i int, f finding.Finding) {
	l := p.session.Lesson()
	row.number, row.severity = strconv.Itoa(i+1), f.Severity
	row.badge.Refresh()
	size := theme.SizeNameText
	if f.Severity == finding.Advice {
		size = theme.SizeNameCaptionText // advice is read once
	}
	row.text.set(words.Check(f, l), size, func() { p.jump(i) })
	row.fix.OnTapped = func() {
		p.say("") // it no longer holds
		p.session.Fix(i)
	}
	show(row.fix, p.session.CanFix(i))
}

// jump shows a finding's moment and says in the status line whom it concerns.
func (p *Checks) jump(i int) {
	all := p.session.Findings()
	if i >= len(all) {
		return
	}
	f := all[i]
	p.session.Pause()
	if f.Someone {
		p.session.PointOut(f.Player, f.When)
	} else {
		p.session.Seek(f.When)
	}
	p.say(words.Moment(f, p.session.Lesson()))
}

// Named are the list's controls by name, for tests of the window.
func (p *Checks) Named() map[string]fyne.CanvasObject {
	named := map[string]fyne.CanvasObject{}
	for i, row := range p.rows {
		if row.box.Visible() {
			named["check-"+strconv.Itoa(i+1)], named["fix-"+strconv.Itoa(i+1)] = row.text, row.fix
		}
	}
	return named
}
