//go:build window

package main

import (
	"image/gif"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"homeside/model/lesson"
)

// choosePicture opens the page of exports, where a clip is offered first, and
// chooses a picture.
func (w *window) choosePicture() {
	w.t.Helper()
	w.keys("ctrl+e")
	w.waitFor("painted exports")
	w.click("export-preset-6")
	w.waitFor("preset Picture")
	w.waitFor("painted exports")
}

// exportTo types a path into the page of exports and exports.
func (w *window) exportTo(path string) {
	w.t.Helper()
	w.click("export-path")
	w.keys("ctrl+a")
	w.typeText(path)
	w.keys("Return")
}

// A reel is made, fitted to 12 s, filmed by another camera, played, exported as a
// GIF and as captions, and saved with the lesson.
func TestMakeAReel(t *testing.T) {
	path, _ := copyLesson(t)
	w := openWindow(t, path)
	w.keys("ctrl+r")
	w.waitFor("reels open")
	w.waitFor("painted reel")
	w.click("reel-seconds")
	w.keys("ctrl+a")
	w.typeText("12")
	w.click("reel-fit")
	w.waitFor(`step "fit a reel" modified=true`)
	w.waitFor("painted reel")
	w.click("take-copy")
	w.waitFor(`step "duplicate a take" modified=true`)
	w.waitFor("painted reel")
	w.click("take-delete")
	w.waitFor(`step "delete a take" modified=true`)
	w.waitFor("painted reel")
	w.click("reel-play")
	w.waitFor("reel plays")
	w.screenshot("reel.png")
	w.waitFor("reel rests")

	w.click("reel-export")
	w.waitFor("painted exports")
	w.click("export-preset-4") // a message
	w.waitFor("preset Message")
	w.waitFor("painted exports")
	out := filepath.Join(t.TempDir(), "reel.gif")
	w.exportTo(out)
	w.waitFor("exported " + out)
	w.screenshot("export.png")
	if got := gifLength(t, out); got < 11.9 || got > 12.1 {
		t.Errorf("the reel lasts %.2f s as a GIF, want 12", got)
	}
	w.click("export-preset-7")
	w.waitFor("preset Captions")
	w.waitFor("painted exports")
	out = filepath.Join(t.TempDir(), "reel.vtt")
	w.exportTo(out)
	w.waitFor("exported " + out)
	if data, err := os.ReadFile(out); err != nil || !strings.HasPrefix(string(data), "WEBVTT\n\n1\n00:00:00.000 --> ") {
		t.Errorf("the reel's captions are %.80q, %v", data, err)
	}
	w.keys("Escape")
	w.keys("ctrl+s")
	w.waitFor("saved " + path)
	after := readLesson(t, path)
	if len(after.Reels) != 1 || len(after.Reels[0].Takes) == 0 || lesson.Validate(after) != nil {
		t.Errorf("the saved lesson has the reels %+v, want the one made", after.Reels)
	}
}

// In a reel a take gets a stretch at another speed, and is dragged before the other.
func TestSlowAndDragATake(t *testing.T) {
	path, _ := copyLesson(t)
	w := openWindow(t, path)
	w.keys("ctrl+r")
	w.waitFor("painted reel")
	for _, step := range []struct{ control, step string }{
		{"reel-new", "add a reel"}, {"take-copy", "duplicate a take"}, {"reel-slow", "slow down between two events"},
	} {
		w.click(step.control)
		w.waitFor(`step "` + step.step + `" modified=true`)
		w.waitFor("painted reel")
	}
	from, to := w.control["take-2"], w.control["take-1"]
	w.move(from)
	w.do("mousedown", "1")
	for i := 1; i <= 8; i++ {
		w.move(from.Add(to.Sub(from).Mul(i).Div(8)))
	}
	w.screenshot("takes.png")
	w.do("mouseup", "1")
	w.waitFor(`step "move a take" modified=true`)
	w.keys("ctrl+s")
	w.waitFor("saved " + path)
	takes := readLesson(t, path).Reels[0].Takes
	if len(takes) != 2 || len(takes[0].Slows) != 1 || len(takes[1].Slows) != 0 {
		t.Errorf("the takes are %+v, want the one with a slow stretch first", takes)
	}
}

// gifLength is how long a GIF lasts in seconds.
func gifLength(t *testing.T, path string) float64 {
	t.Helper()
	f, err := os.Open(path)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	g, err := gif.DecodeAll(f)
	if err != nil {
		t.Fatal(err)
	}
	sum := 0
	for _, d := range g.Delay {
		sum += d
	}
	return float64(sum) / 100
}

// An export that is cancelled midway leaves nothing; what was chosen is chosen
// again the next time the editor starts.
func TestCancelAnExport(t *testing.T) {
	path, _ := copyLesson(t)
	w := openWindow(t, path)
	w.keys("ctrl+e")
	w.waitFor("painted exports")
	w.click("export-preset-2") // a wide video, the slowest of the presets
	w.waitFor("preset Video, wide")
	w.waitFor("painted exports")
	folder := t.TempDir()
	w.exportTo(filepath.Join(folder, "clip.mp4"))
	w.waitFor("export runs")
	w.click("export-cancel")
	w.waitFor("cancelled ")
	if left, err := os.ReadDir(folder); err != nil || len(left) > 0 {
		t.Errorf("a cancelled export leaves %v, %v; want nothing", left, err)
	}
	w.keys("Escape")
	w.waitFor("exports closed")
	w.keys("alt+F4")
	w.waitFor("closed")
	_ = w.editor.Wait() // what is chosen is kept when it has ended

	w.open(path)
	w.waitFor("painted")
	w.activate()
	w.keys("ctrl+e")
	w.waitFor("export choice .mp4 1920x1080 30 paper " + folder)
	w.waitFor("painted exports")
	w.screenshot("export-again.png")
}
