package panel

import (
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
	"homeside/canvas/film"
	"homeside/export"
	"homeside/model/units"
	"homeside/words"
)

// shapes are the shapes that clips have, as pictures of them.
var shapes = []struct {
	name          string
	width, height int
}{
	{words.Text("upright, 9:16"), 1080, 1920}, {words.Text("wide, 16:9"), 1920, 1080}, {words.Text("square, 1:1"), 1080, 1080}, {words.Text("portrait, 4:5"), 1080, 1350},
}

// reelPreview plays a film in place.
type reelPreview struct {
	box    fyne.CanvasObject
	frame  *FrameView
	shape  *Dropdown
	play   *heard.Button
	time   *heard.Slider
	figure *widget.Label
	film   *film.Film // nil for none
	at     units.Seconds
	plays  func(bool) // told when it starts and when it rests

	tick    *fyne.Animation
	last    time.Time
	playing bool
}

func newReelPreview(reshaped func(), plays func(bool)) *reelPreview {
	p := &reelPreview{frame: NewFrameView(), figure: widget.NewLabel(""), plays: plays}
	p.shape = NewDropdown(nil, func(string) { p.show(p.film); reshaped() })
	for _, s := range shapes {
		p.shape.Options = append(p.shape.Options, words.Said(s.name))
	}
	p.shape.Selected = p.shape.Options[0]
	p.play = heard.NewButtonWithIcon("", theme.MediaPlayIcon(), p.toggle).Says(func() string { return words.T("Plays the reel, or stops it") })
	p.time = heard.NewSlider(0, 1)
	p.time.Step = 0.01
	p.time.OnChanged = func(v float64) { p.seek(units.Seconds(v)) }
	p.tick = &fyne.Animation{Duration: time.Hour, RepeatCount: fyne.AnimationRepeatForever, Curve: fyne.AnimationLinear, Tick: p.pass}
	bar := container.NewBorder(nil, nil, container.NewHBox(p.play, p.shape), p.figure, p.time)
	p.box = container.NewBorder(nil, bar, nil, nil, p.frame.Box)
	return p
}

// size is the size in pixels that stands for the shape.
func (p *reelPreview) size() (width, height int) {
	s := shapes[max(p.shape.SelectedIndex(), 0)]
	return s.width, s.height
}

// show shows a film at the moment shown, or none.
func (p *reelPreview) show(f *film.Film) {
	p.film = f
	w, h := p.size()
	if f == nil {
		p.stop()
		p.frame.Show(nil, export.Ground{}, w, h, 0)
		return
	}
	_, to := f.Span()
	p.at = min(p.at, to)
	p.time.Max = max(float64(to), 0.01)
	p.frame.Show(f, export.Ground{}, w, h, p.at)
	p.mark()
}

// mark shows where in the clip the moment is.
func (p *reelPreview) mark() {
	_, to := p.film.Span()
	p.figure.SetText(words.ClipTime(p.at, to))
	p.time.Value = float64(p.at)
	p.time.Refresh()
}

func (p *reelPreview) seek(at units.Seconds) {
	if p.film == nil {
		return
	}
	_, to := p.film.Span()
	p.at = min(max(at, 0), to)
	p.frame.Seek(p.at)
	p.mark()
}

// toggle starts or pauses; at the end it starts again from the beginning.
func (p *reelPreview) toggle() {
	if p.playing {
		p.stop()
		return
	}
	if p.film == nil {
		return
	}
	if _, to := p.film.Span(); p.at >= to {
		p.at = 0
	}
	p.playing, p.last = true, time.Now()
	p.play.SetIcon(theme.MediaPauseIcon())
	p.tick.Start()
	p.plays(true)
}

func (p *reelPreview) stop() {
	if p.playing {
		p.playing = false
		p.tick.Stop()
		p.play.SetIcon(theme.MediaPlayIcon())
		p.plays(false)
	}
}

func (p *reelPreview) pass(float32) {
	if !p.playing {
		return
	}
	now := time.Now()
	dt := now.Sub(p.last)
	p.last = now
	p.seek(p.at + units.Seconds(dt.Seconds()))
	if _, to := p.film.Span(); p.at >= to {
		p.stop()
	}
}
