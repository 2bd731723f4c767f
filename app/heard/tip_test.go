package heard

import (
	"testing"

	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/test"
)

// A button tells its tip to a line while the pointer or the keys are on it, the
// reason where it is off, and nothing after.
func TestButtonTells(t *testing.T) {
	test.NewTempApp(t)
	var line string
	pressed := 0
	b := NewButton("Undo", func() { pressed++ }).Says(func() string { return "takes the last step back" }).Tell(func(s string) { line = s })
	for _, c := range []struct {
		name string
		do   func()
		want string
	}{
		{"the pointer on it", func() { b.MouseIn(&desktop.MouseEvent{}) }, "takes the last step back"},
		{"off meanwhile", func() { b.Unless("nothing has been done yet") }, "nothing has been done yet"},
		{"off for another reason", func() { b.Unless("nothing is left") }, "nothing is left"},
		{"on again", func() { b.Unless("") }, "takes the last step back"},
		{"the pointer gone", b.MouseOut, ""},
		{"off, the pointer gone", func() { b.Unless("nothing has been done yet") }, ""},
		{"the pointer on it, off", func() { b.MouseIn(&desktop.MouseEvent{}) }, "nothing has been done yet"},
		{"pressed in vain", func() { test.Tap(b) }, "nothing has been done yet"},
		{"the pointer gone again", b.MouseOut, ""},
		{"the keys on it", func() { b.Unless(""); b.FocusGained() }, "takes the last step back"},
		{"the keys gone", b.FocusLost, ""},
	} {
		c.do()
		if line != c.want {
			t.Errorf("%s: the line says %q, want %q", c.name, line, c.want)
		}
	}
	if test.Tap(b); pressed != 1 || b.Disabled() {
		t.Errorf("pressed %d times, off %v; want once and no", pressed, b.Disabled())
	}
}

// A button that has nothing to say leaves the line as it is: it may be what a press
// of the button has told.
func TestButtonSaysNothing(t *testing.T) {
	test.NewTempApp(t)
	line := "done"
	b := NewButton("Go", nil).Tell(func(s string) { line = s })
	b.MouseIn(&desktop.MouseEvent{})
	b.MouseOut()
	if line != "done" || b.ToolTip() != "" {
		t.Errorf("the line says %q, the tip %q; want them left alone", line, b.ToolTip())
	}
	b.Unless("not yet")
	b.MouseIn(&desktop.MouseEvent{})
	b.Unless("")
	line = "done"
	b.MouseOut()
	if line != "done" {
		t.Errorf("off once, the line says %q, want it left alone", line)
	}
}
