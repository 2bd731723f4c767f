package heard

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
)

// Button is a button that Enter presses, as the space bar does, and that keeps the
// focus then: the toolkit's own loses it with every press.
type Button struct{ widget.Button }

// NewButton is a button that does something.
func NewButton(text string, do func()) *Button { return NewButtonWithIcon(text, nil, do) }

// NewButtonWithIcon is a button with a picture.
func NewButtonWithIcon(text string, icon fyne.Resource, do func()) *Button {
	b := &Button{}
	b.Text, b.Icon, b.OnTapped = text, icon, do
	b.ExtendBaseWidget(b)
	return b
}

// TypedKey implements fyne.Focusable.
func (b *Button) TypedKey(k *fyne.KeyEvent) { PressKey(b, &b.Button, k) }

// PressKey is TypedKey of a button of any make: of is what the toolkit knows it by.
func PressKey(of fyne.Focusable, b *widget.Button, k *fyne.KeyEvent) {
	switch {
	case !enter(k) && k.Name != fyne.KeySpace:
		Offered(of, k)
	case b.OnTapped != nil && !b.Disabled():
		b.OnTapped()
	}
}
