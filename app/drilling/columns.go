package drilling

import "fyne.io/fyne/v2"

// columns lays two parts beside each other, the first of them wider: what is
// chosen there has names in it.
type columns struct{}

const (
	firstColumn          = 0.6
	columnMargin float32 = 16
)

// MinSize implements fyne.Layout.
func (columns) MinSize(o []fyne.CanvasObject) fyne.Size {
	a, b := o[0].MinSize(), o[1].MinSize()
	wide := max(a.Width/firstColumn, b.Width/(1-firstColumn)) + 3*columnMargin
	return fyne.NewSize(wide, max(a.Height, b.Height)+2*columnMargin)
}

// Layout implements fyne.Layout.
func (columns) Layout(o []fyne.CanvasObject, size fyne.Size) {
	wide, high := size.Width-3*columnMargin, size.Height-2*columnMargin
	o[0].Move(fyne.NewPos(columnMargin, columnMargin))
	o[0].Resize(fyne.NewSize(wide*firstColumn, high))
	o[1].Move(fyne.NewPos(2*columnMargin+wide*firstColumn, columnMargin))
	o[1].Resize(fyne.NewSize(wide*(1-firstColumn), high))
}
