package app

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"homeside/app/journal"
	"homeside/app/session"
	"homeside/model/edit"
	"homeside/model/lesson"
)

// stateBench is an editor that keeps unsaved lessons in a folder.
func stateBench(t *testing.T, folder string, files ...string) *bench {
	t.Helper()
	b := &bench{t: t, queue: make(chan func(), 1000)}
	b.Editor = New(test.NewTempApp(t), Options{Files: files, Trace: &b.traced, State: folder, within: time.Millisecond})
	b.inWindow = func(do func()) { b.queue <- do }
	return b
}

// keptNow waits until what was told is kept.
func (b *bench) keptNow() {
	kept := make(chan bool)
	b.autosave.then(func() { close(kept) })
	b.noteUnsaved()
	<-kept
}

// crash ends the editor as a kill does: its files stay, its lock goes.
func (b *bench) crash() {
	close(b.autosave.news)
	<-b.autosave.ended
	if err := journal.Abandon(b.autosave.journal); err != nil {
		b.t.Fatal(err)
	}
}

func paper(id int, title string, modified bool, h edit.History) keptPaper {
	return keptPaper{session.Paper{ID: id, Lesson: lesson.Lesson{Title: title}, Modified: modified, State: h.State()}, ""}
}

// Only what is in no file is kept, each change once, and it goes when it is saved.
func TestKeepingFollowsTheLessons(t *testing.T) {
	folder := t.TempDir()
	a := newAutosave(folder, time.Millisecond, func(err error) { t.Error(err) }, nil)
	close(a.news)
	<-a.ended // the test keeps by hand
	var first, second edit.History
	first, second = first.Do("x", lesson.Lesson{}), second.Do("x", lesson.Lesson{})
	entries := func() string {
		all, err := filepath.Glob(filepath.Join(folder, "journal-*", "*"))
		if err != nil {
			t.Fatal(err)
		}
		for i, p := range all {
			all[i] = filepath.Base(p)
		}
		return strings.Join(all, " ")
	}
	for _, c := range []struct {
		papers []keptPaper
		want   string
	}{
		{[]keptPaper{paper(1, "a", false, first), paper(2, "b", true, second)}, "2.entry"},
		{[]keptPaper{paper(1, "a", true, first), paper(2, "b", true, second)}, "1.entry 2.entry"},
		{[]keptPaper{paper(1, "a", false, first), paper(2, "b", true, second)}, "2.entry"},
		{nil, ""},
	} {
		a.keep(c.papers, time.Unix(0, 0))
		if got := entries(); got != c.want {
			t.Errorf("after keeping %d lessons there is %q, want %q", len(c.papers), got, c.want)
		}
	}
	a.keep([]keptPaper{paper(2, "b", true, second)}, time.Unix(0, 0))
	if err := os.Remove(filepath.Join(glob(t, folder, "journal-*"), "2.entry")); err != nil {
		t.Fatal(err)
	}
	a.keep([]keptPaper{paper(2, "b", true, second)}, time.Unix(0, 0))
	if got := entries(); got != "" {
		t.Errorf("a state that was kept was written again: %q", got)
	}
}

func glob(t *testing.T, folder, pattern string) string {
	t.Helper()
	all, err := filepath.Glob(filepath.Join(folder, pattern))
	if err != nil || len(all) == 0 {
		t.Fatalf("no %s in %s: %v", pattern, folder, err)
	}
	return all[0]
}

// A failure is told once in a row.
func TestNotKeepingIsToldOnce(t *testing.T) {
	folder, told := t.TempDir(), 0
	a := newAutosave(folder, time.Millisecond, func(error) { told++ }, nil)
	close(a.news)
	<-a.ended
	if err := os.RemoveAll(glob(t, folder, "journal-*")); err != nil { // the lock sorts behind its folder
		t.Fatal(err)
	}
	var h edit.History
	for range 3 {
		h = h.Do("x", lesson.Lesson{})
		a.keep([]keptPaper{paper(1, "a", true, h)}, time.Unix(0, 0))
	}
	if told != 1 {
		t.Errorf("three failures in a row were told %d times, want once", told)
	}
}

// What a killed editor had is offered at the next start, as it was, once; and
// it is this one's to keep from then on.
func TestACrashLosesNothing(t *testing.T) {
	folder, path := t.TempDir(), lessonFile(t, "before")
	b := stateBench(t, folder, path, lessonFile(t, "untouched"))
	b.showLesson(0)
	b.rename("after")
	b.keptNow()
	b.crash()

	again := stateBench(t, folder)
	if again.asked() != "Unsaved lessons found" || !strings.Contains(again.traced.String(), "offered 1") {
		t.Fatalf("at the next start %q was asked, want what was found: %s", again.asked(), again.traced.String())
	}
	again.answer(fyne.KeyReturn)
	if again.session.Lesson().Title != "after" || !again.session.Modified() || again.session.Path() != path {
		t.Errorf("opened %q of %s, modified %v, want after of %s, modified", again.session.Lesson().Title, again.session.Path(), again.session.Modified(), path)
	}
	again.keptNow()
	if left := journal.FindLeft(folder); len(left) != 0 {
		t.Errorf("it is offered once more: %d", len(left))
	}
	again.save()
	again.wait()
	if again.asked() != "" || titleIn(t, path) != "after" {
		t.Errorf("saved %q, asked %q, want after without a word", titleIn(t, path), again.asked())
	}
	again.quit()
	again.noteUnsaved() // nothing is kept after the end
	if all, err := os.ReadDir(folder); err != nil || len(all) != 0 {
		t.Errorf("a clean close leaves %v (%v), want nothing", all, err)
	}
}

// What is put off is offered again; it goes when throwing away is confirmed.
func TestWhatIsPutOffIsKept(t *testing.T) {
	folder := t.TempDir()
	b := stateBench(t, folder)
	b.newLesson()
	b.rename("mine")
	b.keptNow()
	b.crash()
	later := []fyne.KeyName{fyne.KeyEscape}
	for i, c := range []struct {
		keys    []fyne.KeyName
		offered bool
	}{
		{later, true},
		{[]fyne.KeyName{fyne.KeyLeft, fyne.KeyReturn, fyne.KeyReturn}, true}, // throw away, but then keep
		{[]fyne.KeyName{fyne.KeyLeft, fyne.KeyReturn, fyne.KeyRight, fyne.KeyReturn}, true},
		{nil, false},
	} {
		again := stateBench(t, folder)
		if got := again.asked() != ""; got != c.offered {
			t.Fatalf("start %d: offered %v, want %v", i+1, got, c.offered)
		}
		again.answer(c.keys...)
		again.quit()
	}
}

// A lesson whose file was changed after the crash is not written over unasked.
func TestRecoveredOverAChangedFile(t *testing.T) {
	folder, path := t.TempDir(), lessonFile(t, "before")
	b := stateBench(t, folder, path)
	b.rename("ours")
	b.keptNow()
	b.crash()
	if err := writeLesson(t.Context(), path, lesson.Lesson{Title: "theirs"}); err != nil {
		t.Fatal(err)
	}
	again := stateBench(t, folder)
	again.answer(fyne.KeyReturn)
	again.save()
	again.wait()
	if again.asked() != "Replace the file?" || titleIn(t, path) != "theirs" {
		t.Errorf("saving asked %q, the file has %q; want whether to replace it, theirs", again.asked(), titleIn(t, path))
	}
}

// Without a place for the journal everything else works, and a line says so.
func TestNoPlaceForAJournal(t *testing.T) {
	file := filepath.Join(t.TempDir(), "file")
	if err := os.WriteFile(file, nil, 0o600); err != nil {
		t.Fatal(err)
	}
	told := make(chan error, 1)
	a := newAutosave(filepath.Join(file, "state"), time.Millisecond, func(err error) { told <- err }, nil)
	if err := <-told; err == nil || errors.Is(err, fs.ErrExist) {
		t.Errorf("a journal below a file: %v", err)
	}
	a.note(nil)
	a.then(func() { t.Error("something counts as kept") })
	a.close()
}

func TestStampText(t *testing.T) {
	s, err := stampOf(lessonFile(t, "a"))
	if err != nil {
		t.Fatal(err)
	}
	if got := stampOfText(s.text()); got.sum != s.sum {
		t.Errorf("stampOfText(text) = %x, want %x", got.sum, s.sum)
	}
	for _, text := range []string{"", "zz", "1f"} {
		if got := stampOfText(text); got != (stamp{}) {
			t.Errorf("stampOfText(%q) = %v, want none", text, got)
		}
	}
}
