package heard

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"
)

// Entry is a field to type into. Enter is offered unless the field has a use of
// its own for it; where it begins a new line, Ctrl+Enter is offered as Enter.
type Entry struct {
	widget.Entry
	made fyne.Focusable // what the toolkit knows it by
}

// NewEntry is an empty field of one line.
func NewEntry() *Entry {
	e := &Entry{}
	e.ExtendBaseWidget(e)
	return e
}

// ExtendBaseWidget makes a field part of another widget, as the toolkit's does.
func (e *Entry) ExtendBaseWidget(w fyne.Widget) {
	e.made = w.(fyne.Focusable)
	e.Entry.ExtendBaseWidget(w)
}

// AcceptsTab implements fyne.Tabbable: the Tab key goes on to the next control.
func (e *Entry) AcceptsTab() bool { return false }

// TypedKey implements fyne.Focusable.
func (e *Entry) TypedKey(k *fyne.KeyEvent) {
	offered := k.Name == fyne.KeyEscape || enter(k) && !e.MultiLine && e.OnSubmitted == nil
	if !offered || !Offered(e.made, k) {
		e.Entry.TypedKey(k)
	}
}

// TypedShortcut implements fyne.Shortcutable.
func (e *Entry) TypedShortcut(s fyne.Shortcut) {
	c, ok := s.(*desktop.CustomShortcut)
	k := &fyne.KeyEvent{Name: fyne.KeyReturn}
	if ok && (c.KeyName == fyne.KeyReturn || c.KeyName == fyne.KeyEnter) && c.Modifier == fyne.KeyModifierShortcutDefault && Offered(e.made, k) {
		return
	}
	e.Entry.TypedShortcut(s)
}

// SelectAll selects the whole text, so that typing replaces it.
func (e *Entry) SelectAll() { e.Entry.TypedShortcut(&fyne.ShortcutSelectAll{}) }

// FocusGained implements fyne.Focusable.
func (e *Entry) FocusGained() {
	e.Entry.FocusGained()
	Focused(e.made.(fyne.CanvasObject))
}
