//go:build window

package main

import (
	"fmt"
	"testing"

	"homeside/model/drill"
	"homeside/model/lesson"
)

// firstDrill is what the window sets up by itself: the shares and the seed of a
// person who has not drilled before.
var firstDrill = drill.SignalOptions{Switch: 0.40, Fake: 0.12, Unclear: 0.08, Seed: 3}

// choosePage goes to a page of the window for rehearsing by the Tab key, counted
// from 1.
func (w *window) choosePage(page int, tag string) {
	w.t.Helper()
	for range page {
		w.keys("Tab")
	}
	w.keys("space")
	w.waitFor("rehearsing page " + tag)
}

// A pair drills signals and then scores: answered by a digit, by the pointer, and
// called out while a clicker goes on; looked at again; then back to the editor.
func TestDrills(t *testing.T) {
	path, l := copyLesson(t)
	w := openWindow(t, path)
	w.rehearse()
	w.drillSignals(l)
	w.drillScores(l)
	w.keys("Escape")
	w.waitFor("rehearsing closed")
}

func (w *window) drillSignals(l lesson.Lesson) {
	w.t.Helper()
	d, err := drill.NewSignals(firstDrill)
	if err != nil {
		w.t.Fatal(err)
	}
	asked := func(n int, outcome, count string) string {
		return fmt.Sprintf("painted drill signals %d %v %v %s %s", n, d.Ask().Sign, d.Ask().Meaning, outcome, count)
	}
	w.choosePage(2, "signals")
	w.keys("Return")
	w.waitFor(asked(1, "asked", "run=0"))
	w.screenshot("drill-sign.png")
	w.keys(fmt.Sprint(int(d.Ask().Meaning) + 1))
	w.waitFor(asked(1, "right", "run=1 best=1 right=1 of 1"))
	w.screenshot("drill-movement.png")

	d.Next()
	w.keys("Next")
	w.waitFor(asked(2, "asked", "run=1"))
	wrong := (d.Ask().Meaning + 1) % (lesson.Fake + 1)
	w.click(fmt.Sprintf("drill.answer%d", wrong+1))
	w.waitFor(asked(2, "wrong", "run=0 best=1 right=1 of 2"))
	w.screenshot("drill-wrong.png")

	d.Next()
	w.keys("Next")
	w.waitFor(asked(3, "asked", "run=0"))
	w.keys("Next")
	w.waitFor(asked(3, "shown", "run=0 best=1 right=1 of 2"))
	w.click("drill.answer1")
	w.waitFor(asked(3, "right", "run=1 best=1 right=2 of 3"))
	w.keys("Prior")
	w.waitFor("painted drill signals 2 ")
	w.keys("s")
	w.waitFor("drill signals set up")
	w.screenshot("drill-setup.png")
}

func (w *window) drillScores(l lesson.Lesson) {
	w.t.Helper()
	d, err := drill.NewScores(drill.ScoreOptions{Settings: l.Settings(), Seed: firstDrill.Seed})
	if err != nil {
		w.t.Fatal(err)
	}
	asked := func(n int, half bool, rest string) string {
		a := d.Ask()
		return fmt.Sprintf("painted drill scores %d %v %v %v half=%v %s", n, a.State.Call(), a.Answer().Server, a.Answer().Right, half, rest)
	}
	w.choosePage(3, "scores")
	w.keys("Return")
	w.waitFor(asked(1, false, "asked"))
	w.screenshot("drill-score.png")
	w.keys(fmt.Sprint(d.Ask().Answer().Server.Number()))
	w.waitFor(asked(1, true, "asked"))
	w.click(fmt.Sprintf("drill.answer%d", 2+d.Ask().Answer().Right.Number()))
	w.waitFor(asked(1, false, "right run=1 best=1 right=1 of 1"))
	w.screenshot("drill-places.png")
	d.Next()
	w.keys("space")
	w.waitFor(asked(2, false, "asked run=1"))
}
