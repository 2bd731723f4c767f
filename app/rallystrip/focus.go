package rallystrip

import "fyne.io/fyne/v2"

var _ fyne.Focusable = (*Strip)(nil)

// FocusGained implements fyne.Focusable.
func (v *Strip) FocusGained() {
	v.ring.Show(true)
	if v.events.Focused != nil {
		v.events.Focused()
	}
}

// FocusLost implements fyne.Focusable.
func (v *Strip) FocusLost() { v.ring.Show(false) }

// TypedRune implements fyne.Focusable.
func (v *Strip) TypedRune(r rune) {
	if v.events.Rune != nil {
		v.events.Rune(r)
	}
}

// TypedKey implements fyne.Focusable.
func (v *Strip) TypedKey(k *fyne.KeyEvent) { v.events.Key(k) }
