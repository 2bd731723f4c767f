package tips

import (
	"testing"

	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/test"
)

// A button tells its tip to the status line while the pointer or the keys are on
// it, the reason where it is off, and nothing after.
func TestButtonTells(t *testing.T) {
	test.NewTempApp(t)
	var line string
	pressed := 0
	b := New("Undo", nil, func() string { return "takes the last step back" }, func() { pressed++ }).
		Off(func() string { return "nothing has been done yet" }).Tell(func(s string) { line = s })
	for _, c := range []struct {
		name string
		do   func()
		want string
	}{
		{"the pointer on it", func() { b.MouseIn(&desktop.MouseEvent{}) }, "takes the last step back"},
		{"the pointer gone", b.MouseOut, ""},
		{"the keys on it", b.FocusGained, "takes the last step back"},
		{"the keys gone", b.FocusLost, ""},
		{"off, the pointer on it", func() { b.Disable(); b.MouseIn(&desktop.MouseEvent{}) }, "nothing has been done yet"},
	} {
		c.do()
		if line != c.want {
			t.Errorf("%s: the status line says %q, want %q", c.name, line, c.want)
		}
	}
	b.MouseOut()
	b.Enable()
	test.Tap(b)
	if pressed != 1 || b.ToolTip() != "nothing has been done yet" {
		t.Errorf("pressed %d times, tip %q, want once and the last tip shown", pressed, b.ToolTip())
	}
}
