//go:build window

package main

import (
	"testing"

	"homeside/model/court"
	"homeside/model/finding"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/rules"
)

// A stack on the serve is written for the score of the play shown: it opens
// without a fault, is saved, and taken back.
func TestWriteAStackOnTheServe(t *testing.T) {
	path, before := copyLesson(t)
	w := openWindow(t, path)
	w.keys("ctrl+shift+n")
	w.waitFor("painted a chooser")
	w.click("kind-stack")
	w.screenshot("newplay.png")
	w.click("insert")
	w.waitFor(`step "new play: stack on the serve" modified=true`)
	w.waitFor("painted")
	w.screenshot("newplay-inserted.png")
	w.keys("ctrl+s")
	w.waitFor("saved " + path)
	after := readLesson(t, path)
	if got, want := len(after.Plays), len(before.Plays)+1; got != want {
		t.Fatalf("the saved lesson has %d plays, want %d", got, want)
	}
	isLegalStack(t, after, before.Plays[0].Situation)

	w.keys("ctrl+z")
	w.waitFor("undone")
	w.keys("ctrl+s")
	w.waitFor("saved " + path)
	if got, want := len(readLesson(t, path).Plays), len(before.Plays); got != want {
		t.Errorf("after undo the lesson has %d plays, want %d", got, want)
	}
}

// A switch is compared with the stay that looks like it: the court shows both on
// one clock, and a sentence says from when they can be told apart.
func TestASwitchGivesItselfAway(t *testing.T) {
	path, _ := copyLesson(t)
	w := openWindow(t, path)
	w.insert("stay")
	w.insert("switch")
	w.keys("ctrl+shift+c")
	w.waitFor("choosing a play to compare")
	w.screenshot("compare-choosing.png")
	w.keys("Down", "space") // the other play at this score behind the drawn one
	w.waitFor("comparing: Beside play 2: ")
	w.waitFor("painted")
	w.keys("Right", "Right")
	w.screenshot("compare.png")
}

// insert writes a play of a kind for the score shown.
func (w *window) insert(kind string) {
	w.t.Helper()
	w.keys("ctrl+shift+n")
	w.waitFor("painted a chooser")
	w.click("kind-" + kind)
	w.click("insert")
	w.waitFor(`step "new play: ` + kind)
	w.waitFor("painted")
}

// isLegalStack checks the play behind the first: served by Tobin at the same
// score, partners in one half at the serve, and nothing for the referee.
func isLegalStack(t *testing.T, l lesson.Lesson, at lesson.Situation) {
	t.Helper()
	p := l.Plays[1]
	if server, _ := p.Server(); p.Situation != at || server != game.Near2 {
		t.Errorf("the play is served by %v at %+v, want near2 at %+v", server, p.Situation, at)
	}
	a, b := p.AtServe(game.Near1).Place, p.AtServe(game.Near2).Place
	if court.SideOf(court.Near, a) != court.SideOf(court.Near, b) {
		t.Errorf("at the serve the partners stand at %v and %v, want them on one side", a, b)
	}
	r, err := rally.Solve(l, 1)
	if err != nil {
		t.Fatal(err)
	}
	if all := rules.Check(r, l); finding.Faults(all) {
		t.Errorf("the written play has faults: %+v", all)
	}
}
