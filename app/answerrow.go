package app

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"
)

// answerRow is a layout of a dialog's answers: in a row, all as wide as the widest,
// or each at its own width, or below each other, as the window has room.
type answerRow struct{ room func() float32 }

// widths are those of the answers in a row; nil where they do not fit into one.
func (r answerRow) widths(o []fyne.CanvasObject) []float32 {
	widths, widest, sum := make([]float32, len(o)), float32(0), float32(0)
	for i, b := range o {
		widths[i] = b.MinSize().Width
		widest = max(widest, widths[i])
		sum += widths[i]
	}
	room := r.room() - theme.Padding()*float32(len(o)-1)
	switch {
	case widest*float32(len(o)) <= room:
		for i := range widths {
			widths[i] = widest
		}
	case sum > room:
		return nil
	}
	return widths
}

// MinSize implements fyne.Layout.
func (r answerRow) MinSize(o []fyne.CanvasObject) (least fyne.Size) {
	widths := r.widths(o)
	for i, b := range o {
		size, gap := b.MinSize(), theme.Padding()
		if i == 0 {
			gap = 0
		}
		if widths == nil {
			least = fyne.NewSize(max(least.Width, size.Width), least.Height+gap+size.Height)
		} else {
			least = fyne.NewSize(least.Width+gap+widths[i], max(least.Height, size.Height))
		}
	}
	return least
}

// Layout implements fyne.Layout.
func (r answerRow) Layout(o []fyne.CanvasObject, size fyne.Size) {
	widths, at := r.widths(o), fyne.Position{}
	for i, b := range o {
		b.Move(at)
		if widths == nil {
			b.Resize(fyne.NewSize(size.Width, b.MinSize().Height))
			at.Y += b.MinSize().Height + theme.Padding()
			continue
		}
		b.Resize(fyne.NewSize(widths[i], size.Height))
		at.X += widths[i] + theme.Padding()
	}
}
