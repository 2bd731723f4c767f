package panel

import (
	"image/color"
	"testing"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/test"

	"homeside/words"
)

// Things stand in as few lines as the width allows, none past its end.
func TestFlow(t *testing.T) {
	test.NewTempApp(t) // padding is 4
	var all []fyne.CanvasObject
	for _, w := range []float32{100, 60, 80} {
		r := fynecanvas.NewRectangle(color.Black)
		r.SetMinSize(fyne.NewSize(w, 20))
		all = append(all, r)
	}
	box := container.New(&flow{}, all...)
	for _, c := range []struct {
		width float32
		want  [3]fyne.Position
		high  float32
	}{
		{300, [3]fyne.Position{{X: 0}, {X: 104}, {X: 168}}, 20},
		{200, [3]fyne.Position{{X: 0}, {X: 104}, {Y: 24}}, 44},
		{100, [3]fyne.Position{{}, {Y: 24}, {Y: 48}}, 68},
	} {
		box.Resize(fyne.NewSize(c.width, 100))
		for i, o := range all {
			if o.Position() != c.want[i] {
				t.Errorf("%v wide, thing %d is at %v, want %v", c.width, i, o.Position(), c.want[i])
			}
		}
		if got := box.MinSize(); got != fyne.NewSize(100, c.high) {
			t.Errorf("%v wide it wants %v, want 100 by %v", c.width, got, c.high)
		}
	}
}

// The match plan fits a small window at twice the usual scale.
func TestMatchPlanIsNarrow(t *testing.T) {
	defer words.Speak(words.English)
	for _, l := range []words.Language{words.English, words.Spanish} {
		words.Speak(l)
		p, _ := planned(t, lefty(), MatchPlanEvents{})
		p.Box.Resize(fyne.NewSize(960, 480))
		for i := range p.views.buttons {
			p.views.choose(i)
			if w := p.Box.MinSize().Width; w > 960 {
				t.Errorf("%s: with %q shown the page wants %.0f, want at most 960", l.Tag(), p.views.buttons[i].Text, w)
			}
		}
	}
}
