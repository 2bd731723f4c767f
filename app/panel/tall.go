package panel

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
)

// Tall is content that scrolls up and down where the room is lower than it. It is
// as wide as the room: what it holds breaks its lines, or says how wide it must be.
type Tall struct {
	Box    *fyne.Container
	scroll *container.Scroll
}

// NewTall is content in as little height as leastTall.
func NewTall(content fyne.CanvasObject) *Tall {
	return NewTallIn(content, func() float32 { return leastTall })
}

// NewTallIn is content that takes the height it wants up to the one that there is
// then.
func NewTallIn(content fyne.CanvasObject, room func() float32) *Tall {
	t := &Tall{scroll: container.NewVScroll(content)}
	t.Box = container.New(tall{room}, t.scroll)
	return t
}

// leastTall is the height in which a page can still be scrolled.
const leastTall = 120

// Reveal scrolls so that something in the content can be seen.
func (t *Tall) Reveal(o fyne.CanvasObject) {
	driver := fyne.CurrentApp().Driver()
	if !t.Box.Visible() || driver.CanvasForObject(t.Box) == nil || driver.CanvasForObject(t.Box) != driver.CanvasForObject(o) {
		return
	}
	inside := driver.AbsolutePositionForObject(o).Subtract(driver.AbsolutePositionForObject(t.scroll.Content))
	if content := t.scroll.Content.Size(); inside.Y < 0 || inside.Y+o.Size().Height > content.Height || inside.X < 0 || inside.X >= content.Width {
		return // it stands elsewhere
	}
	top := revealed(t.scroll.Offset.Y, t.scroll.Size().Height, inside.Y, o.Size().Height)
	if top != t.scroll.Offset.Y {
		t.scroll.ScrollToOffset(fyne.NewPos(0, top))
	}
}

// enoughSeen is the height of something that need not be seen whole: what the
// pointer presses must not move away under it.
const enoughSeen = 20

// revealed is how far to scroll from top so that a part of the content, from one
// height on and so high, is seen in the room: its beginning first, no farther than
// needed, and not at all where enough of it is seen.
func revealed(top, room, from, high float32) float32 {
	if seen := min(top+room, from+high) - max(top, from); seen >= min(enoughSeen, high/2) {
		return top
	}
	return min(max(top, from+high-room), from)
}

// tall lays out a scroll whose content is as wide as there is room and then as high
// as its lines need.
type tall struct{ room func() float32 }

// MinSize implements fyne.Layout.
func (l tall) MinSize(o []fyne.CanvasObject) fyne.Size {
	need := o[0].(*container.Scroll).Content.MinSize()
	return fyne.NewSize(need.Width, min(need.Height, l.room()))
}

// Layout implements fyne.Layout.
func (l tall) Layout(o []fyne.CanvasObject, size fyne.Size) {
	s := o[0].(*container.Scroll)
	s.Resize(size)
	if s.Content.MinSize().Height != s.Content.Size().Height {
		s.Refresh() // lines are broken to the width only now
	}
}
