package panel

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/theme"
)

// sided is a layout of something and what stands beside it on the right: below it
// where the first would get less than its least width.
type sided struct {
	least float32 // in ordinary letters
	below bool
}

// NewSided is something with something else at its right side, or below it where it
// would get less than its least width in ordinary letters.
func NewSided(first, side fyne.CanvasObject, least float32) *fyne.Container {
	return container.New(&sided{least: least}, first, side)
}

// MinSize implements fyne.Layout.
func (s *sided) MinSize(o []fyne.CanvasObject) fyne.Size {
	first, side := o[0].MinSize(), o[1].MinSize()
	high := max(first.Height, side.Height)
	if s.below {
		high = first.Height + theme.Padding() + side.Height
	}
	return fyne.NewSize(max(first.Width, side.Width), high)
}

// Layout implements fyne.Layout.
func (s *sided) Layout(o []fyne.CanvasObject, size fyne.Size) {
	side := o[1].MinSize()
	rest := size.Width - side.Width - theme.Padding()
	s.below = rest < max(s.least*theme.TextSize()/usualText, o[0].MinSize().Width)
	o[0].Move(fyne.Position{})
	if s.below {
		h := broken(o[0], size.Width)
		o[1].Move(fyne.NewPos(0, h+theme.Padding()))
		broken(o[1], size.Width)
		return
	}
	broken(o[0], rest)
	o[0].Resize(fyne.NewSize(rest, size.Height))
	o[1].Move(fyne.NewPos(rest+theme.Padding(), 0))
	o[1].Resize(fyne.NewSize(side.Width, size.Height))
}
