package drilling

import (
	"fmt"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"homeside/app/session"
	"homeside/export/exporttest"
	"homeside/model/lesson"
)

// opened are options of a lesson's session in an app of its own, and what is said.
func opened(t *testing.T, l lesson.Lesson) (Options, *[]string) {
	t.Helper()
	a := test.NewTempApp(t)
	said := &[]string{}
	return Options{Session: session.New(l, "", func() {}), Prefs: a.Preferences(), Say: func(format string, args ...any) {
		*said = append(*said, fmt.Sprintf(format, args...))
	}}, said
}

// builtIn is the first built-in lesson's options.
func builtIn(t *testing.T) Options {
	o, _ := opened(t, exporttest.BuiltIn(t))
	return o
}

// press presses keys and fails where one has no use.
func press(t *testing.T, s *sheet, keys ...fyne.KeyName) {
	t.Helper()
	for _, k := range keys {
		if !s.Key(&fyne.KeyEvent{Name: k}) {
			t.Errorf("the key %s has no use", k)
		}
	}
}

// text is all that a board says.
func (b board) text() string {
	var all []string
	for _, l := range b.lines {
		all = append(all, l.text)
	}
	return strings.Join(append(all, b.foot), "\n")
}
