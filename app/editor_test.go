package app

import (
	"bytes"
	"context"
	"errors"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/storage"
	"fyne.io/fyne/v2/test"

	"homeside/model/edit"
	"homeside/model/lesson"
	"homeside/model/lessonfile"
)

// bench is an editor without a screen and what it traces.
type bench struct {
	*Editor
	t      *testing.T
	traced bytes.Buffer
	queue  chan func() // what other goroutines ask the window to do
	path   string      // of the lesson, where a test has one
}

func newBench(t *testing.T, files ...string) *bench {
	t.Helper()
	b := &bench{t: t, queue: make(chan func(), 1000)}
	b.Editor = New(test.NewTempApp(t), Options{Files: files, Trace: &b.traced})
	b.inWindow = func(do func()) { b.queue <- do }
	b.Show()
	return b
}

// wait does what the window is asked for until no file is being read or written.
func (b *bench) wait() { b.waitUntil(func() bool { return !b.working }) }

func (b *bench) waitUntil(done func() bool) {
	b.t.Helper()
	late := time.After(10 * time.Second)
	for !done() {
		select {
		case do := <-b.queue:
			do()
		case <-late:
			b.t.Fatal("the editor works on a file and does not end")
		}
	}
}

// asked is the title of the question shown, empty for none.
func (b *bench) asked() string {
	if b.win.Canvas().Overlays().Top() == nil {
		return ""
	}
	var last string
	for line := range strings.Lines(b.traced.String()) {
		if title, ok := strings.CutPrefix(line, "asking "); ok {
			last = strings.TrimSpace(title)
		}
	}
	return last
}

// answer presses a key in the question shown.
func (b *bench) answer(keys ...fyne.KeyName) {
	b.t.Helper()
	for _, k := range keys {
		focused := b.win.Canvas().Focused()
		if focused == nil {
			b.t.Fatalf("%s was pressed and nothing had the focus", k)
		}
		focused.TypedKey(&fyne.KeyEvent{Name: k})
	}
	b.wait()
}

func lessonFile(t *testing.T, title string) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), "lesson.json")
	if err := writeLesson(t.Context(), path, lesson.Lesson{Title: title, Plays: []lesson.Play{edit.OrdinaryPlay()}}); err != nil {
		t.Fatal(err)
	}
	return path
}

func titleIn(t *testing.T, path string) string {
	t.Helper()
	l, err := lessonfile.Open(path)
	if err != nil {
		t.Fatal(err)
	}
	return l.Title
}

func (b *bench) rename(title string) {
	l := b.session.Lesson()
	l.Title = title
	b.session.Do("rename to "+title, l)
}

func badFiles(t *testing.T) map[string]string {
	t.Helper()
	folder := t.TempDir()
	put := func(name, text string) string {
		path := filepath.Join(folder, name)
		if err := os.WriteFile(path, []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
		return path
	}
	zeros := put("zeros.json", "")
	if err := os.Truncate(zeros, 1<<30); err != nil { // a gigabyte that takes no room on the disk
		t.Fatal(err)
	}
	return map[string]string{
		folder: "This is a folder", zeros: "too large to be a lesson",
		put("small-zeros.json", strings.Repeat("\x00", 1<<20)):           "not a Homeside lesson",
		put("photo.png", "\x89PNG\r\n\x1a\n\x00\x00"):                    "not a Homeside lesson",
		put("newer.json", `{"format": "homeside-lesson", "version": 7}`): "newer version of Homeside",
		put("empty.json", ""): "not a Homeside lesson",
		put("half.json", `{"format": "homeside-lesson", "version": 1, "plays":`): "has a mistake in it",
		filepath.Join(folder, "none.json"):                                       "no such file",
	}
}

// Whatever is opened or dropped, one sentence says what is wrong, and the
// lessons that are open stay.
func TestBadFilesAreSaidInASentence(t *testing.T) {
	b := newBench(t, lessonFile(t, "good"))
	for path, want := range badFiles(t) {
		for how, take := range map[string]func(){
			"open":      func() { b.open(path) },
			"drop":      func() { b.dropped(fyne.Position{}, []fyne.URI{storage.NewFileURI(path)}) },
			"from main": func() { b.showRead(readAll([]string{path})) },
		} {
			b.traced.Reset()
			take()
			b.wait()
			err := readOne(path).err
			if got := reason(err); !strings.Contains(got, want) || strings.Contains(got, "\n") {
				t.Errorf("%s %s: %q, want a line with %q", how, filepath.Base(path), got, want)
			}
			if b.asked() != "Homeside" || !strings.Contains(b.traced.String(), "failed") {
				t.Errorf("%s %s: shown %q, want the sentence", how, filepath.Base(path), b.asked())
			}
			b.answer(fyne.KeyEscape)
			if b.asked() != "" || b.desk.Len() != 1 || b.session.Lesson().Title != "good" {
				t.Errorf("%s %s: %d lessons open, %q shown, want the good one alone", how, filepath.Base(path), b.desk.Len(), b.session.Lesson().Title)
			}
		}
	}
}

// Several files at once: the good ones open, the others are said together.
func TestDroppingSeveralFiles(t *testing.T) {
	b := newBench(t)
	first, second := lessonFile(t, "first"), lessonFile(t, "second")
	b.dropped(fyne.Position{}, []fyne.URI{storage.NewFileURI(first), storage.NewFileURI(t.TempDir()), storage.NewFileURI(second), storage.NewFileURI("/no/such.json")})
	b.wait()
	if b.asked() != "Homeside" || b.desk.Len() != 2 || b.session.Lesson().Title != "second" {
		t.Errorf("shown %q, %d lessons open, the last %q; want one dialog, 2, second", b.asked(), b.desk.Len(), b.session.Lesson().Title)
	}
	b.answer(fyne.KeyReturn)
	b.open(first)
	b.wait()
	if b.desk.Len() != 2 || b.session.Lesson().Title != "first" {
		t.Errorf("opened again: %d lessons, %q shown, want 2 and first", b.desk.Len(), b.session.Lesson().Title)
	}
	if got := b.recentLessons(); len(got) != 2 || got[0] != first || got[1] != second {
		t.Errorf("recent lessons: %v, want first, second", got)
	}
}

func TestAPictureIsHandedOn(t *testing.T) {
	b := newBench(t, lessonFile(t, "a"))
	var got string
	b.onPicture = func(path string) { got = path }
	b.dropped(fyne.Position{}, []fyne.URI{storage.NewFileURI("/tmp/court.JPG")})
	if got != "/tmp/court.JPG" {
		t.Errorf("the picture's taker heard %q, want /tmp/court.JPG", got)
	}
	empty := newBench(t)
	empty.onPicture = func(string) { t.Error("a picture was handed on without a play to lay it under") }
	empty.dropped(fyne.Position{}, []fyne.URI{storage.NewFileURI("/tmp/court.JPG")})
	empty.wait()
	if empty.asked() != "Homeside" {
		t.Errorf("a picture on the start page: shown %q, want a sentence", empty.asked())
	}
}

// A lesson that another program has written meanwhile is not written over
// without asking.
func TestAChangedFileIsAskedAbout(t *testing.T) {
	for _, c := range []struct {
		keys     []fyne.KeyName
		want     string
		modified bool
	}{{[]fyne.KeyName{fyne.KeyEscape}, "theirs", true}, {[]fyne.KeyName{fyne.KeyLeft, fyne.KeyReturn}, "ours", false}} {
		path := lessonFile(t, "before")
		b := newBench(t, path)
		b.rename("ours")
		if err := writeLesson(t.Context(), path, lesson.Lesson{Title: "theirs"}); err != nil {
			t.Fatal(err)
		}
		b.save()
		b.wait()
		if b.asked() != "Replace the file?" {
			t.Fatalf("asked %q, want whether to replace the file", b.asked())
		}
		b.answer(c.keys...)
		if got := titleIn(t, path); got != c.want || b.session.Modified() != c.modified {
			t.Errorf("after %v the file has %q, modified %v; want %q, %v", c.keys, got, b.session.Modified(), c.want, c.modified)
		}
	}
}

// Saving again asks nothing, also when the file was touched but not changed, or
// has gone.
func TestSavingTwice(t *testing.T) {
	path := lessonFile(t, "before")
	b := newBench(t, path)
	for i, disturb := range []func() error{
		func() error { return nil },
		func() error { return os.Chtimes(path, time.Unix(1e9, 0), time.Unix(1e9, 0)) },
		func() error { return os.Remove(path) },
	} {
		title := "edition " + string(rune('1'+i))
		b.rename(title)
		if err := disturb(); err != nil {
			t.Fatal(err)
		}
		b.save()
		b.wait()
		if b.asked() != "" || titleIn(t, path) != title || b.session.Modified() {
			t.Errorf("%s: asked %q, modified %v, want it saved without a word", title, b.asked(), b.session.Modified())
		}
	}
}

// Where saving fails the lesson stays open, unsaved, and the file as it was.
func TestSavingWhereItCannotBe(t *testing.T) {
	path := lessonFile(t, "before")
	gone := filepath.Join(t.TempDir(), "gone", "lesson.json")
	for _, c := range []struct{ to, want string }{{gone, "The folder is not there any more."}, {filepath.Dir(path), "That did not work."}} {
		b := newBench(t, path)
		b.rename("after")
		b.write(c.to, stamp{}, func() { t.Errorf("saving to %s went on", c.to) })
		b.wait()
		if strings.Contains(b.traced.String(), "asking Save the lesson") {
			t.Errorf("saving to %s asks for another file before it was wanted", c.to)
		}
		if b.asked() != "Homeside" || !b.session.Modified() || b.session.Path() != path || titleIn(t, path) != "before" {
			t.Errorf("saving to %s: shown %q, modified %v, path %s, want it said and all kept", c.to, b.asked(), b.session.Modified(), b.session.Path())
		}
		if got := reason(writeLesson(t.Context(), c.to, b.session.Lesson())); got != c.want {
			t.Errorf("saving to %s: %q, want %q", c.to, got, c.want)
		}
		b.answer(fyne.KeyReturn)
		if b.asked() != "Save the lesson" {
			t.Errorf("after Enter %q is asked, want where to save the lesson", b.asked())
		}
	}
}

// Work that takes longer than half a second is shown and can be cancelled; what
// it comes to later changes nothing.
func TestSlowWorkCanBeCancelled(t *testing.T) {
	b := newBench(t)
	release := make(chan bool)
	outcomes := make(chan error, 2)
	var stopped context.Context
	b.stoppable("Opening…", func(ctx context.Context) error { stopped = ctx; <-release; return nil }, func(err error) { outcomes <- err })
	b.background("Opening…", func() error { return nil }, func(err error) { outcomes <- errors.New("two at once") })
	b.waitUntil(func() bool { return b.asked() == "Opening…" })
	b.answer(fyne.KeyEscape)
	if err := <-outcomes; err == nil || b.working || b.asked() != "" {
		t.Errorf("cancelled: %v, working %v, shown %q", err, b.working, b.asked())
	}
	if stopped.Err() == nil {
		t.Error("the work that was cancelled was not told")
	}
	close(release)
	b.background("Opening…", func() error { return io.EOF }, func(err error) { outcomes <- err })
	b.wait()
	if err := <-outcomes; err != io.EOF {
		t.Errorf("the next work ends with %v, want %v", err, io.EOF)
	}
}

// Closing asks about what is in no file, and saves it.
func TestClosingAsksAboutUnsavedLessons(t *testing.T) {
	path := lessonFile(t, "before")
	b := newBench(t, path, lessonFile(t, "other"))
	b.showLesson(0)
	b.rename("after")
	b.closeLesson(0)
	if b.asked() != "Close this lesson?" {
		t.Fatalf("asked %q, want whether to close the lesson", b.asked())
	}
	b.answer(fyne.KeyEscape)
	if b.desk.Len() != 2 {
		t.Fatalf("cancelled: %d lessons open, want 2", b.desk.Len())
	}
	b.closeLesson(0)
	b.answer(fyne.KeyReturn)
	if got := titleIn(t, path); got != "after" || b.desk.Len() != 1 || b.session.Lesson().Title != "other" {
		t.Errorf("saved %q, %d open, %q shown, want after, 1, other", got, b.desk.Len(), b.session.Lesson().Title)
	}
	b.rename("changed")
	b.closeLesson(0)
	b.answer(fyne.KeyLeft, fyne.KeyReturn)
	if b.desk.Len() != 1 || !b.desk.Blank() {
		t.Errorf("closed without saving: %q shown, want a blank lesson", b.session.Lesson().Title)
	}
}

func TestWithRecent(t *testing.T) {
	var all []string
	for i := range mostRecent + 2 {
		all = withRecent(all, string(rune('a'+i)))
	}
	all = withRecent(all, "e")
	if got, want := strings.Join(all, ""), "elkjihgfdc"; got != want {
		t.Errorf("recent: %s, want %s", got, want)
	}
}

// Under a dialog no key reaches the court, and Escape closes the question even
// where nothing in it has the keys.
func TestKeysUnderADialog(t *testing.T) {
	b := newBench(t, lessonFile(t, "a"))
	b.showCautions()
	b.win.Canvas().Unfocus()
	b.press(onCourt, &fyne.KeyEvent{Name: fyne.KeySpace})
	if b.session.Playing() {
		t.Error("under a dialog the space bar plays")
	}
	b.press(onCourt, &fyne.KeyEvent{Name: fyne.KeyEscape})
	if b.asked() != "" {
		t.Errorf("Escape leaves %q open", b.asked())
	}
	b.press(onCourt, &fyne.KeyEvent{Name: fyne.KeySpace})
	if !b.session.Playing() {
		t.Error("after the dialog the space bar does not play")
	}
}

// While the hand holds something on the court no key but Escape does anything.
func TestKeysWaitForTheHand(t *testing.T) {
	b := newBench(t, lessonFile(t, "One"))
	b.wait()
	b.win.Canvas().Capture() // the court is painted before it can be taken hold of
	at := fyne.NewPos(b.court.Size().Width/2, b.court.Size().Height/2)
	b.court.MouseDown(&desktop.MouseEvent{PointEvent: fyne.PointEvent{Position: at}, Button: desktop.MouseButtonPrimary})
	if !b.court.Dragging() {
		t.Fatal("nothing is held")
	}
	b.act(onCourt, fyne.KeySpace)
	b.act(onCourt, fyne.KeyEnd)
	if b.session.Playing() || b.session.Now() != 0 || !b.court.Dragging() {
		t.Errorf("keys under the hand: playing %v, at %v s, held %v, want nothing changed", b.session.Playing(), b.session.Now(), b.court.Dragging())
	}
	b.act(onCourt, fyne.KeyEscape)
	b.act(onCourt, fyne.KeyEnd)
	if b.court.Dragging() || b.session.Now() == 0 {
		t.Errorf("after Escape: held %v, at %v s, want the keys to work again", b.court.Dragging(), b.session.Now())
	}
}
