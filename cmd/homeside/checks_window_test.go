//go:build window

package main

import (
	"testing"

	"homeside/model/court"
	"homeside/model/finding"
	"homeside/model/game"
	"homeside/model/rally"
	"homeside/model/rules"
)

// A server dragged over the baseline is a fault while the hand still holds; its
// check jumps to the serve, its fix mends the play in one step.
func TestAFaultIsFoundAndFixed(t *testing.T) {
	path, before := copyLesson(t)
	w := openWindow(t, path)
	w.screenshot("checks-none.png")
	w.press(game.Near2.String(), 0, -40)
	w.waitFor("Checks: 1 fault")
	w.waitFor("painted")
	w.screenshot("checks-dragging.png")
	w.do("mouseup", "1")
	w.waitFor(`step "move Tobin" modified=true`)
	w.waitFor("painted")
	w.click("check-1")
	w.screenshot("checks-jumped.png")
	w.click("fix-1")
	w.waitFor(`step "fix check 1" modified=true`)
	w.waitFor("painted")
	w.screenshot("checks-fixed.png")
	w.keys("ctrl+s")
	w.waitFor("saved " + path)
	after := readLesson(t, path)
	if p := served(after, game.Near2); p.Y >= -court.Baseline || p == served(before, game.Near2) {
		t.Errorf("fixed, Tobin serves from %v, want behind the baseline and not where he was before, %v", p, served(before, game.Near2))
	}
	r, err := rally.Solve(after, 0)
	if err != nil {
		t.Fatal(err)
	}
	if all := rules.Check(r, after); finding.Faults(all) {
		t.Errorf("the saved play has faults: %+v", all)
	}
	w.keys("ctrl+z")
	w.waitFor("undone")
	w.keys("ctrl+s")
	w.waitFor("saved " + path)
	if p := served(readLesson(t, path), game.Near2); p.Y <= -court.Baseline {
		t.Errorf("after undo Tobin serves from %v, want on the court again", p)
	}
}
