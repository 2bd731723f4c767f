package rallystrip

import (
	"math"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"homeside/canvas/compose"
	"homeside/model/rally"
	"homeside/model/units"
)

const (
	notch     = 25   // of the wheel, in the toolkit's units
	wheelZoom = 1.25 // a notch, and a press of a key
	leadShare = 0.15 // of the strip that stays before the moment when it follows
	pageShare = 0.8  // of the strip that a page goes on
)

var _ fyne.Scrollable = (*Strip)(nil)

// whole is the time of a rally.
func whole(r *rally.Rally) compose.Span { return compose.Span{From: r.From, To: r.To} }

// span is the time shown; false without a play.
func (v *Strip) span() (shown, all compose.Span, ok bool) {
	r := v.session.Current()
	if r == nil {
		return shown, all, false
	}
	all = whole(r)
	if v.shown.Empty() {
		return all, all, true
	}
	return v.shown, all, true
}

// Zoom shows less time, or more where the factor is below 1, about the moment
// if it is shown, or else the middle.
func (v *Strip) Zoom(factor float64) {
	shown, _, _ := v.span()
	about := v.session.Now()
	if about < shown.From || about > shown.To {
		about = (shown.From + shown.To) / 2
	}
	v.zoomAbout(about, factor)
}

func (v *Strip) zoomAbout(t units.Seconds, factor float64) {
	if shown, all, ok := v.span(); ok {
		v.show(compose.Zoomed(shown, all, t, factor), all)
	}
}

// Page goes a page later, or earlier where by is below 0.
func (v *Strip) Page(by int) {
	if shown, all, ok := v.span(); ok {
		v.show(compose.Scrolled(shown, all, units.Seconds(by)*pageShare*(shown.To-shown.From)), all)
	}
}

// Whole says whether the whole rally is shown.
func (v *Strip) Whole() bool { return v.shown.Empty() }

// Fit shows the whole rally.
func (v *Strip) Fit() {
	v.shown = compose.Span{}
	v.Refresh()
}

func (v *Strip) show(s, all compose.Span) {
	if s.To-s.From >= all.To-all.From {
		s = compose.Span{}
	}
	v.shown = s
	v.Refresh()
}

// Scrolled implements fyne.Scrollable: the wheel zooms about the pointer, with
// Shift, or sideways, it goes along.
func (v *Strip) Scrolled(e *fyne.ScrollEvent) {
	shown, all, ok := v.span()
	if !ok || v.frames == nil {
		return
	}
	along := e.Scrolled.DX
	if shiftHeld() && along == 0 {
		along = e.Scrolled.DY
	}
	if along != 0 {
		v.show(compose.Scrolled(shown, all, -units.Seconds(along/notch)*(shown.To-shown.From)/8), all)
		return
	}
	v.zoomAbout(v.scene.TimeAt(v.px(e.Position).X), math.Pow(wheelZoom, float64(e.Scrolled.DY/notch)))
}

// Middle is the middle of the strip in the window.
func (v *Strip) Middle() fyne.Position {
	size := v.Size()
	return fyne.CurrentApp().Driver().AbsolutePositionForObject(v).AddXY(size.Width/2, size.Height/2)
}

func heldKeys() fyne.KeyModifier {
	if d, ok := fyne.CurrentApp().Driver().(desktop.Driver); ok {
		return d.CurrentKeyModifiers()
	}
	return 0
}

func shiftHeld() bool { return heldKeys()&fyne.KeyModifierShift != 0 }

// follow keeps what is shown within the rally, and the moment, when it moves, in
// what is shown. Another play is shown whole.
func (v *Strip) follow(r *rally.Rally) {
	if v.play != v.session.PlayIndex() {
		v.play, v.shown = v.session.PlayIndex(), compose.Span{}
	}
	if v.shown.Empty() {
		return
	}
	all, now := whole(r), v.session.Now()
	if v.shown.To-v.shown.From >= all.To-all.From {
		v.shown = compose.Span{}
		return
	}
	v.shown = compose.Scrolled(v.shown, all, 0)
	if now != v.seen && !v.hand.down() && (now < v.shown.From || now > v.shown.To) {
		v.shown = compose.Scrolled(v.shown, all, now-v.shown.From-leadShare*(v.shown.To-v.shown.From))
	}
	v.seen = now
}
