package ring

import (
	"testing"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/test"
)

// The ring lies along the edges, inside, and takes no room of its own.
func TestRingLiesAlongTheEdges(t *testing.T) {
	test.NewTempApp(t)
	r := New()
	content := fynecanvas.NewRectangle(nil)
	whole := r.Over(content)
	whole.Resize(fyne.NewSize(200, 100))
	if got, want := whole.MinSize(), content.MinSize(); got != want {
		t.Errorf("content with a ring wants %v, want %v as without", got, want)
	}
	for i, want := range [4][4]float32{{0, 0, 200, thick}, {0, 100 - thick, 200, thick}, {0, 0, thick, 100}, {200 - thick, 0, thick, 100}} {
		at, size := r.lines[i].Position(), r.lines[i].Size()
		if got := [4]float32{at.X, at.Y, size.Width, size.Height}; got != want {
			t.Errorf("line %d is at %v, want %v", i, got, want)
		}
	}
}

func TestRingShows(t *testing.T) {
	test.NewTempApp(t)
	r := New()
	if r.Shown() {
		t.Error("a new ring shows")
	}
	r.Show(true)
	if !r.Shown() {
		t.Error("Show(true) shows nothing")
	}
	r.Show(false)
	if r.Shown() {
		t.Error("Show(false) leaves the ring")
	}
}
