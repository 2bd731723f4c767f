//go:build window

package main

import (
	"math"
	"path/filepath"
	"testing"

	"homeside/model/court"
	"homeside/model/game"
)

// From the start to a saved change of place and of time and an exported picture,
// without the pointer.
func TestKeyboardOnly(t *testing.T) {
	path, before := copyLesson(t)
	w := openWindow(t, path)

	w.keys("ctrl+3") // the court
	w.keys("2")
	w.keys("shift+Right", "Right", "Right")
	w.waitFor(`step "move Tobin" modified=true`)
	w.keys("n")
	w.waitFor("picked Place of Tobin")
	w.screenshot("keyboard-court.png")

	w.keys("ctrl+4")      // the rally strip
	w.keys("n", "n", "n") // on from what was picked on the court
	w.waitFor("chosen Tobin arrives")
	w.keys("shift+Right")
	w.waitFor(`step "change when Tobin arrives" modified=true`)
	w.waitFor("chosen Tobin arrives")
	w.screenshot("keyboard-strip.png")

	w.keys("ctrl+s")
	w.waitFor("saved " + path)
	after := readLesson(t, path)
	moved := served(after, game.Near2).Sub(served(before, game.Near2))
	if want := 1 + 2.0/12; math.Abs(float64(moved.X)-want) > 1e-6 || moved.Y != 0 {
		t.Errorf("a foot and two inches to the right moved Tobin by %v ft, want %v", moved, court.Pt(1+2.0/12, 0))
	}
	if got := after.Plays[0].Tracks[game.Near2][1].At; got == before.Plays[0].Tracks[game.Near2][1].At || got.Offset != 0 {
		t.Errorf("Tobin arrives at %+v, want on the next event (before: %+v)", got, before.Plays[0].Tracks[game.Near2][1].At)
	}
	w.exportStill(filepath.Join(t.TempDir(), "still.png"))
}

// The Tab key goes from the score to the court and on to the rally strip, and it
// is seen where the keys are.
func TestTabGoesThroughTheWindow(t *testing.T) {
	path, _ := copyLesson(t)
	w := openWindow(t, path)
	w.keys("ctrl+1")
	for _, part := range []string{"court", "strip"} {
		tabs := make([]string, 16)
		for i := range tabs {
			tabs[i] = "Tab"
		}
		w.keys(tabs...)
		w.waitFor("focus " + part)
	}
	w.keys("ctrl+4")
	w.waitFor("focus strip")
	w.screenshot("focus-strip.png")
}

// A command is found by a few letters and done; the page of keys opens and closes.
func TestCommandSearch(t *testing.T) {
	path, before := copyLesson(t)
	w := openWindow(t, path)
	w.keys("ctrl+k")
	w.waitFor("finding a command")
	w.typeText("dupl")
	w.waitFor(`found 1 "Play › Duplicate this play"`)
	w.screenshot("command-search.png")
	w.keys("Return")
	w.waitFor(`step "duplicate a play" modified=true`)
	w.keys("ctrl+s")
	w.waitFor("saved " + path)
	if got, want := len(readLesson(t, path).Plays), len(before.Plays)+1; got != want {
		t.Errorf("the saved lesson has %d plays, want %d", got, want)
	}
	w.keys("F1")
	w.waitFor("showing")
	w.screenshot("keys.png")
	w.keys("Escape")
	w.keys("l") // not typed into anything
	w.waitFor("loop ")
}

// The field to search in takes the keys although it has never been painted: a
// letter typed at once goes into it, and does not do what it is bound to.
func TestSearchTakesTheKeysAtOnce(t *testing.T) {
	path, _ := copyLesson(t)
	w := openWindow(t, path)
	w.keys("ctrl+f", "s")
	w.keys("ctrl+k") // does nothing under the dialog that S opens elsewhere
	w.waitFor("finding a command")
}
