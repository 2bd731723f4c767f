//go:build window

package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"homeside/model/lesson"
)

// A pair's whole game: planned, written into the lesson in one step, a row's
// play opened, the signals saved, all of it saved with the lesson.
func TestPlanAMatch(t *testing.T) {
	path, before := copyLesson(t)
	w := openWindow(t, path)
	w.keys("ctrl+m")
	w.waitFor("match plan open")
	w.waitFor("painted plan")
	w.screenshot("plan-table.png")
	w.click("plan-view-1")
	w.waitFor("painted plan")
	w.screenshot("plan-scores.png")
	w.click("plan-view-2")
	w.waitFor("painted plan")
	w.screenshot("plan-starters.png")
	w.click("plan-view-3")
	w.waitFor("painted plan")
	w.screenshot("plan-signals.png")
	w.saveSignals(filepath.Join(t.TempDir(), "signals.txt"))
	w.click("plan-view-0")
	w.waitFor("painted plan")
	w.click("plan-write")
	w.waitFor(`step "write the whole match" modified=true`)
	w.waitFor("painted plan")
	w.screenshot("plan-written.png")
	w.click("plan-row-1")
	w.waitFor("match plan closed")
	w.waitFor("painted")
	w.screenshot("plan-opened.png")
	w.keys("ctrl+s")
	w.waitFor("saved " + path)
	after := readLesson(t, path)
	if got, want := len(after.Plays), len(before.Plays)+8; got != want {
		t.Errorf("the saved lesson has %d plays, want %d: one for each situation of the near pair", got, want)
	}
	if problems := lesson.Validate(after); problems != nil {
		t.Errorf("Validate of the saved lesson = %v, want nil", problems)
	}
	w.keys("ctrl+z")
	w.waitFor("undone")
	w.keys("ctrl+s")
	w.waitFor("saved " + path)
	if got := len(readLesson(t, path).Plays); got != len(before.Plays) {
		t.Errorf("after undo the lesson has %d plays, want %d as before", got, len(before.Plays))
	}
}

func (w *window) saveSignals(path string) {
	w.t.Helper()
	w.click("signals-save")
	w.waitFor("asking Save the text")
	w.typeText(path)
	w.keys("Return")
	w.waitFor("saved " + path)
	text, err := os.ReadFile(path)
	if err != nil {
		w.t.Fatal(err)
	}
	if got := strings.Count(string(text), "\n"); got < 7 || !strings.Contains(string(text), "Seed 1") {
		w.t.Errorf("the signals are saved as\n%s\nwant four lines of ten with their seed", text)
	}
}
