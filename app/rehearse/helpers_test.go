package rehearse

import (
	"bytes"
	"fmt"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"homeside/app/rehearsal"
	"homeside/app/session"
	"homeside/assets"
	"homeside/model/lessonfile"
	"homeside/model/units"
)

// bench is the window with a walk in it and what it says.
type bench struct {
	t       *testing.T
	app     fyne.App
	session *session.Session
	win     *Window
	walk    *Walk
	said    []string
	cuts    bool
}

// opened is the window on a play in which partners switch.
func opened(t *testing.T) *bench {
	t.Helper()
	data, err := assets.Lessons.ReadFile("lessons/stack-on-return.json")
	if err != nil {
		t.Fatal(err)
	}
	l, err := lessonfile.Read(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	b := &bench{t: t, app: test.NewTempApp(t)}
	b.session = session.New(l, "", func() {
		if b.win != nil {
			b.win.Refresh()
		}
	})
	b.session.SelectPlay(1)
	b.open()
	return b
}

func (b *bench) open() {
	say := func(format string, args ...any) { b.said = append(b.said, fmt.Sprintf(format, args...)) }
	b.win = New(b.app, say, Choice{"Walk", "walk", func() Page {
		b.walk = NewWalk(b.session, b.app.Preferences(), func() bool { return b.cuts }, say)
		return b.walk
	}})
	b.win.Open()
	b.t.Cleanup(b.win.Close)
}

func (b *bench) press(keys ...fyne.KeyName) {
	for _, k := range keys {
		b.win.key(&fyne.KeyEvent{Name: k})
	}
}

func (b *bench) phase(want rehearsal.Phase) {
	b.t.Helper()
	if got := b.walk.rehearsal.Phase(); got != want {
		b.t.Fatalf("the phase is %v, want %v; said %q", got, want, b.said)
	}
}

func (b *bench) pass(seconds units.Seconds) {
	for range int(seconds * 20) {
		b.walk.pass(0.05)
	}
}
