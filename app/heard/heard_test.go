package heard

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/test"
)

// A control keeps the keys that it has a use for; the others are offered to its
// window, once each.
func TestKeysAreOffered(t *testing.T) {
	test.NewTempApp(t)
	var log []string
	button := NewButton("b", func() { log = append(log, "pressed") })
	check := NewCheck("c", func(bool) { log = append(log, "checked") })
	slider := NewSlider(0, 10)
	slider.OnChanged = func(float64) { log = append(log, "slid") }
	line, sent, page := NewEntry(), NewEntry(), NewEntry()
	sent.OnSubmitted = func(string) { log = append(log, "sent") }
	page.MultiLine = true
	list := NewList(func() int { return 2 }, func() fyne.CanvasObject { return NewCheck("", nil) }, func(int, fyne.CanvasObject) {})
	w := test.NewTempWindow(t, nil)
	w.SetContent(NewWindow(container.NewVBox(button, check, slider, line, sent, page, list), func(k *fyne.KeyEvent) bool {
		log = append(log, string(k.Name))
		return true
	}))
	for _, c := range []struct {
		on   fyne.Focusable
		want string // of Escape, Return, Right and the space bar
	}{
		{button, "Escape pressed Right pressed"}, {check, "Escape Return Right checked"}, {slider, "Escape Return slid Space"},
		{line, "Escape Return"}, {sent, "Escape sent"}, {page, "Escape"}, {list, "Escape Return Space"},
	} {
		log = nil
		w.Canvas().Focus(c.on)
		for _, k := range []fyne.KeyName{fyne.KeyEscape, fyne.KeyReturn, fyne.KeyRight, fyne.KeySpace} {
			c.on.TypedKey(&fyne.KeyEvent{Name: k})
		}
		c.on.TypedRune(' ')
		if got := strings.Join(log, " "); got != c.want {
			t.Errorf("%T: %q, want %q", c.on, got, c.want)
		}
	}
}

// A field of several lines lets the Tab key go on, and Ctrl+Enter is Enter there.
func TestFieldsOfSeveralLines(t *testing.T) {
	test.NewTempApp(t)
	page, heard := NewEntry(), 0
	page.MultiLine = true
	w := test.NewTempWindow(t, nil)
	w.SetContent(NewWindow(page, func(k *fyne.KeyEvent) bool {
		if k.Name == fyne.KeyReturn {
			heard++
		}
		return true
	}))
	w.Canvas().Focus(page)
	page.TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	if heard != 0 || page.Text != "\n" {
		t.Errorf("Enter was heard %d times and typed %q, want a new line", heard, page.Text)
	}
	page.TypedShortcut(&desktop.CustomShortcut{KeyName: fyne.KeyReturn, Modifier: fyne.KeyModifierShortcutDefault})
	if heard != 1 || page.AcceptsTab() {
		t.Errorf("Ctrl+Enter was heard %d times, Tab kept %v; want once, false", heard, page.AcceptsTab())
	}
}

// A control outside of such a window keeps its keys.
func TestNobodyHears(t *testing.T) {
	test.NewTempApp(t)
	b := NewButton("b", nil)
	test.NewTempWindow(t, b).Canvas().Focus(b)
	if Offered(b, &fyne.KeyEvent{Name: fyne.KeyEscape}) {
		t.Error("somebody has taken the key")
	}
}
