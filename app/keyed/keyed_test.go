package keyed

import (
	"slices"
	"testing"

	"fyne.io/fyne/v2"
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
		{button, []string{"button"}, []string{"Right", "Next", "Escape"}},
		{check, []string{"check"}, []string{"Right", "Next", "Escape"}},
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
		}
		if !slices.Equal(used, c.used) || !slices.Equal(handed, c.handed) {
			t.Errorf("%T uses %v and hands on %v, want %v and %v", c.on, used, handed, c.used, c.handed)
		}
	}
	NewButton("", nil, nil, nil).TypedKey(&fyne.KeyEvent{Name: fyne.KeyEscape}) // nobody wants it
}
