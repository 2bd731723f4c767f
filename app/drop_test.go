package app

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/storage"
)

func (b *bench) drop(paths ...string) {
	var all []fyne.URI
	for _, p := range paths {
		all = append(all, storage.NewFileURI(p))
	}
	b.dropped(fyne.Position{}, all)
}

// What is dropped while a dialog is open is said, and taken when no dialog is open
// any more: nothing that is answered meanwhile loses it.
func TestDroppedUnderADialog(t *testing.T) {
	b := newBench(t, lessonFile(t, "open"))
	first, second := lessonFile(t, "first"), lessonFile(t, "second")
	b.askSettings()
	b.drop(first)
	if want := "Dropped: lesson.json. Taken when the dialog is closed."; b.status.Text != want || b.desk.Len() != 1 || b.asked() == "" {
		t.Fatalf("it says %q, %d lessons are open, %q asked; want %q, 1, the settings still", b.status.Text, b.desk.Len(), b.asked(), want)
	}
	b.drop("/tmp/court.JPG")
	var pictures []string
	b.onPicture = func(path string) { pictures = append(pictures, path) }
	b.drop(second, "/no/such.json")
	b.answer(fyne.KeyEscape)
	b.wait()
	b.wait() // for the second, which waited for the first
	if b.desk.Len() != 3 || b.session.Lesson().Title != "second" || len(pictures) != 1 || len(b.waiting) != 0 {
		t.Errorf("%d lessons are open, %q shown, pictures %q, %d waiting; want 3, second, one picture, none", b.desk.Len(), b.session.Lesson().Title, pictures, len(b.waiting))
	}
	if b.asked() != "Homeside" || !strings.Contains(b.traced.String(), "/no/such.json") {
		t.Errorf("of the file that is not there nothing is said: %q is asked", b.asked())
	}
}

// A dialog over another, and one that an answer opens, hold up what was dropped, too.
func TestDroppedUnderTwoDialogs(t *testing.T) {
	b := newBench(t, lessonFile(t, "open"))
	file := lessonFile(t, "first")
	b.ask("first", "", answer{label: "Close"}, answer{label: "Go on", do: func() { b.inform("second", "") }})
	b.drop(file)
	b.answer(fyne.KeyReturn)
	b.wait()
	if b.asked() != "second" || b.desk.Len() != 1 {
		t.Fatalf("%q is asked and %d lessons are open, want the second dialog and 1", b.asked(), b.desk.Len())
	}
	b.answer(fyne.KeyEscape)
	b.wait()
	if b.desk.Len() != 2 || b.session.Lesson().Title != "first" {
		t.Errorf("%d lessons are open, %q shown; want 2, first", b.desk.Len(), b.session.Lesson().Title)
	}
}

// What is dropped while a file is read waits for that, and a menu that is open goes.
func TestDroppedWhileReading(t *testing.T) {
	b := newBench(t, lessonFile(t, "open"))
	first, second := lessonFile(t, "first"), lessonFile(t, "second")
	b.bar.speed.Tapped(nil)
	if b.win.Canvas().Overlays().Top() == nil {
		t.Fatal("the list of speeds is not open")
	}
	b.drop(first)
	b.drop(second)
	b.wait()
	b.wait()
	if b.desk.Len() != 3 || b.session.Lesson().Title != "second" || b.win.Canvas().Overlays().Top() != nil {
		t.Errorf("%d lessons are open, %q shown, a menu is open: %v; want 3, second, none", b.desk.Len(), b.session.Lesson().Title, b.win.Canvas().Overlays().Top() != nil)
	}
}
