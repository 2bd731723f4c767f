//go:build window

package main

import (
	"testing"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
)

// A match kept from the score of the play shown: two rallies won, walked back,
// one put right by undo, saved.
func TestKeepAMatch(t *testing.T) {
	path, before := copyLesson(t)
	w := openWindow(t, path)
	w.screenshot("match-start.png")
	w.click("won-near")
	w.waitFor(`step "rally won by Lanternfield Blue" modified=true`)
	w.waitFor("painted")
	w.screenshot("match-won.png")
	w.click("won-far")
	w.waitFor(`step "rally won by Lanternfield Amber" modified=true`)
	w.waitFor("painted")
	w.click("first")
	w.waitFor("painted")
	w.click("next")
	w.waitFor("painted")
	w.screenshot("match-walk.png")
	w.keys("ctrl+s")
	w.waitFor("saved " + path)
	after := readLesson(t, path)
	want := lesson.Opening{Call: game.Call{Serving: 4, Receiving: 7, Server: 2}, Server: game.Near2}
	if got := after.Match.From; got == nil || *got != want || after.Match.Winners() != "nf" {
		t.Errorf("the saved match begins at %+v with winners %q, want %+v and nf", got, after.Match.Winners(), want)
	}
	m, err := after.Game()
	if err != nil {
		t.Fatal(err)
	}
	for i, s := range m.States() {
		if !servedAt(after, s) {
			t.Errorf("no saved play is served at state %d, %v by %v", i, s.Call(), s.Server())
		}
	}
	if got, want := len(after.Plays), len(before.Plays)+2; got != want {
		t.Errorf("the saved lesson has %d plays, want %d", got, want)
	}
}

// servedAt says whether a play of the lesson is served at a state from the right court.
func servedAt(l lesson.Lesson, s game.State) bool {
	for _, p := range l.Plays {
		if p.Fits(s) && court.SideOf(s.Serving(), p.AtServe(s.Server()).Place) == s.From() {
			return true
		}
	}
	return false
}

// The score is said in the strip: a wrong one is refused, a right one is a step.
func TestSayTheScore(t *testing.T) {
	path, _ := copyLesson(t)
	w := openWindow(t, path)
	w.click("score")
	w.typeScore("12-3-1")
	w.screenshot("score-wrong.png")
	w.typeScore("4-7-1")
	w.waitFor(`step "call 4-7-1" modified=true`)
	w.keys("ctrl+s")
	w.waitFor("saved " + path)
	if got := readLesson(t, path).Plays[0].Situation.Call.String(); got != "4-7-1" {
		t.Errorf("the saved play is at %s, want 4-7-1", got)
	}
}

// typeScore types over the score in the strip's entry.
func (w *window) typeScore(call string) {
	w.keys("ctrl+a")
	w.typeText(call)
	w.keys("Return")
}
