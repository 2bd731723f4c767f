package panel

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
	"homeside/app/session"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/words"
)

// Player is the card of one person: name, hand, wishes and pace.
type Player struct {
	Box      *fyne.Container
	session  *session.Session
	who      *Dropdown
	name     *commitEntry
	initials *commitEntry
	hand     *Dropdown
	chair    *heard.Check
	serving  *Dropdown
	taking   *Dropdown
	pace     *Pace
}

// NewPlayer is the player card of a session.
func NewPlayer(s *session.Session) *Player {
	p := &Player{session: s}
	p.who = NewDropdown(nil, func(string) { s.Select(game.Player(p.who.SelectedIndex())) })
	p.name = newCommitEntry(func(t string) {
		p.change(words.Text("rename %s"), func(w lesson.Player) lesson.Player { w.Name = shortened(t, lesson.MaxName); return w })
	})
	p.initials = newCommitEntry(func(t string) {
		p.change(words.Text("change the initials of %s"), func(w lesson.Player) lesson.Player { w.Initials = shortened(t, lesson.MaxInitials); return w })
	})
	p.hand = p.choice(words.Hands(), words.Text("change the hand of %s"), func(w lesson.Player, i int) lesson.Player { w.Hand = lesson.Hand(i); return w })
	p.serving = p.choice(words.Wants(), words.Text("change the wish of %s"), func(w lesson.Player, i int) lesson.Player { w.Serving = lesson.Want(i); return w })
	p.taking = p.choice(words.Wants(), words.Text("change the wish of %s"), func(w lesson.Player, i int) lesson.Player { w.Receiving = lesson.Want(i); return w })
	p.chair = heard.NewCheck(words.T("Plays in a wheelchair"), func(on bool) {
		p.change(words.Text("change the chair of %s"), func(w lesson.Player) lesson.Player { w.Wheelchair = on; return w })
	})
	p.pace = NewPace(s)
	p.Box = container.NewVBox(
		p.who,
		container.New(&namedChoices{},
			widget.NewLabel(words.T("Name")), p.name,
			widget.NewLabel(words.T("Initials")), p.initials,
			widget.NewLabel(words.T("Hand")), p.hand,
			widget.NewLabel(words.T("Serving")), p.serving,
			widget.NewLabel(words.T("Receiving")), p.taking,
		),
		p.chair,
		p.pace.Box,
	)
	return p
}

func (p *Player) choice(options []string, what string, set func(lesson.Player, int) lesson.Player) *Dropdown {
	s := NewDropdown(options, nil)
	s.OnChanged = func(string) {
		p.change(what, func(w lesson.Player) lesson.Player { return set(w, s.SelectedIndex()) })
	}
	return s
}

// change makes a step of a change of the player shown; what is its text with the name.
func (p *Player) change(what string, change func(lesson.Player) lesson.Player) {
	id := p.session.Selected()
	p.session.ChangePlayer(words.Said(what, p.session.Lesson().NameOf(id)), id, change)
}

// shortened is a text cut to the most characters that a lesson allows.
func shortened(s string, most int) string {
	r := []rune(strings.TrimSpace(s))
	return string(r[:min(len(r), most)])
}

// Refresh shows the selected player.
func (p *Player) Refresh() {
	l := p.session.Lesson()
	names := make([]string, len(game.Players))
	for i, id := range game.Players {
		names[i] = l.NameOf(id) + " (" + words.Team(l, id.Team()) + ")"
	}
	id := p.session.Selected()
	if strings.Join(p.who.Options, "\n") != strings.Join(names, "\n") {
		p.who.Options = names
	}
	choose(p.who, int(id))
	w := l.Player(id)
	p.name.show(w.Name)
	p.initials.show(w.Initials)
	choose(p.hand, int(w.Hand))
	if p.chair.Checked != w.Wheelchair {
		p.chair.Checked = w.Wheelchair
		p.chair.Refresh()
	}
	choose(p.serving, int(w.Serving))
	choose(p.taking, int(w.Receiving))
	p.pace.Refresh()
}
