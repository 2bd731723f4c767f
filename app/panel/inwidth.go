package panel

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"homeside/app/looks"
)

// inWidth gives a control a width in ordinary letters, more in large ones.
func inWidth(width float32, o fyne.CanvasObject) *fyne.Container {
	return container.New(ofWidth(width), o)
}

type ofWidth float32

// MinSize implements fyne.Layout.
func (w ofWidth) MinSize(o []fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(float32(w)*looks.Letters(), o[0].MinSize().Height)
}

// Layout implements fyne.Layout: the control keeps its height in a higher row.
func (w ofWidth) Layout(o []fyne.CanvasObject, size fyne.Size) {
	high := o[0].MinSize().Height
	o[0].Resize(fyne.NewSize(size.Width, high))
	o[0].Move(fyne.NewPos(0, (size.Height-high)/2))
}

// ofHeight is a layout of something at least so high in ordinary letters, higher in
// large ones, as the lines beside it are.
type ofHeight float32

// MinSize implements fyne.Layout.
func (h ofHeight) MinSize(o []fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(o[0].MinSize().Width, max(o[0].MinSize().Height, float32(h)*looks.Letters()))
}

// Layout implements fyne.Layout.
func (h ofHeight) Layout(o []fyne.CanvasObject, size fyne.Size) { o[0].Resize(size) }
