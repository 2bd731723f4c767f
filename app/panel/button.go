package panel

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
)

// Button is the toolkit's button with one mend: pressed by a key it keeps the keys, so
// that Tab goes on from there; the toolkit's own gives them up. Enter presses it, too.
type Button struct {
	widget.Button
	Keys func(*fyne.KeyEvent)  // takes the keys that do not press it; nil offers them to the window
	Then func() fyne.Focusable // gets the keys where the button is off after it was pressed; may be nil
}

// NewButton is a button with a text and an icon, which may be nil.
func NewButton(text string, icon fyne.Resource, tapped func()) *Button {
	b := &Button{}
	b.Text, b.Icon, b.OnTapped = text, icon, tapped
	b.ExtendBaseWidget(b)
	return b
}

// TypedKey implements fyne.Focusable.
func (b *Button) TypedKey(k *fyne.KeyEvent) {
	switch k.Name {
	case fyne.KeySpace, fyne.KeyReturn, fyne.KeyEnter:
		b.press()
	default:
		if b.Keys != nil {
			b.Keys(k)
		} else {
			heard.Offered(b, k)
		}
	}
}

// press presses the button by a key.
func (b *Button) press() {
	w := fyne.CurrentApp().Driver().CanvasForObject(b)
	if b.Disabled() || w == nil {
		return
	}
	b.Tapped(nil)
	next := fyne.Focusable(b)
	if b.Disabled() && b.Then != nil {
		next = b.Then()
	}
	if w.Focused() == nil && w.Overlays().Top() == nil && next.(fyne.CanvasObject).Visible() {
		w.Focus(next)
	}
}
