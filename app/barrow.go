package app

import (
	"fyne.io/fyne/v2"

	"homeside/app/looks"
)

// barRow lays out the buttons over the rally strip, the status line and a button at
// the end: in one row, or line and end below where the line would have little room.
type barRow struct{ below bool }

// leastLine is the room that the status line wants in a row, in ordinary letters.
const leastLine = 220

// MinSize implements fyne.Layout.
func (r *barRow) MinSize(o []fyne.CanvasObject) fyne.Size {
	buttons, second := o[0].MinSize(), o[1].MinSize().Add(fyne.NewSize(endSize(o[2]).Width, 0))
	second.Height = max(second.Height, endSize(o[2]).Height)
	if r.below {
		return fyne.NewSize(max(buttons.Width, second.Width), buttons.Height+second.Height)
	}
	return fyne.NewSize(max(buttons.Width, second.Width), max(buttons.Height, second.Height))
}

// endSize is the room of a button that may be hidden.
func endSize(o fyne.CanvasObject) fyne.Size {
	if !o.Visible() {
		return fyne.Size{}
	}
	return o.MinSize()
}

// Layout implements fyne.Layout.
func (r *barRow) Layout(o []fyne.CanvasObject, size fyne.Size) {
	buttons, end := o[0].MinSize(), endSize(o[2])
	r.below = size.Width-buttons.Width-end.Width < leastLine*looks.Letters()
	line := fyne.NewPos(buttons.Width, 0)
	if r.below {
		line = fyne.NewPos(0, buttons.Height)
	}
	high := max(end.Height, o[1].MinSize().Height)
	for i, part := range []struct {
		at   fyne.Position
		size fyne.Size
	}{
		{fyne.Position{}, buttons},
		{line, fyne.NewSize(size.Width-line.X-end.Width, high)},
		{fyne.NewPos(size.Width-end.Width, line.Y), fyne.NewSize(end.Width, high)},
	} {
		o[i].Move(part.at)
		o[i].Resize(part.size)
	}
}
