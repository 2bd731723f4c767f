package rallystrip

import "fyne.io/fyne/v2"

var _ fyne.Focusable = (*Strip)(nil)

// FocusGained implements fyne.Focusable.
func (v *Strip) FocusGained() { v.ring.Show(true) }

// FocusLost implements fyne.Focusable.
func (v *Strip) FocusLost() { v.ring.Show(false) }

// TypedRune implements fyne.Focusable.
func (v *Strip) TypedRune(rune) {}

// TypedKey implements fyne.Focusable.
func (v *Strip) TypedKey(k *fyne.KeyEvent) { v.events.Key(k) }
