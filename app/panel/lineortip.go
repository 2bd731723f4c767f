package panel

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"
)

// LineOrTip is a line in whose place a button's tip is shown for a while. It takes
// the room of the longer one, so that nothing beside it jumps.
type LineOrTip struct {
	Box       *fyne.Container
	Line, tip *widget.Label
}

// NewLineOrTip is a line with another label like it for tips.
func NewLineOrTip(line, tip *widget.Label) *LineOrTip {
	tip.Hide()
	return &LineOrTip{Box: container.New(steady{}, line, tip), Line: line, tip: tip}
}

// Tell shows a tip, and the line again for "".
func (l *LineOrTip) Tell(tip string) {
	l.tip.SetText(tip)
	show(l.tip, tip != "")
	show(l.Line, tip == "")
}

// Centre breaks both into lines in the middle.
func (l *LineOrTip) Centre() {
	for _, one := range []*widget.Label{l.Line, l.tip} {
		one.Wrapping, one.Alignment = fyne.TextWrapWord, fyne.TextAlignCenter
	}
}

// steady lays what it holds over one another, and keeps room for what is hidden.
type steady struct{}

// MinSize implements fyne.Layout.
func (steady) MinSize(all []fyne.CanvasObject) (size fyne.Size) {
	for _, o := range all {
		size = size.Max(o.MinSize())
	}
	return size
}

// Layout implements fyne.Layout.
func (steady) Layout(all []fyne.CanvasObject, size fyne.Size) {
	for _, o := range all {
		o.Resize(size)
	}
}
