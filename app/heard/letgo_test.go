package heard

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/test"
)

// A check that lets go does so where the pointer has worked it, a button where a key
// has; others keep the keys.
func TestLettingGo(t *testing.T) {
	test.NewTempApp(t)
	pressed := 0
	check, button := NewCheck("c", nil), NewButton("b", func() { pressed++ })
	w := test.NewTempWindow(t, nil)
	w.SetContent(NewWindow(container.NewVBox(check, button), func(*fyne.KeyEvent) bool { return true }))
	c := w.Canvas()
	for _, lets := range []bool{false, true} {
		check.LetsGo, button.LetsGo = lets, lets
		c.Focus(nil)
		test.Tap(check)
		if kept := c.Focused() != nil; kept == lets || !check.Checked {
			t.Errorf("lets go %v: after a tap on the check it has the keys: %v, is checked: %v", lets, kept, check.Checked)
		}
		c.Focus(check)
		check.TypedRune(' ')
		if c.Focused() != fyne.Focusable(check) {
			t.Errorf("lets go %v: after the space bar %v has the keys, want the check", lets, c.Focused())
		}
		c.Focus(button)
		button.TypedKey(&fyne.KeyEvent{Name: fyne.KeySpace})
		if kept := c.Focused() != nil; kept == lets {
			t.Errorf("lets go %v: after the space bar the button has the keys: %v", lets, kept)
		}
	}
	if pressed != 2 {
		t.Errorf("the button was pressed %d times, want twice", pressed)
	}
}
