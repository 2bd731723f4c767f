package rehearse

import (
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/theme"

	"homeside/app/heard"
	"homeside/app/panel"
	"homeside/app/rehearsal"
	"homeside/model/court"
	"homeside/model/lesson"
	"homeside/words"
)

// controls are the row over the stage.
type controls struct {
	row               *fyne.Container
	start             *heard.Button
	speed, pair, view *panel.Dropdown
	sound             *heard.Check
	label             string // the start button's
}

// newControls is the row of a walk.
func newControls(w *Walk, l lesson.Lesson) *controls {
	c := &controls{}
	c.start = newButton("", theme.MediaPlayIcon(), w.toggle)
	c.speed = choice(rehearsal.Speeds[:], w.chosen.speed, speedName, func(v float64) { w.choose(func(c *choices) { c.speed = v }) })
	c.sound = heard.NewCheck(words.T("Beeps"), func(on bool) { w.choose(func(c *choices) { c.silent = !on }) })
	c.sound.Checked, c.sound.LetsGo = !w.chosen.silent, true
	c.pair = panel.NewLettingGo([]string{words.Partners(l, court.Near), words.Partners(l, court.Far)}, int(w.stage.pair), func(at int) { w.see(w.stage.view, court.End(at)) })
	c.view = panel.NewLettingGo(viewNames(), int(w.stage.view), func(at int) { w.see(view(at), w.stage.pair) })
	c.row = container.New(flow{},
		c.start,
		newButton("", theme.MediaSkipPreviousIcon(), func() { w.step(false) }).Says(func() string { return words.T("Goes to the previous event (Left)") }).Tell(w.line.Tell),
		newButton("", theme.MediaSkipNextIcon(), func() { w.step(true) }).Says(func() string { return words.T("Goes to the next event (Right)") }).Tell(w.line.Tell),
		c.speed,
		choice(counts, w.chosen.count, countName, func(v int) { w.choose(func(c *choices) { c.count = v }) }),
		choice(rounds, w.chosen.rounds, roundsName, func(v int) { w.choose(func(c *choices) { c.rounds = v }) }),
		choice(rests, w.chosen.rest, restName, func(v int) { w.choose(func(c *choices) { c.rest = v }) }),
		c.pair, c.view, c.sound,
	)
	return c
}

// newButton is a button that, pressed by a key, gives the keys to the window: there
// the space bar and Enter mean more than pressing it again.
func newButton(text string, icon fyne.Resource, do func()) *heard.Button {
	b := heard.NewButtonWithIcon(text, icon, do)
	b.LetsGo = true
	return b
}

// choice is a choice of one of some values by their names.
func choice[T comparable](all []T, now T, name func(T) string, changed func(T)) *panel.Dropdown {
	names := make([]string, len(all))
	for i, v := range all {
		names[i] = name(v)
	}
	return panel.NewLettingGo(names, max(slices.Index(all, now), 0), func(at int) { changed(all[at]) })
}

func countName(n int) string {
	if n == 0 {
		return words.T("No count-in")
	}
	return words.T("Count in to %d", n)
}

func roundsName(n int) string {
	switch {
	case n < 0:
		return words.T("Without end")
	case n == 1:
		return words.T("Once")
	}
	return words.T("%d rounds", n)
}

func restName(n int) string {
	if n == 0 {
		return words.T("No rest")
	}
	return words.T("Rest %d s", n)
}

// refresh names what the space bar does now.
func (c *controls) refresh(h *rehearsal.Rehearsal) {
	label, icon := words.T("Pause"), theme.MediaPauseIcon()
	switch {
	case !h.Passing() && h.Paused():
		label, icon = words.T("Go on"), theme.MediaPlayIcon()
	case !h.Passing():
		label, icon = words.T("Start"), theme.MediaPlayIcon()
	}
	if label != c.label {
		c.label = label
		c.start.Icon = icon
		c.start.SetText(label)
	}
}
