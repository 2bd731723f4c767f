package panel

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"
)

// namedChoices is a layout of names and their choices in turn: a choice beside its
// name, or below it where one of its options would be cut.
type namedChoices struct{ width float32 }

// below says whether a choice stands below its name, beside which so much is left.
func (l *namedChoices) below(choice fyne.CanvasObject, beside float32) bool {
	need := choice.MinSize().Width
	if d, ok := choice.(*Dropdown); ok {
		need = d.Whole()
	}
	return l.width > 0 && need > beside
}

// names is how wide the widest name is, with the air behind it.
func (l *namedChoices) names(o []fyne.CanvasObject) (w float32) {
	for i := 0; i < len(o); i += 2 {
		if o[i].Visible() {
			w = max(w, o[i].MinSize().Width)
		}
	}
	return w + theme.Padding()
}

// MinSize implements fyne.Layout.
func (l *namedChoices) MinSize(o []fyne.CanvasObject) (least fyne.Size) {
	names := l.names(o)
	for i := 0; i < len(o); i += 2 {
		if !o[i].Visible() {
			continue
		}
		name, choice := o[i].MinSize(), o[i+1].MinSize()
		if l.below(o[i+1], l.width-names) {
			least = fyne.NewSize(max(least.Width, name.Width, choice.Width), least.Height+name.Height+choice.Height+theme.Padding())
		} else {
			least = fyne.NewSize(max(least.Width, names+choice.Width), least.Height+max(name.Height, choice.Height)+theme.Padding())
		}
	}
	return least
}

// Layout implements fyne.Layout.
func (l *namedChoices) Layout(o []fyne.CanvasObject, size fyne.Size) {
	l.width = size.Width
	names, y := l.names(o), float32(0)
	for i := 0; i < len(o); i += 2 {
		if !o[i].Visible() {
			continue
		}
		name, choice := o[i].MinSize(), o[i+1].MinSize()
		high, at := max(name.Height, choice.Height), fyne.NewPos(names, y)
		if l.below(o[i+1], size.Width-names) {
			high, at = name.Height, fyne.NewPos(0, y+name.Height)
		}
		o[i].Move(fyne.NewPos(0, y))
		o[i].Resize(fyne.NewSize(name.Width, high))
		o[i+1].Move(at)
		o[i+1].Resize(fyne.NewSize(size.Width-at.X, choice.Height))
		y = max(y+high, at.Y+choice.Height) + theme.Padding()
	}
}
