//go:build window

package main

import (
	"image/gif"
	"os"
	"os/exec"
	"path/filepath"
	"testing"

	"homeside/model/game"
)

// A new user's first minutes: a pair describes itself, sees its play, follows the
// guide to an exported clip, and saves.
func TestFirstPlay(t *testing.T) {
	w := openDisplay(t)
	w.open()
	w.waitFor("painted start")
	w.activate()
	w.typeText("Ana")
	w.click("start-name-2")
	w.typeText("Luis")
	w.screenshot("start.png")
	w.keys("Return")
	w.waitFor("first play drawn")
	w.waitFor("guide 1")
	w.waitFor("painted")
	w.screenshot("guide.png")

	w.keys("space")
	w.waitFor("guide 2")
	w.waitFor("playing=false")
	w.keys("Home")
	w.drag(game.Near1.String(), -20, 10)
	w.waitFor("guide 3")
	w.keys("ctrl+z")
	w.waitFor("guide 4")
	w.waitFor("control guide-next")
	w.click("guide-next")
	w.waitFor("guide 5")
	clip := filepath.Join(t.TempDir(), "clip.gif")
	w.keys("ctrl+e")
	w.waitFor("painted exports")
	w.click("export-preset-4") // a message
	w.waitFor("preset Message")
	w.waitFor("painted exports")
	w.exportTo(clip)
	w.waitFor("guide 6")
	w.waitFor("control guide-next")
	w.click("guide-next")
	w.waitFor("guide ended")
	if frames := framesOf(t, clip); frames < 50 {
		t.Errorf("the clip has %d frames, want the whole play", frames)
	}

	path := filepath.Join(t.TempDir(), "ours.json")
	w.saveAs(path)
	l := readLesson(t, path)
	if l.Title != "Ana and Luis" || l.Player(game.Near1).Name != "Ana" || l.Player(game.Near2).Name != "Luis" || len(l.Plays) != 1 {
		t.Errorf("saved %q of %s and %s with %d plays, want Ana and Luis with one", l.Title, l.Player(game.Near1).Name, l.Player(game.Near2).Name, len(l.Plays))
	}
}

// A killed editor is started again and has lost nothing; once it is saved and
// closed nothing is left behind.
func TestCrashAndRecover(t *testing.T) {
	path, before := copyLesson(t)
	w := openWindow(t, path)
	w.drag(game.Near2.String(), 40, 30)
	w.waitFor(`step "move Tobin" modified=true`)
	w.waitFor("kept 1")
	w.kill()
	if got := served(readLesson(t, path), game.Near2); got != served(before, game.Near2) {
		t.Fatalf("the file was changed before it was saved: %v", got)
	}

	w.open()
	w.waitFor("offered 1")
	w.waitFor("painted")
	w.activate()
	w.screenshot("recover.png")
	w.keys("Return")
	w.waitFor("recovered 1")
	w.waitFor("kept 1")
	w.keys("ctrl+s")
	w.waitFor("saved " + path)
	if got := served(readLesson(t, path), game.Near2); got == served(before, game.Near2) {
		t.Error("what was dragged before the crash is lost")
	}
	w.keys("alt+F4")
	w.waitFor("closed")
	left, err := os.ReadDir(filepath.Join(w.home, "state", "homeside"))
	if err != nil || len(left) != 0 {
		t.Errorf("after a clean close %v is left behind (%v), want nothing", left, err)
	}
}

// Two lessons are open at once; a play of the one is put into the other, and
// each has its own steps to undo.
func TestSeveralLessons(t *testing.T) {
	first, l := copyLesson(t)
	second, _ := copyLesson(t)
	w := openDisplay(t)
	w.open(first, second)
	w.waitFor("painted")
	w.activate()
	w.drag(game.Near2.String(), 40, 0)
	w.waitFor(`step "move Tobin" modified=true`)
	w.keys("ctrl+Prior") // the other lesson
	w.waitFor("lesson 1 of 2")
	w.keys("ctrl+shift+i")
	w.waitFor("asking Import plays")
	w.keys("space", "Down", "space") // its first two plays
	w.screenshot("import.png")
	w.keys("Return")
	w.waitFor("imported 2")
	w.keys("ctrl+s")
	w.waitFor("saved " + first)
	if got, want := len(readLesson(t, first).Plays), len(l.Plays)+2; got != want {
		t.Errorf("after the import the lesson has %d plays, want %d", got, want)
	}
	w.keys("ctrl+Next")
	w.waitFor("lesson 2 of 2")
	w.screenshot("lessons.png")
	w.keys("ctrl+z")
	w.waitFor("undone")
	w.keys("ctrl+s")
	w.waitFor("saved " + second)
	after := readLesson(t, second)
	if len(after.Plays) != len(l.Plays) || served(after, game.Near2) != served(l, game.Near2) {
		t.Errorf("undo in the second lesson leaves %d plays, Tobin at %v, want it as it was", len(after.Plays), served(after, game.Near2))
	}
}

// Plays are put in another order by keys and by dragging, and saved in it.
func TestOrderOfPlays(t *testing.T) {
	path, l := copyLesson(t)
	w := openWindow(t, path)
	w.keys("alt+Down")
	w.waitFor(`step "move a play" modified=true`)
	w.waitFor("painted")
	from, to := w.control["play-row-1"], w.control["play-row-3"]
	w.move(from)
	w.do("mousedown", "1")
	for i := 1; i <= 8; i++ {
		w.move(from.Add(to.Sub(from).Mul(i).Div(8)))
	}
	w.screenshot("order.png")
	w.do("mouseup", "1")
	w.waitFor(`step "move a play" modified=true`)
	w.keys("ctrl+s")
	w.waitFor("saved " + path)
	after := readLesson(t, path)
	for i, was := range []int{0, 2, 1} { // down by a key: 1 0 2; then the first to the end: 0 2 1
		if after.Plays[i].Title != l.Plays[was].Title {
			t.Errorf("play %d is %q, want %q", i+1, after.Plays[i].Title, l.Plays[was].Title)
		}
	}
}

// Files that are no lessons are said to be none, and a folder that vanishes
// while a lesson is open costs nothing.
func TestBadFilesAndAVanishedFolder(t *testing.T) {
	path, _ := copyLesson(t)
	bad := t.TempDir()
	zeros, newer := filepath.Join(bad, "zeros.json"), filepath.Join(bad, "newer.json")
	writeFile(t, zeros, "")
	if err := os.Truncate(zeros, 1<<30); err != nil { // a gigabyte that takes no room on the disk
		t.Fatal(err)
	}
	writeFile(t, newer, `{"format": "homeside-lesson", "version": 9}`)
	w := openDisplay(t)
	w.open(zeros) // by the command line
	w.waitFor("failed")
	w.waitFor("painted")
	w.activate()
	w.keys("Return")
	for _, file := range []string{path, bad, newer, "/dev/zero"} {
		w.keys("ctrl+o")
		w.waitFor("asking Open a lesson")
		w.typeText(file)
		w.keys("Return")
		if file == path {
			w.waitFor("opened " + path)
			continue
		}
		w.waitFor("failed")
		w.waitFor("asking Homeside")
		w.screenshot("bad-file.png")
		w.keys("Escape")
	}

	w.drag(game.Near2.String(), 40, 30)
	w.waitFor(`step "move Tobin" modified=true`)
	if err := os.RemoveAll(filepath.Dir(path)); err != nil {
		t.Fatal(err)
	}
	w.keys("ctrl+s")
	w.waitFor("failed")
	w.waitFor("asking Homeside")
	w.screenshot("vanished.png")
	w.keys("Escape")
	elsewhere := filepath.Join(t.TempDir(), "elsewhere.json")
	w.saveAs(elsewhere)
	if l := readLesson(t, elsewhere); len(l.Plays) == 0 {
		t.Error("the lesson saved elsewhere is empty")
	}
}

// Files are dropped onto the window as a file manager drops them: a lesson opens
// in a tab of its own, a folder is said to be none.
func TestDroppedFiles(t *testing.T) {
	path, _ := copyLesson(t)
	other, _ := copyLesson(t)
	w := openWindow(t, path)
	w.drop(other)
	w.waitFor("opened " + other)
	w.waitFor("painted")
	w.drop(path, other) // both are open: the last is shown
	w.waitFor("opened " + other)
	w.keys("ctrl+Prior")
	w.waitFor("lesson 1 of 2")
	w.drop(t.TempDir())
	w.waitFor("failed")
	w.waitFor("asking Homeside")
	w.screenshot("dropped.png")
}

// drop drops files onto the editor's window.
func (w *window) drop(files ...string) {
	w.t.Helper()
	c := exec.Command("/usr/bin/python3", append([]string{"testdata/drop.py", w.id}, files...)...)
	c.Env = w.env()
	if out, err := c.CombinedOutput(); err != nil {
		w.t.Fatalf("drop %v: %v: %s", files, err, out)
	}
}

func (w *window) saveAs(path string) {
	w.t.Helper()
	w.keys("ctrl+shift+s")
	w.waitFor("asking Save the lesson")
	w.typeText(path)
	w.keys("Return")
	w.waitFor("saved " + path)
}

func writeFile(t *testing.T, path, text string) {
	t.Helper()
	if err := os.WriteFile(path, []byte(text), 0o600); err != nil {
		t.Fatal(err)
	}
}

func framesOf(t *testing.T, path string) int {
	t.Helper()
	f, err := os.Open(path)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	all, err := gif.DecodeAll(f)
	if err != nil {
		t.Fatal(err)
	}
	return len(all.Image)
}
