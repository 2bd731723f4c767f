//go:build window

package main

import (
	"image"
	_ "image/png"
	"math"
	"os"
	"path/filepath"
	"testing"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/lessonfile"
)

// builtin is the lesson the window is tested with, copied so that it can be saved.
const builtin = "../../assets/lessons/left-hand-middle.json"

func copyLesson(t testing.TB) (path string, l lesson.Lesson) {
	t.Helper()
	data, err := os.ReadFile(builtin)
	if err != nil {
		t.Fatal(err)
	}
	path = filepath.Join(t.TempDir(), "lesson.json")
	if err := os.WriteFile(path, data, 0o600); err != nil {
		t.Fatal(err)
	}
	return path, readLesson(t, path)
}

func readLesson(t testing.TB, path string) lesson.Lesson {
	t.Helper()
	l, err := lessonfile.Open(path)
	if err != nil {
		t.Fatalf("Open(%s): %v", path, err)
	}
	return l
}

// served is where a player of the first play stands at the serve.
func served(l lesson.Lesson, id game.Player) court.Point { return l.Plays[0].Tracks[id][0].Place }

// The journey of a first use: drag a player, save, undo, save, play, export.
func TestFirstUse(t *testing.T) {
	path, before := copyLesson(t)
	w := openWindow(t, path)

	w.drag(game.Near2.String(), 40, 30)
	w.waitFor(`step "move Tobin" modified=true`)
	w.keys("ctrl+s")
	w.waitFor("saved " + path)
	after := readLesson(t, path)
	moved := served(after, game.Near2).Sub(served(before, game.Near2))
	if perFoot := w.pxPerFoot(before); math.Abs(float64(moved.X)-40/perFoot) > 0.15+0.25 || math.Abs(float64(moved.Y)+30/perFoot) > 0.15+0.25 {
		t.Errorf("dragged 40 px right and 30 px down, snapped to half feet: moved by %v ft, want (%.2f, %.2f)", moved, 40/perFoot, -30/perFoot)
	}
	if served(after, game.Near1) != served(before, game.Near1) {
		t.Error("a player who was not dragged has moved")
	}

	w.keys("ctrl+z")
	w.waitFor("undone")
	w.keys("ctrl+s")
	w.waitFor("saved " + path)
	if got, want := served(readLesson(t, path), game.Near2), served(before, game.Near2); got != want {
		t.Errorf("after undo Tobin serves from %v, want %v", got, want)
	}

	w.keys("space")
	w.waitFor("playing=true")
	w.screenshot("playing.png")
	w.waitFor("playing=false")
	w.exportStill(filepath.Join(t.TempDir(), "still.png"))
}

// A drag that Escape ends changes nothing.
func TestEscapeCancelsADrag(t *testing.T) {
	path, before := copyLesson(t)
	w := openWindow(t, path)
	w.press(game.Near2.String(), 50, 0)
	w.keys("Escape")
	w.do("mouseup", "1")
	w.drag(game.Near1.String(), -20, 0)
	w.waitFor(`step "move Ines" modified=true`)
	w.keys("ctrl+s")
	w.waitFor("saved " + path)
	after := readLesson(t, path)
	if got, want := served(after, game.Near2), served(before, game.Near2); got != want {
		t.Errorf("after Escape Tobin serves from %v, want %v", got, want)
	}
	if served(after, game.Near1) == served(before, game.Near1) {
		t.Error("the drag after Escape moved nobody")
	}
}

// exportStill exports on the page of exports and reads the picture.
func (w *window) exportStill(path string) {
	w.t.Helper()
	w.choosePicture()
	w.exportTo(path)
	w.waitFor("exported " + path)
	f, err := os.Open(path)
	if err != nil {
		w.t.Fatal(err)
	}
	defer f.Close()
	c, format, err := image.DecodeConfig(f)
	if err != nil || format != "png" || c.Width != 1080 || c.Height != 1920 {
		w.t.Errorf("exported picture: %s %d x %d, %v, want png 1080 x 1920", format, c.Width, c.Height, err)
	}
}

// pxPerFoot is the scale of the court in the window, from two players' places.
func (w *window) pxPerFoot(l lesson.Lesson) float64 {
	a, b := w.at[game.Near1.String()], w.at[game.Far2.String()]
	px := math.Hypot(float64(a.X-b.X), float64(a.Y-b.Y))
	return px / float64(served(l, game.Near1).Distance(served(l, game.Far2)))
}
