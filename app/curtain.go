package app

import "fyne.io/fyne/v2"

// curtain is the layout of a window of one thing that is laid out only when all of it
// stands: the toolkit would otherwise do so whenever a part is added, at sizes that
// nobody sees.
type curtain struct{ up bool }

// MinSize implements fyne.Layout: nothing while the curtain is down.
func (c *curtain) MinSize(o []fyne.CanvasObject) fyne.Size {
	if !c.up {
		return fyne.Size{}
	}
	return o[0].MinSize()
}

// Layout implements fyne.Layout.
func (c *curtain) Layout(o []fyne.CanvasObject, size fyne.Size) {
	if c.up {
		o[0].Resize(size)
	}
}
