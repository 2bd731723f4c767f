package drilling

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
)

// keyButton is a button that keeps the keys when it is pressed by one, and hands
// on every key that it has no use for: digits answer wherever the keys are.
type keyButton struct {
	widget.Button
	other func(*fyne.KeyEvent)
}

func newKeyButton(text string, do func(), other func(*fyne.KeyEvent)) *keyButton {
	b := &keyButton{other: other}
	b.Text, b.OnTapped = text, do
	b.ExtendBaseWidget(b)
	return b
}

// TypedKey implements fyne.Focusable.
func (b *keyButton) TypedKey(k *fyne.KeyEvent) {
	pressed := k.Name == fyne.KeySpace || k.Name == fyne.KeyReturn || k.Name == fyne.KeyEnter
	if pressed && b.Visible() && !b.Disabled() {
		b.OnTapped()
		return
	}
	b.other(k)
}
