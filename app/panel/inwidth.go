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
