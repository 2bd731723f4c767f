package courtview

import "fyne.io/fyne/v2"

var _ fyne.Focusable = (*View)(nil)

// FocusGained implements fyne.Focusable.
func (v *View) FocusGained() {
	v.ring.Show(true)
	if v.events.Focused != nil {
		v.events.Focused()
	}
}

// FocusLost implements fyne.Focusable.
func (v *View) FocusLost() { v.ring.Show(false) }

// TypedRune implements fyne.Focusable.
func (v *View) TypedRune(r rune) {
	if v.events.Rune != nil {
		v.events.Rune(r)
	}
}

// TypedKey implements fyne.Focusable. The space bar acts when it is let go: see
// KeyUp.
func (v *View) TypedKey(k *fyne.KeyEvent) {
	if k.Name == fyne.KeySpace && v.space.held {
		return
	}
	if v.events.Key != nil {
		v.events.Key(k)
	}
}
