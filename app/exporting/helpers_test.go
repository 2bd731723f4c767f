package exporting

import (
	"fmt"
	"path/filepath"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"homeside/canvas"
	"homeside/canvas/compose"
	"homeside/export/exporttest"
	"homeside/export/formats"
	"homeside/model/rally"
)

// subject is the first play of the built-in lesson.
func subject(t testing.TB) Subject {
	t.Helper()
	l := exporttest.BuiltIn(t)
	r, err := rally.Solve(l, 0)
	if err != nil {
		t.Fatal(err)
	}
	return Subject{Name: "first", Lesson: l, Plays: []int{0}, Told: formats.Tell(l, r), Source: compose.Of(r, l.Venue.Surface(), canvas.Upright)}
}

// opened is a page in a window of the test driver, with what it has told.
type opened struct {
	*Page
	told   chan string
	folder string
	prefs  fyne.Preferences

	subject Subject
}

func open(t *testing.T) *opened {
	t.Helper()
	return openWith(t, subject(t))
}

// openWith is a page of something else.
func openWith(t *testing.T, s Subject) *opened {
	t.Helper()
	a := test.NewTempApp(t)
	o := &opened{told: make(chan string, 1000), folder: t.TempDir(), prefs: a.Preferences(), subject: s}
	o.again(t, a)
	return o
}

// again makes the page anew, as another start of the program would.
func (o *opened) again(t *testing.T, a fyne.App) {
	t.Helper()
	s := o.subject
	o.Page = New(o.prefs, Events{
		Offers: func() []Offer {
			return []Offer{{Name: "first", File: "first", Make: func() (Subject, error) { return s, nil }}}
		},
		Folder: func() string { return o.folder }, Close: func() {}, Painted: func() {},
		Trace:  func(format string, args ...any) { o.told <- fmt.Sprintf(format, args...) },
		Unless: func(_ string, goOn func()) { goOn() },
		Fail:   func(err error) { o.told <- "failed " + err.Error() },
		Browse: func(from string, taken func(string)) { taken(filepath.Join(from, "sub")) },
		Show:   func(folder string) error { o.told <- "shown " + folder; return nil },
	})
	w := a.NewWindow("")
	w.SetContent(o.Box)
	w.Resize(fyne.NewSize(1200, 800))
	o.Open(0)
}

// wait waits for a line of what is told that begins with a text.
func (o *opened) wait(t *testing.T, begins string) string {
	t.Helper()
	for line := range o.told {
		if len(line) >= len(begins) && line[:len(begins)] == begins {
			return line
		}
		if len(line) > 6 && line[:6] == "failed" {
			t.Fatalf("while waiting for %q: %s", begins, line)
		}
	}
	return ""
}
