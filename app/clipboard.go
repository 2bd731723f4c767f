package app

import (
	"errors"
	"strings"

	"fyne.io/fyne/v2"

	"homeside/model/edit"
	"homeside/model/lessonfile"
	"homeside/words"
)

// clipItems are cut, copy and paste, by the toolkit's own shortcuts: others do
// not arrive.
func (e *Editor) clipItems() []*fyne.MenuItem {
	return []*fyne.MenuItem{
		e.fieldItem(words.T("Cut"), e.cut, &fyne.ShortcutCut{Clipboard: e.clipboard()}),
		e.fieldItem(words.T("Copy"), e.copyPicked, &fyne.ShortcutCopy{Clipboard: e.clipboard()}),
		e.fieldItem(words.T("Paste"), e.paste, &fyne.ShortcutPaste{Clipboard: e.clipboard()}),
		e.fieldItem(words.T("Pick all players"), e.pickAll, &fyne.ShortcutSelectAll{}),
	}
}

// fieldItem is an item whose shortcut is for a field that is being typed into,
// while there is one: a menu's shortcut comes before a field's.
func (e *Editor) fieldItem(label string, do func(), s fyne.Shortcut) *fyne.MenuItem {
	m := fyne.NewMenuItem(label, func() {
		if field, ok := e.win.Canvas().Focused().(fyne.Shortcutable); ok {
			field.TypedShortcut(s)
			return
		}
		e.guard(do)()
	})
	m.Shortcut = s
	return m
}

func (e *Editor) clipboard() fyne.Clipboard { return e.app.Clipboard() }

// copyPicked copies what is picked, or else the play shown.
func (e *Editor) copyPicked() { e.copyParts(e.session.Picked()) }

// copyParts puts parts of the play on the clipboard as text; false if it fails.
func (e *Editor) copyParts(parts []edit.Part) bool {
	c, ok := e.session.Copied(parts)
	if !ok {
		e.say(words.T("There is no play to copy."))
		return false
	}
	var text strings.Builder
	if err := lessonfile.WriteClip(&text, c); err != nil {
		e.say(words.T("Not copied: %s", err.Error()))
		return false
	}
	e.clipboard().SetContent(text.String())
	e.say(words.Copied(c))
	e.trace.say("copied %d bytes", text.Len())
	return true
}

// cut copies and then takes away: what is picked, or else the play shown.
func (e *Editor) cut() {
	picked := e.session.Picked()
	if !e.copyParts(picked) {
		return
	}
	if len(picked) > 0 {
		e.deletePicked()
		return
	}
	e.session.DeletePlay()
}

// paste puts what was copied into the play shown, plays behind it.
func (e *Editor) paste() {
	c, err := lessonfile.ReadClip(strings.NewReader(e.clipboard().Content()))
	switch {
	case errors.Is(err, lessonfile.ErrNotClip):
		e.say(words.T("What is on the clipboard was not copied from a lesson: nothing is pasted."))
	case err != nil:
		e.say(words.T("Nothing is pasted: %s", err.Error()))
	case !e.session.Paste(words.Paste(c), c):
		e.say(words.T("There is no room for what was copied."))
	default:
		e.say(words.Pasted(c))
		return
	}
	e.trace.say("nothing pasted")
}

func (e *Editor) pasteItem() *fyne.MenuItem { return e.item(words.T("Paste"), e.paste, nil) }
