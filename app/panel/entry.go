package panel

import (
	"fyne.io/fyne/v2"

	"homeside/app/heard"
)

// commitEntry is a field whose text is taken when Enter is pressed or the field
// is left, once for every change. Escape puts back what it was.
type commitEntry struct {
	heard.Entry
	taken string // the text last shown or taken
	take  func(text string)
}

func newCommitEntry(take func(string)) *commitEntry {
	e := &commitEntry{take: take}
	e.ExtendBaseWidget(e)
	e.OnSubmitted = func(string) { e.commit() }
	return e
}

// TypedKey implements fyne.Focusable.
func (e *commitEntry) TypedKey(k *fyne.KeyEvent) {
	if k.Name == fyne.KeyEscape {
		e.SetText(e.taken)
	}
	e.Entry.TypedKey(k)
}

// FocusLost implements fyne.Focusable.
func (e *commitEntry) FocusLost() {
	e.Entry.FocusLost()
	e.commit()
}

func (e *commitEntry) commit() {
	if e.Text != e.taken {
		e.taken = e.Text
		e.take(e.Text)
	}
}

// show sets the text without taking it.
func (e *commitEntry) show(text string) {
	if e.taken != text || e.Text != text {
		e.taken = text
		e.SetText(text)
	}
}
