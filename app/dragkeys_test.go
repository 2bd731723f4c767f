package app

import (
	"path/filepath"
	"reflect"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
)

// builtInFile is a file with the first of the built-in lessons.
func builtInFile(t *testing.T) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), "lesson.json")
	if err := writeLesson(t.Context(), path, builtIn()[0]); err != nil {
		t.Fatal(err)
	}
	return path
}

// While the hand holds something in the rally strip no key but Escape does
// anything; undo takes back what the hand is doing, and the step before stays.
func TestKeysWaitForTheHandInTheStrip(t *testing.T) {
	b := newBench(t, builtInFile(t))
	b.wait()
	b.win.Canvas().Capture()
	before := b.session.Lesson()
	hold := func() {
		t.Helper()
		at, ok := b.strip.OnScreen()["arrival-near1-1"]
		if !ok {
			t.Fatalf("no place to take hold of among %v", b.strip.OnScreen())
		}
		pos := fyne.NewPos(float32(at.X), float32(at.Y)).Subtract(fyne.CurrentApp().Driver().AbsolutePositionForObject(b.strip))
		b.strip.MouseDown(&desktop.MouseEvent{PointEvent: fyne.PointEvent{Position: pos}, Button: desktop.MouseButtonPrimary})
		b.strip.Dragged(&fyne.DragEvent{PointEvent: fyne.PointEvent{Position: pos.AddXY(-30, 0)}})
		if !b.strip.Dragging() || !b.session.Previewing() {
			t.Fatal("nothing is dragged in the strip")
		}
	}
	held := func() {
		t.Helper()
		b.strip.MouseUp(&desktop.MouseEvent{})
		if step, _ := b.session.CanUndo(); b.strip.Dragging() || b.session.Previewing() || step != "a title" || !reflect.DeepEqual(b.session.Lesson(), before) {
			t.Errorf("let go: draft %v, last step %q, want the lesson as it was before the drag", b.session.Previewing(), step)
		}
	}
	hold()
	if why := b.noUndo(); why != "" {
		t.Errorf("the drag of a lesson without steps cannot be undone: %s", why)
	}
	b.act(onStrip, fyne.KeyEscape)
	b.session.Do("a title", before)
	hold()
	now := b.session.Lesson()
	for _, k := range []fyne.KeyName{fyne.KeySpace, fyne.KeyRight, fyne.KeyDelete, fyne.KeyC} {
		b.act(onStrip, k)
		if b.session.Playing() || b.asked() != "" || !b.strip.Dragging() || !reflect.DeepEqual(b.session.Lesson(), now) {
			t.Errorf("%s under the hand: playing %v, asked %q, held %v, want nothing changed", k, b.session.Playing(), b.asked(), b.strip.Dragging())
		}
	}
	b.undo()
	held()
	hold()
	b.act(onStrip, fyne.KeyEscape)
	held()
	hold()
	b.strip.MouseDown(&desktop.MouseEvent{Button: desktop.MouseButtonSecondary})
	held()
	if b.win.Canvas().Overlays().Top() != nil {
		t.Error("a second button in a drag opens a menu under the hand")
	}
}
