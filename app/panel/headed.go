package panel

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"
)

// Headed is a layout of a head over a body. The head is as high as its text is
// once that is broken to the width there is: a layout that asks before would let
// the body lie over the last lines.
type Headed struct{}

// MinSize implements fyne.Layout.
func (Headed) MinSize(o []fyne.CanvasObject) fyne.Size {
	head, body := o[0].MinSize(), o[1].MinSize()
	return fyne.NewSize(max(head.Width, body.Width), head.Height+theme.Padding()+body.Height)
}

// Layout implements fyne.Layout.
func (Headed) Layout(o []fyne.CanvasObject, size fyne.Size) {
	h := broken(o[0], size.Width)
	o[0].Move(fyne.Position{})
	top := h + theme.Padding()
	o[1].Move(fyne.NewPos(0, top))
	o[1].Resize(fyne.NewSize(size.Width, max(size.Height-top, 0)))
}

// broken gives something a width and says how high it is with its lines broken to it.
func broken(o fyne.CanvasObject, width float32) float32 {
	o.Resize(fyne.NewSize(width, o.MinSize().Height))
	h := o.MinSize().Height
	o.Resize(fyne.NewSize(width, h))
	return h
}

// answered is a layout of a sentence and the buttons that answer it, a container of
// flow: beside it, or below it where the sentence would get too little room.
type answered struct {
	before bool // the buttons stand before the sentence
	below  bool
}

// leastSentence is the room that a sentence wants beside its buttons.
const leastSentence = 400

// MinSize implements fyne.Layout.
func (a *answered) MinSize(o []fyne.CanvasObject) fyne.Size {
	said, buttons := o[0].MinSize(), o[1].MinSize()
	if a.below {
		return fyne.NewSize(buttons.Width, said.Height+buttons.Height)
	}
	return fyne.NewSize(buttons.Width, max(said.Height, buttons.Height))
}

// Layout implements fyne.Layout.
func (a *answered) Layout(o []fyne.CanvasObject, size fyne.Size) {
	buttons := fyne.NewSize(inOneLine(o[1].(*fyne.Container).Objects), tallest(o[1].(*fyne.Container).Objects))
	beside := size.Width - buttons.Width - theme.Padding()
	a.below = beside < leastSentence*theme.TextSize()/usualText
	o[0].Move(fyne.Position{})
	if a.below {
		a.layBelow(o, size.Width)
		return
	}
	o[1].Resize(buttons)
	h := max(broken(o[0], beside), buttons.Height)
	o[1].Move(fyne.NewPos(size.Width-buttons.Width, (h-buttons.Height)/2))
	if a.before {
		o[1].Move(fyne.Position{})
		o[0].Move(fyne.NewPos(size.Width-beside, (h-o[0].Size().Height)/2))
	}
}

func (a *answered) layBelow(o []fyne.CanvasObject, width float32) {
	if a.before {
		o[0].Move(fyne.NewPos(0, broken(o[1], width)))
		broken(o[0], width)
		o[1].Move(fyne.Position{})
		return
	}
	o[1].Move(fyne.NewPos(0, broken(o[0], width)))
	broken(o[1], width)
}

// usualText is the size of letters that rooms are said for.
const usualText = 14
