package panel

import (
	"fyne.io/fyne/v2"

	"homeside/app/heard"
	"homeside/words"
)

// searchEntry is a field to search in. Down and Enter leave it for what was
// found, Escape for everything.
type searchEntry struct {
	heard.Entry
	wanted bool // it was asked for
	leave  func(all bool)
}

func newSearchEntry(changed func(string), leave func(all bool)) *searchEntry {
	e := &searchEntry{leave: leave}
	e.ExtendBaseWidget(e)
	e.OnChanged = changed
	e.SetPlaceHolder(words.T("Search: title, notes, tags"))
	return e
}

// TypedKey implements fyne.Focusable.
func (e *searchEntry) TypedKey(k *fyne.KeyEvent) {
	switch k.Name {
	case fyne.KeyEscape:
		e.leave(true)
	case fyne.KeyDown, fyne.KeyReturn, fyne.KeyEnter:
		e.leave(false)
	default:
		e.Entry.TypedKey(k)
	}
}
