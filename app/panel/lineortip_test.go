package panel

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/test"
)

// A tip stands in the line's place, and what is below stays where it is, whether the
// line or the tip is the longer one.
func TestLineOrTip(t *testing.T) {
	test.NewTempApp(t)
	l := NewLineOrTip(wrapped(), wrapped())
	l.Line.SetText(strings.Repeat("a key does something ", 10))
	below := wrapped()
	below.SetText("below")
	w := test.NewTempWindow(t, container.NewVBox(l.Box, below))
	w.Resize(fyne.NewSize(300, 600))
	at := below.Position()
	if at.Y < 60 {
		t.Fatalf("the line takes %v, want it broken", at)
	}
	l.Tell("a tip")
	if l.Line.Visible() || !l.tip.Visible() || below.Position() != at {
		t.Errorf("with a tip the line is shown: %v, the tip: %v, what is below at %v, want %v", l.Line.Visible(), l.tip.Visible(), below.Position(), at)
	}
	l.Tell("")
	if !l.Line.Visible() || l.tip.Visible() || below.Position() != at {
		t.Errorf("without one the line is shown: %v, the tip: %v, what is below at %v, want %v", l.Line.Visible(), l.tip.Visible(), below.Position(), at)
	}
}
