//go:build window

package main

import (
	"os"
	"path/filepath"
	"testing"
)

// copyOf is a built-in lesson copied so that it can be saved.
func copyOf(t testing.TB, lesson string) string {
	t.Helper()
	data, err := os.ReadFile(filepath.Join(filepath.Dir(builtin), lesson))
	if err != nil {
		t.Fatal(err)
	}
	path := filepath.Join(t.TempDir(), lesson)
	if err := os.WriteFile(path, data, 0o600); err != nil {
		t.Fatal(err)
	}
	return path
}

// rehearse opens the window for rehearsing by its key.
func (w *window) rehearse() {
	w.t.Helper()
	w.keys("ctrl+F6")
	w.rehearsing()
}

// rehearsing waits for the window for rehearsing, which takes all of the screen,
// and gives it the keys.
func (w *window) rehearsing() {
	w.t.Helper()
	w.waitFor("rehearsing opened")
	w.waitFor("rehearsing page walk")
	w.waitFor("rehearsing on 1400x900")
	w.id = lastWord(w.do("search", "--sync", "--onlyvisible", "--name", "rehearsing"))
}

// Partners whose paths cross walk a play: the cautions are read, the crossing is
// told, two rounds with a rest between, then event by event with a clicker's keys.
// There is no sound device, and all goes on.
func TestRehearse(t *testing.T) {
	path := copyOf(t, "poach.json")
	before := readLesson(t, path)
	w := openWindow(t, path)
	editor := w.id
	w.rehearse()
	w.screenshot("rehearse-cautions.png")
	w.keys("Return")
	w.waitFor("rehearsing read")
	w.waitFor("rehearsing painted waiting")
	w.screenshot("rehearse-waiting.png")
	w.keys("s", "s")
	w.waitFor("chosen speed=1 ")
	w.keys("space")
	w.waitFor("phase=warning round=0")
	w.screenshot("rehearse-warning.png")
	w.waitFor("phase=counting round=1")
	w.waitFor("rehearsing painted counting")
	w.screenshot("rehearse-counting.png")
	w.waitFor("phase=running round=1")
	w.waitFor("phase=resting round=1")
	w.waitFor("rehearsing painted resting")
	w.screenshot("rehearse-resting.png")
	w.waitFor("phase=counting round=2")
	w.waitFor("phase=running round=2")

	w.keys("Home")
	w.waitFor("phase=waiting round=0")
	w.keys("Right")
	w.waitFor("rehearsing at serve.contact")
	for _, event := range []string{"serve.net", "serve.bounce", "return.contact"} {
		w.keys("Next")
		w.waitFor("rehearsing at " + event)
	}
	w.keys("Prior")
	w.waitFor("rehearsing at serve.bounce")
	w.waitFor("rehearsing painted running")
	w.screenshot("rehearse-step.png")
	for _, seen := range []string{"behind-receiver", "whole", "half", "behind-pair"} {
		w.keys("v")
		w.waitFor("rehearsing seen " + seen)
		w.waitFor("rehearsing painted running")
		w.screenshot("rehearse-" + seen + ".png")
	}
	w.keys("Tab", "Tab", "Tab")
	w.keys("Next") // while a control has the focus
	w.waitFor("rehearsing at return.contact")
	w.screenshot("rehearse-focus.png")
	w.keys("Escape")
	w.waitFor("rehearsing closed")

	w.id = editor
	w.do("windowactivate", "--sync", w.id)
	after := w.save(path)
	if len(after.Plays) != len(before.Plays) || len(after.Plays[0].Shots) != len(before.Plays[0].Shots) {
		t.Error("rehearsing has changed the lesson")
	}
	w.keys("ctrl+k")
	w.waitFor("finding a command")
	w.typeText("rehearse")
	w.waitFor(`"View › Rehearse on court, full screen"`)
	w.keys("Return")
	w.rehearsing()
	w.keys("Next") // the cautions are asked for anew
	w.waitFor("rehearsing read")
	w.keys("Next", "Next")
	w.waitFor("phase=counting round=1")
	w.keys("Escape")
	w.waitFor("rehearsing closed")
}
