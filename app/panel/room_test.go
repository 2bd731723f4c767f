package panel

import (
	"testing"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/theme"

	"homeside/app/looks"
	"homeside/app/session"
	"homeside/app/settings"
	"homeside/model/lesson"
	"homeside/words"
)

func block(width, height float32) *fynecanvas.Rectangle {
	r := fynecanvas.NewRectangle(nil)
	r.SetMinSize(fyne.NewSize(width, height))
	return r
}

// Columns stand beside each other where they fit, else below each other in all the
// height they want, and come back.
func TestColumnsTurn(t *testing.T) {
	test.NewTempApp(t) // padding is 4
	left, main, right := block(100, 500), block(150, 80), block(100, 300)
	c := NewColumns(Column{Content: left, Width: 120}, Column{Content: main, Least: 200}, Column{Content: right, Width: 110})
	for _, w := range []struct {
		width    float32
		high     float32
		main, to fyne.Position
		size     fyne.Size
	}{
		{400, 80, fyne.NewPos(124, 0), fyne.NewPos(290, 0), fyne.NewSize(162, 100)},
		{370, 1012, fyne.NewPos(0, 504), fyne.NewPos(0, 708), fyne.NewSize(370, 200)},
		{381, 80, fyne.NewPos(118, 0), fyne.NewPos(272, 0), fyne.NewSize(150, 100)}, // the sides are narrower then
	} {
		c.Box.Resize(fyne.NewSize(w.width, 100))
		last := c.Box.Objects[2]
		if main.Position() != w.main || last.Position() != w.to || main.Size() != w.size || c.Box.MinSize().Height != w.high {
			t.Errorf("%v wide: the middle is at %v, %v large, the last at %v, all want %v; want %v, %v, %v, %v",
				w.width, main.Position(), main.Size(), last.Position(), c.Box.MinSize().Height, w.main, w.size, w.to, w.high)
		}
	}
}

// Scrolling goes no farther than what takes the keys, and not where it is seen: a
// press of the pointer must not move it away.
func TestRevealed(t *testing.T) {
	for _, c := range []struct{ top, from, high, want float32 }{
		{0, 10, 30, 0},     // seen
		{0, 90, 30, 20},    // below
		{50, 10, 30, 10},   // above
		{0, 85, 30, 0},     // half of it is seen
		{0, 150, 300, 150}, // higher than the room
		{40, 20, 300, 40},  // enough of it is seen
	} {
		if got := revealed(c.top, 100, c.from, c.high); got != c.want {
			t.Errorf("revealed(%v, 100, %v, %v) = %v, want %v", c.top, c.from, c.high, got, c.want)
		}
	}
}

// What stands at a side goes below where the first would get too little.
func TestSided(t *testing.T) {
	test.NewTempApp(t)
	first, side := block(100, 50), block(80, 120)
	box := NewSided(first, side, 150)
	for _, c := range []struct {
		width, first float32
		side         fyne.Position
		high         float32
	}{
		{300, 216, fyne.NewPos(220, 0), 120},
		{200, 200, fyne.NewPos(0, 54), 174},
	} {
		box.Resize(fyne.NewSize(c.width, 200))
		if first.Size().Width != c.first || side.Position() != c.side || box.MinSize().Height != c.high {
			t.Errorf("%v wide: the first is %v, the side at %v, both want %v; want %v, %v, %v", c.width, first.Size().Width, side.Position(), box.MinSize().Height, c.first, c.side, c.high)
		}
	}
}

// No option of the shot card's choices is cut, however narrow the cards are.
func TestShotChoicesAreWhole(t *testing.T) {
	defer words.Speak(words.English)
	for _, l := range words.Languages() {
		words.Speak(l)
		test.NewTempApp(t)
		p := NewShot(session.New(start(), "", nil))
		for _, width := range []float32{270, 300, 400} {
			p.Box.Resize(fyne.NewSize(width, 600))
			for _, d := range []*Dropdown{p.kind, p.meet} {
				if d.Size().Width < d.Whole() || d.Position().X+d.Size().Width > width {
					t.Errorf("%s, %v wide: a choice from %v is %v wide, want %v", l.Tag(), width, d.Position().X, d.Size().Width, d.Whole())
				}
			}
		}
	}
}

// No recipe of reels is cut.
func TestRecipesAreWhole(t *testing.T) {
	defer words.Speak(words.English)
	for _, l := range words.Languages() {
		words.Speak(l)
		test.NewTempApp(t)
		p := NewReels(session.New(start(), "", nil), ReelEvents{})
		p.Show()
		p.Box.Resize(fyne.NewSize(640, 400))
		if got, want := p.recipe.Size().Width, p.recipe.Whole(); got < want {
			t.Errorf("%s: the choice of recipes is %v wide, want %v", l.Tag(), got, want)
		}
	}
}

// The fields of a pair stand in a row where they show whole, in fewer columns in a
// narrower window, the captions of the first for both where they can be.
func TestFieldsOfAPair(t *testing.T) {
	test.NewTempApp(t)
	f := NewPairForm(func() {}, func() {})
	people := f.Box.(*fyne.Container).Objects[1].(*fyne.Container)
	second := people.Objects[2*ofPerson]
	for _, c := range []struct {
		width   float32
		columns int
	}{{1000, 4}, {500, 2}, {200, 1}} {
		container.NewStack(f.Box).Resize(fyne.NewSize(c.width, 600))
		across := people.Objects[1].Size().Width * float32(c.columns)
		if across > c.width || across < c.width*0.9 || second.Visible() != (c.columns < ofPerson) {
			t.Errorf("%v wide: a field is %v wide, want %d columns; the second's captions are shown: %v", c.width, people.Objects[1].Size().Width, c.columns, second.Visible())
		}
	}
}

// A play's title of three lines is clear of its tags, in letters of either size.
func TestThreeLinesOfAPlayAreClearOfItsTags(t *testing.T) {
	for _, large := range []bool{false, true} {
		test.NewTempApp(t).Settings().SetTheme(looks.Of(settings.Settings{LargeText: large}))
		r := newDraggedRow()
		r.set("a\nb\nc", lesson.Play{Tags: []string{"tag"}}, nil)
		r.Resize(fyne.NewSize(300, newDraggedRow().MinSize().Height))
		if got := r.title.MinSize().Height; got > r.tags.Position().Y+theme.InnerPadding() { // of air under its last line
			t.Errorf("large %v: three lines are %v high, the tags begin at %v", large, got, r.tags.Position().Y)
		}
	}
}
