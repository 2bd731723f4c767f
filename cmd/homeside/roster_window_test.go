//go:build window

package main

import (
	"path/filepath"
	"testing"

	"homeside/model/court"
	"homeside/model/lessonfile"
	"homeside/model/roster"
)

// A roster begun from the lesson's near pair, opened again, its pair put in as
// the far team.
func TestKeepAPair(t *testing.T) {
	path, before := copyLesson(t)
	kept := filepath.Join(t.TempDir(), "pairs.json")
	w := openWindow(t, path)
	w.keys("ctrl+m")
	w.waitFor("painted plan")
	w.click("plan-view-4")
	w.waitFor("painted plan")
	w.screenshot("pairs-none.png")
	w.click("pairs-keep-near")
	w.waitFor("asking Save the roster")
	w.typeText(kept)
	w.keys("Return")
	w.waitFor("saved " + kept)
	want := roster.PairOf(before, court.Near)
	r, err := lessonfile.OpenRoster(kept)
	if err != nil || len(r.Pairs) != 1 || r.Pairs[0].Name != want.Name || r.Pairs[0].Players[1].Name != want.Players[1].Name {
		t.Fatalf("the roster kept is %+v, %v; want the near pair %+v", r, err, want)
	}
	w.waitFor("painted plan")
	w.click("pairs-row-0")
	w.waitFor("painted plan")
	w.screenshot("pairs-chosen.png")
	w.click("pairs-put-far")
	w.waitFor(`step "put in Lanternfield Blue as the far team" modified=true`)
	w.keys("Escape")
	w.waitFor("match plan closed")
	w.keys("ctrl+s")
	w.waitFor("saved " + path)
	if got := readLesson(t, path).Teams[court.Far].Name; got != want.Name {
		t.Errorf("the saved far team is %q, want %q", got, want.Name)
	}
}
