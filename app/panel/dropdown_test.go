package panel

import (
	"slices"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"homeside/app/heard"
)

// A choice that lets go does so where the pointer has chosen; what was chosen by
// keys keeps them, and keys without a use are offered to the window.
func TestDropdownLetsGo(t *testing.T) {
	test.NewTempApp(t)
	var handed []string
	at := -1
	list := NewLettingGo([]string{"x", "y"}, 0, func(i int) { at = i })
	win := test.NewTempWindow(t, nil)
	win.SetContent(heard.NewWindow(list, func(k *fyne.KeyEvent) bool { handed = append(handed, string(k.Name)); return true }))
	win.Resize(fyne.NewSize(200, 200))
	c := win.Canvas()
	c.Focus(list)
	for _, k := range []fyne.KeyName{fyne.KeyRight, fyne.KeyPageDown, fyne.KeyEscape} {
		list.TypedKey(&fyne.KeyEvent{Name: k})
	}
	if c.Focused() == nil || at != 1 || !slices.Equal(handed, []string{"Next", "Escape"}) {
		t.Errorf("after keys %v has them, chosen %d, handed on %v", c.Focused(), at, handed)
	}
	test.Tap(list)
	c.Overlays().Top().Hide()
	c.Overlays().Remove(c.Overlays().Top())
	list.SetSelectedIndex(0) // what the list does with a choice
	if c.Focused() != nil || at != 0 {
		t.Errorf("after a choice by the pointer %v has the keys, chosen %d", c.Focused(), at)
	}
}
