package app

import (
	"fmt"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
	"homeside/app/panel"
	"homeside/app/session"
	"homeside/words"
)

// playbar is the row of buttons over the rally strip.
type playbar struct {
	session *session.Session
	box     *fyne.Container
	play    *heard.Button
	loop    *heard.Button
	now     *widget.Label
	speed   *panel.Dropdown
	playing bool
	text    string
}

var speeds = []struct {
	name string
	rate float64
}{{words.Text("Match speed"), 1}, {words.Text("Half speed"), 0.5}, {words.Text("Walk (0.4)"), 0.4}, {words.Text("Quarter speed"), 0.25}}

// newPlaybar is the row of a session; say shows a line in the status line.
func newPlaybar(s *session.Session, say func(string)) *playbar {
	b := &playbar{session: s, now: widget.NewLabel("")}
	b.play = heard.NewButtonWithIcon(words.T("Play"), theme.MediaPlayIcon(), s.TogglePlay).Says(func() string { return words.T("Plays or pauses (Space)") }).Tell(say)
	b.loop = heard.NewButtonWithIcon("", theme.ViewRefreshIcon(), s.ToggleLoop).Says(b.loopTip).Tell(say)
	names := speedNames()
	b.speed = panel.NewDropdown(names, nil)
	b.speed.SetSelectedIndex(0)
	b.speed.OnChanged = func(string) { s.SetSpeed(speeds[b.speed.SelectedIndex()].rate) }
	b.box = container.NewHBox(
		heard.NewButtonWithIcon("", theme.MediaSkipPreviousIcon(), s.PreviousEvent).Says(func() string { return words.T("Goes to the previous event (Left)") }).Tell(say),
		b.play,
		heard.NewButtonWithIcon("", theme.MediaSkipNextIcon(), s.NextEvent).Says(func() string { return words.T("Goes to the next event (Right)") }).Tell(say),
		b.loop, panel.Roomy(b.speed), b.now,
	)
	return b
}

func speedNames() []string {
	names := make([]string, len(speeds))
	for i, v := range speeds {
		names[i] = words.Said(v.name)
	}
	return names
}

// loopTip says what is played again and again, or how to choose it.
func (b *playbar) loopTip() string {
	if from, to, on := b.session.Loop(); on {
		return words.LoopSays(from, to)
	}
	return words.T("Plays again and again (L). Drag on the ruler, or press I and O, to choose from where to where.")
}

// step chooses a slower speed, or a faster one where by is below 0.
func (b *playbar) step(by int) {
	b.speed.SetSelectedIndex(min(max(b.speed.SelectedIndex()+by, 0), len(speeds)-1))
}

// turned says whether playing has started or stopped since the last refresh.
func (b *playbar) turned() bool { return b.playing != b.session.Playing() }

func (b *playbar) refresh() {
	b.refreshLoop()
	if b.turned() {
		b.playing = b.session.Playing()
		b.play.SetText(map[bool]string{true: words.T("Pause"), false: words.T("Play")}[b.playing])
		b.play.SetIcon(map[bool]fyne.Resource{true: theme.MediaPauseIcon(), false: theme.MediaPlayIcon()}[b.playing])
	}
	text := words.Seconds(b.session.Now())
	if b.playing {
		text = fmt.Sprintf("%.1f s", float64(b.session.Now())) // ten times a second is enough to read
	}
	if text != b.text {
		b.text = text
		b.now.SetText(text)
	}
}

// refreshLoop shows the button pressed while a loop is played.
func (b *playbar) refreshLoop() {
	want := widget.MediumImportance
	if _, _, on := b.session.Loop(); on {
		want = widget.HighImportance
	}
	if b.loop.Importance != want {
		b.loop.Importance = want
		b.loop.Refresh()
	}
}
