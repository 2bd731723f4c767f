package app

import (
	"fyne.io/fyne/v2"

	"homeside/app/rallystrip"
)

// shelf lays out three parts, one below the other: what is worked on, a bar, and
// the rally strip, which takes less where there is little height.
type shelf struct{ strip *rallystrip.Strip }

// MinSize implements fyne.Layout.
func (shelf) MinSize(o []fyne.CanvasObject) fyne.Size {
	var size fyne.Size
	for _, part := range o {
		least := part.MinSize()
		size = fyne.NewSize(max(size.Width, least.Width), size.Height+least.Height)
	}
	return size
}

// Layout implements fyne.Layout.
func (s shelf) Layout(o []fyne.CanvasObject, size fyne.Size) {
	o[1].Resize(fyne.NewSize(size.Width, o[1].MinSize().Height)) // it may be of one line or two
	bar, strip := o[1].MinSize().Height, s.strip.HeightIn(size.Height)
	top := float32(0)
	for i, h := range []float32{size.Height - bar - strip, bar, strip} {
		o[i].Move(fyne.NewPos(0, top))
		o[i].Resize(fyne.NewSize(size.Width, h))
		top += h
	}
}
