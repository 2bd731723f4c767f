package keyed

import (
	"slices"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/test"
)

// Each control uses its own keys and hands the others on, each once.
func TestKeysAreHandedOn(t *testing.T) {
	test.NewTempApp(t)
	var used, handed []string
	use := func(what string) { used = append(used, what) }
	keys := Keys(func(k *fyne.KeyEvent) { handed = append(handed, string(k.Name)) })
	button := NewButton("b", nil, func() { use("button") }, keys)
	check := NewCheck("c", false, func(bool) { use("check") }, keys)
	list := NewDropdown([]string{"x", "y"}, 0, func(at int) { use("list " + string(rune('0'+at))) }, keys)
	win := test.NewTempWindow(t, button)
	for _, c := range []struct {
		on           fyne.Focusable
		used, handed []string
	}{
		{button, []string{"button", "button"}, []string{"Right", "Next", "Escape"}},
		{check, []string{"check"}, []string{"Right", "Next", "Escape", "Return"}},
		{list, []string{"list 1"}, []string{"Next", "Escape"}},
	} {
		used, handed = nil, nil
		win.SetContent(c.on.(fyne.CanvasObject))
		for _, k := range []fyne.KeyName{fyne.KeyRight, fyne.KeyPageDown, fyne.KeyEscape} {
			c.on.TypedKey(&fyne.KeyEvent{Name: k})
		}
		if c.on != fyne.Focusable(list) { // there it opens the list
			c.on.TypedKey(&fyne.KeyEvent{Name: fyne.KeySpace})
			c.on.TypedRune(' ')
			c.on.TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
		}
		if !slices.Equal(used, c.used) || !slices.Equal(handed, c.handed) {
			t.Errorf("%T uses %v and hands on %v, want %v and %v", c.on, used, handed, c.used, c.handed)
		}
	}
	NewButton("", nil, nil, nil).TypedKey(&fyne.KeyEvent{Name: fyne.KeyEscape}) // nobody wants it
}

// What the pointer has worked lets the keys go, what was chosen by keys keeps them.
func TestPointerLetsGo(t *testing.T) {
	test.NewTempApp(t)
	check := NewCheck("c", false, nil, nil)
	list := NewDropdown([]string{"x", "y"}, 0, func(int) {}, nil)
	win := test.NewTempWindow(t, container.NewVBox(check, list))
	win.Resize(fyne.NewSize(200, 200))
	c := win.Canvas()
	test.Tap(check)
	if c.Focused() != nil || !check.Checked {
		t.Errorf("after a tap %v has the keys, checked %v", c.Focused(), check.Checked)
	}
	c.Focus(list)
	list.TypedKey(&fyne.KeyEvent{Name: fyne.KeyRight})
	if c.Focused() == nil || list.SelectedIndex() != 1 {
		t.Errorf("after a key %v has the keys, chosen %d", c.Focused(), list.SelectedIndex())
	}
	test.Tap(list)
	c.Overlays().Top().Hide()
	c.Overlays().Remove(c.Overlays().Top())
	list.SetSelectedIndex(0) // what the list does with a choice
	if c.Focused() != nil {
		t.Errorf("after a choice by the pointer %v has the keys", c.Focused())
	}
}
