package panel

import (
	"fmt"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
	"homeside/app/session"
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
	"homeside/words"
)

// takeForm changes the take picked. Every change is a step.
type takeForm struct {
	box     *fyne.Container
	session *session.Session
	say     func(string)

	play, beside   *Dropdown
	from, to       *anchorChoice
	speed          *speedChoice
	loops          *Dropdown
	camera, player *Dropdown
	across         *commitEntry
	caption        *commitEntry
	slows          *fyne.Container
	slow           *heard.Button
	slowRows       []*slowRow
	slowFault      *widget.Label
	freezes        *fyne.Container
	freeze         *heard.Button
	rows           []*freezeRow
}

// mostLoops is how many times a take is offered to be shown.
const mostLoops = 5

func newTakeForm(s *session.Session, say func(string), slowHere, freezeHere func()) *takeForm {
	f := &takeForm{session: s, say: say, slows: container.NewVBox(), slowFault: wrapped(), freezes: container.NewVBox()}
	f.slowFault.Importance = widget.WarningImportance
	f.play = NewDropdown(nil, func(string) {
		f.set(words.T("choose a take's play"), func(t *lesson.Take) { t.Play = f.play.SelectedIndex() + 1 })
	})
	f.beside = NewDropdown(nil, func(string) {
		f.set(words.T("show a play beside"), func(t *lesson.Take) { t.Beside = f.beside.SelectedIndex() })
	})
	f.from = newAnchorChoice(words.T("the play's start"), func(a *lesson.Anchor) { f.set(words.T("cut a take"), func(t *lesson.Take) { t.From = a }) })
	f.to = newAnchorChoice(words.T("the play's end"), func(a *lesson.Anchor) { f.set(words.T("cut a take"), func(t *lesson.Take) { t.To = a }) })
	f.speed = newSpeedChoice(func(v float64) { f.set(words.T("change a take's speed"), func(t *lesson.Take) { t.Speed = stated(v) }) })
	f.loops = NewDropdown(nil, func(string) {
		f.set(words.T("repeat a take"), func(t *lesson.Take) { t.Loops = f.loops.SelectedIndex() + 1 })
	})
	f.camera = NewDropdown(words.Cameras(), func(string) { f.set(words.T("choose a camera"), f.film) })
	f.player = NewDropdown(nil, func(string) { f.set(words.T("choose a camera"), f.film) })
	f.player.PlaceHolder = "–" // a camera that is about nobody
	f.across = newCommitEntry(f.setAcross)
	f.caption = newCommitEntry(func(text string) {
		f.set(words.T("change a take's caption"), func(t *lesson.Take) { t.Caption = text })
	})
	f.slow = heard.NewButtonWithIcon(words.T("Another speed at the moment shown"), theme.ContentAddIcon(), slowHere)
	f.freeze = heard.NewButtonWithIcon(words.T("Freeze at the moment shown"), theme.ContentAddIcon(), freezeHere)
	f.box = container.NewVBox(container.New(layout.NewFormLayout(),
		widget.NewLabel(words.T("Play‖noun")), f.play, widget.NewLabel(words.T("Beside it")), f.beside,
		widget.NewLabel(words.T("From")), f.from.Dropdown, widget.NewLabel(words.T("To‖until")), f.to.Dropdown,
		widget.NewLabel(words.T("Speed")), f.speed.Dropdown, widget.NewLabel(words.T("Shown")), f.loops,
		widget.NewLabel(words.T("Camera")), f.camera, widget.NewLabel(words.T("On")), f.player, widget.NewLabel(words.T("Feet across")), f.across,
		widget.NewLabel(words.T("Caption")), f.caption,
	), widget.NewSeparator(), f.slows, f.slowFault, f.slow, widget.NewSeparator(), f.freezes, f.freeze)
	return f
}

// stated is a take's speed as it is kept: match speed by its absence.
func stated(v float64) float64 {
	if v == 1 {
		return 0
	}
	return v
}

// set changes the take picked as a step.
func (f *takeForm) set(step string, change func(*lesson.Take)) {
	f.session.ChangeTake(step, func(t lesson.Take) lesson.Take {
		change(&t)
		return t
	})
}

// film makes the camera that the form says.
func (f *takeForm) film(t *lesson.Take) {
	c := lesson.Camera{Kind: lesson.CameraKind(max(f.camera.SelectedIndex(), 0))}
	who := max(f.player.SelectedIndex(), 0)
	switch {
	case c.Kind == lesson.HalfCourt:
		c.End = court.Ends[who%len(court.Ends)]
	case c.Kind.OnPlayer():
		c.Player, c.Width = game.Players[who%len(game.Players)], t.Camera.Width
	}
	t.Camera = c
}

func (f *takeForm) setAcross(text string) {
	v, err := number(text)
	w := units.Feet(v)
	if err != nil || !(w >= lesson.MinCameraWidth && w <= lesson.MaxCameraWidth) {
		f.say(words.T("want %v to %v feet", float64(lesson.MinCameraWidth), float64(lesson.MaxCameraWidth)))
		return
	}
	f.set(words.T("choose a camera"), func(t *lesson.Take) { t.Camera.Width = w })
}

// refresh shows the take picked.
func (f *takeForm) refresh() {
	t, ok := f.session.Take()
	if !ok {
		return
	}
	l := f.session.Lesson()
	var plays []string
	for i := range l.Plays {
		plays = append(plays, PlayName(f.session, i))
	}
	relabel(f.play, plays, t.Play-1)
	relabel(f.beside, append([]string{words.T("nothing")}, plays...), t.Beside)
	var p lesson.Play
	if t.Play <= len(l.Plays) {
		p = l.Plays[t.Play-1]
	}
	f.from.show(p, t.From)
	f.to.show(p, t.To)
	f.speed.show(t.Rate())
	relabel(f.loops, loopNames(t.Times()), t.Times()-1)
	f.caption.show(t.Caption)
	f.refreshCamera(l, t.Camera)
	f.refreshSlows(p, t)
	f.refreshFreezes(p, t)
}

func loopNames(now int) []string {
	var names []string
	for n := 1; n <= max(mostLoops, now); n++ {
		names = append(names, words.T("%d ×", n))
	}
	return names
}

func (f *takeForm) refreshCamera(l lesson.Lesson, c lesson.Camera) {
	relabel(f.camera, words.Cameras(), int(c.Kind))
	names, chosen := []string{}, -1
	switch {
	case c.Kind == lesson.HalfCourt:
		for _, e := range court.Ends {
			names = append(names, l.NameOfTeam(e))
		}
		chosen = int(c.End)
	case c.Kind.OnPlayer():
		for _, id := range game.Players {
			names = append(names, l.NameOf(id))
		}
		chosen = int(c.Player)
	}
	relabel(f.player, names, chosen)
	able(&f.player.DisableableWidget, f.player.Enable, f.player.Disable, chosen >= 0)
	f.across.show(fmt.Sprint(float64(c.Across())))
	able(&f.across.DisableableWidget, f.across.Enable, f.across.Disable, c.Kind.OnPlayer())
}

// able enables or disables a control where that is a change.
func able(w *widget.DisableableWidget, enable, disable func(), yes bool) {
	switch {
	case yes && w.Disabled():
		enable()
	case !yes && !w.Disabled():
		disable()
	}
}

// refreshSlows has a row for every stretch at another speed, and a line that says
// which does not count.
func (f *takeForm) refreshSlows(p lesson.Play, t lesson.Take) {
	for len(f.slowRows) < len(t.Slows) {
		row := newSlowRow(f, len(f.slowRows))
		f.slowRows = append(f.slowRows, row)
		f.slows.Add(row.box)
	}
	for i, row := range f.slowRows {
		show(row.box, i < len(t.Slows))
		if i < len(t.Slows) {
			row.refresh(p, t.Slows[i])
		}
	}
	text := ""
	solved := f.session.SolvedReel()
	if k := shownTake(solved, f.session.ReelPick()); k >= 0 {
		text = words.SlowFaults(solved.Takes[k].SlowFaults())
	}
	f.slowFault.SetText(text)
	show(f.slowFault, text != "")
}

// refreshFreezes has a row for every freeze.
func (f *takeForm) refreshFreezes(p lesson.Play, t lesson.Take) {
	for len(f.rows) < len(t.Freezes) {
		row := newFreezeRow(f, len(f.rows))
		f.rows = append(f.rows, row)
		f.freezes.Add(row.box)
	}
	for i, row := range f.rows {
		show(row.box, i < len(t.Freezes))
		if i < len(t.Freezes) {
			row.refresh(p, t.Freezes[i])
		}
	}
}
