package rehearse

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"

	"homeside/app/panel"
)

// The least that a full screen has to give, in the toolkit's units.
var leastSize = fyne.NewSize(320, 240)

// column lays its parts one below the other, each as high as it needs at the width
// there is, and gives the one of this index the rest.
type column struct{ stretched int }

// MinSize implements fyne.Layout: what does not fit onto the screen is not asked
// for, the stretched part gives way.
func (column) MinSize([]fyne.CanvasObject) fyne.Size { return leastSize }

// Layout implements fyne.Layout.
func (c column) Layout(parts []fyne.CanvasObject, size fyne.Size) {
	rest := size.Height
	high := make([]float32, len(parts))
	for i, o := range parts {
		if i != c.stretched && o.Visible() {
			high[i] = highAt(o, size.Width)
			rest -= high[i]
		}
	}
	high[c.stretched] = max(rest, 0)
	y := float32(0)
	for i, o := range parts {
		o.Move(fyne.NewPos(0, y))
		o.Resize(fyne.NewSize(size.Width, high[i]))
		y += high[i]
	}
}

// highAt is how high something is at a width, which it may have to be given first.
func highAt(o fyne.CanvasObject, width float32) float32 {
	if box, ok := o.(*fyne.Container); ok {
		if f, ok := box.Layout.(flow); ok {
			return f.highAt(box.Objects, width)
		}
	}
	o.Resize(fyne.NewSize(width, o.MinSize().Height))
	return o.MinSize().Height
}

// flow lays its parts in rows from the left, as many in a row as fit.
type flow struct{}

// MinSize implements fyne.Layout.
func (flow) MinSize(parts []fyne.CanvasObject) fyne.Size {
	var least fyne.Size
	for _, o := range parts {
		least = least.Max(needed(o))
	}
	return least.AddWidthHeight(2*theme.Padding(), 2*theme.Padding())
}

// Layout implements fyne.Layout.
func (f flow) Layout(parts []fyne.CanvasObject, size fyne.Size) {
	f.place(parts, size.Width, func(o fyne.CanvasObject, at fyne.Position, of fyne.Size) {
		o.Move(at)
		o.Resize(of)
	})
}

func (f flow) highAt(parts []fyne.CanvasObject, width float32) float32 {
	return f.place(parts, width, func(fyne.CanvasObject, fyne.Position, fyne.Size) {})
}

// place tells where each part goes and how high they are together.
func (flow) place(parts []fyne.CanvasObject, width float32, put func(fyne.CanvasObject, fyne.Position, fyne.Size)) float32 {
	gap := theme.Padding()
	x, y, high := gap, gap, float32(0)
	for _, o := range parts {
		if !o.Visible() {
			continue
		}
		size := needed(o)
		if x > gap && x+size.Width+gap > width {
			x, y, high = gap, y+high+gap, 0
		}
		put(o, fyne.NewPos(x, y), size)
		x, high = x+size.Width+gap, max(high, size.Height)
	}
	return y + high + gap
}

// needed is the room in which all of a control is read: a choice from a list would
// do with less than its options.
func needed(o fyne.CanvasObject) fyne.Size {
	size := o.MinSize()
	if d, ok := o.(*panel.Dropdown); ok {
		for _, text := range d.Options {
			letters := fyne.MeasureText(text, theme.TextSize(), fyne.TextStyle{}).Width
			size.Width = max(size.Width, letters+theme.IconInlineSize()+4*theme.InnerPadding())
		}
	}
	return size
}

// narrow puts its one part in the middle, no larger than a size.
type narrow struct{ most fyne.Size }

// MinSize implements fyne.Layout.
func (narrow) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.Size{} }

// Layout implements fyne.Layout.
func (n narrow) Layout(parts []fyne.CanvasObject, size fyne.Size) {
	own := size.Min(n.most)
	for _, o := range parts {
		o.Resize(own)
		o.Move(fyne.NewPos((size.Width-own.Width)/2, (size.Height-own.Height)/2))
	}
}
