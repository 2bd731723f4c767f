package heard

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// A button pressed by a key keeps the keys, or gives them to the one that comes next
// where it is off then; pressed by the pointer it does not take them. Other keys go on.
func TestButtonKeepsKeys(t *testing.T) {
	pressed, other := 0, ""
	next := NewButton("next", func() {})
	b := NewButton("go", func() { pressed++ })
	b.Keys = func(k *fyne.KeyEvent) { other += string(k.Name) }
	b.Then = func() fyne.Focusable { return next }
	w := test.NewTempWindow(t, container.NewVBox(b, next))
	for _, k := range []fyne.KeyName{fyne.KeySpace, fyne.KeyReturn, fyne.KeyEnter} {
		w.Canvas().Focus(b)
		b.TypedKey(&fyne.KeyEvent{Name: k})
		if w.Canvas().Focused() != b {
			t.Errorf("after %s another has the keys: %v", k, w.Canvas().Focused())
		}
	}
	b.TypedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
	if pressed != 3 || other != "Escape" {
		t.Errorf("pressed %d times, handed on %q; want 3, Escape", pressed, other)
	}
	test.Tap(b)
	if w.Canvas().Focused() != nil {
		t.Errorf("after a tap %v has the keys, want nobody", w.Canvas().Focused())
	}
	b.OnTapped = func() { b.Disable() }
	w.Canvas().Focus(b)
	b.TypedKey(&fyne.KeyEvent{Name: fyne.KeySpace})
	if w.Canvas().Focused() != next {
		t.Errorf("after it is off %v has the keys, want the next", w.Canvas().Focused())
	}
}

// A button has a line around it while it has the keys, in another colour than its own.
func TestButtonShowsThatItHasTheKeys(t *testing.T) {
	for _, importance := range []widget.Importance{widget.MediumImportance, widget.HighImportance} {
		b := NewButton("go", func() {})
		b.Importance = importance
		w := test.NewTempWindow(t, b)
		if b.edge.Visible() {
			t.Errorf("importance %d: the line is there before", importance)
		}
		w.Canvas().Focus(b)
		if high := importance == widget.HighImportance; !b.edge.Visible() || b.edge.Size() != b.Size() || (b.edge.StrokeColor == theme.Color(theme.ColorNamePrimary)) == high {
			t.Errorf("importance %d: the line is shown %v around %v of %v in %v", importance, b.edge.Visible(), b.edge.Size(), b.Size(), b.edge.StrokeColor)
		}
		b.Importance = widget.HighImportance // as the button of a view that is chosen
		b.Refresh()
		if b.edge.StrokeColor == theme.Color(theme.ColorNamePrimary) {
			t.Errorf("importance %d: the line is not seen on the button chosen", importance)
		}
		w.Canvas().Unfocus()
		if b.edge.Visible() {
			t.Errorf("importance %d: the line stays", importance)
		}
	}
}
