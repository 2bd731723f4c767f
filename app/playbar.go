package app

import (
	"fmt"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"homeside/app/panel"
	"homeside/app/session"
	"homeside/words"
)

// playbar is the row of buttons over the rally strip.
type playbar struct {
	session *session.Session
	box     *fyne.Container
	play    *widget.Button
	now     *widget.Label
	speed   *panel.Dropdown
	playing bool
	text    string
}

var speeds = []struct {
	name string
	rate float64
}{{words.Text("Match speed"), 1}, {words.Text("Half speed"), 0.5}, {words.Text("Walk (0.4)"), 0.4}, {words.Text("Quarter speed"), 0.25}}

func newPlaybar(s *session.Session) *playbar {
	b := &playbar{session: s, now: widget.NewLabel("")}
	b.play = widget.NewButtonWithIcon(words.T("Play"), theme.MediaPlayIcon(), s.TogglePlay)
	names := speedNames()
	b.speed = panel.NewDropdown(names, nil)
	b.speed.SetSelectedIndex(0)
	b.speed.OnChanged = func(string) { s.SetSpeed(speeds[b.speed.SelectedIndex()].rate) }
	b.box = container.NewHBox(
		widget.NewButtonWithIcon("", theme.MediaSkipPreviousIcon(), s.PreviousEvent),
		b.play,
		widget.NewButtonWithIcon("", theme.MediaSkipNextIcon(), s.NextEvent),
		b.speed, b.now,
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

// step chooses a slower speed, or a faster one where by is below 0.
func (b *playbar) step(by int) {
	b.speed.SetSelectedIndex(min(max(b.speed.SelectedIndex()+by, 0), len(speeds)-1))
}

// turned says whether playing has started or stopped since the last refresh.
func (b *playbar) turned() bool { return b.playing != b.session.Playing() }

func (b *playbar) refresh() {
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
