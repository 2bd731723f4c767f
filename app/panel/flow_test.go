package panel

import (
	"image/color"
	"slices"
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

// Cards stand in even lines, so that none is left over alone, whatever is hidden.
func TestEvenFlow(t *testing.T) {
	test.NewTempApp(t) // padding is 4
	g := NewGallery(7, CardSize{Picture: fyne.NewSize(88, 50)})
	for _, c := range []struct {
		shown       int
		width       float32
		want        []int // cards in each line
		wideColumns int
		wide        float32
	}{
		{7, 720, []int{7}, 7, 724},
		{7, 620, []int{4, 3}, 6, 412},
		{7, 312, []int{3, 3, 1}, 3, 308},
		{6, 520, []int{3, 3}, 6, 412},
		{5, 412, []int{3, 2}, 5, 412},
		{0, 412, nil, 1, 100},
	} {
		g.Show(make([]Choice, c.shown))
		g.Box.Resize(fyne.NewSize(c.width+8, 300))
		var got []int
		var y float32 = -1
		for _, card := range g.cards[:c.shown] {
			if at := card.Position().Y; at != y {
				got, y = append(got, 0), at
			}
			got[len(got)-1]++
		}
		if !slices.Equal(got, c.want) {
			t.Errorf("%d cards in a width of %v stand in lines of %v, want %v", c.shown, c.width, got, c.want)
		}
		if got := g.Wide(c.wideColumns); got != c.wide {
			t.Errorf("Wide(%d) = %v, want %v", c.wideColumns, got, c.wide)
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
