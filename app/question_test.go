package app

import (
	"errors"
	"image"
	"maps"
	"os"
	"path/filepath"
	"reflect"
	"slices"
	"strings"
	"testing"
	"time"

	"fyne.io/fyne/v2"

	"homeside/app/courtview"
	"homeside/app/journal"
	"homeside/model/court"
	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
)

// dialogs are all dialogs of the window, and how each is opened.
var dialogs = map[string]func(b *bench){
	"settings":         func(b *bench) { b.askSettings() },
	"lesson":           func(b *bench) { b.askLesson() },
	"play in words":    func(b *bench) { b.askDescribePlay() },
	"mark":             func(b *bench) { b.askMark(0) },
	"new caption":      func(b *bench) { b.askCue(lesson.Caption, 0) },
	"new signal":       func(b *bench) { b.askCue(lesson.Signal, 0) },
	"cue":              func(b *bench) { b.askChangeCue(0) },
	"lead":             func(b *bench) { b.askLead() },
	"new play":         func(b *bench) { b.askNewPlay() },
	"what if":          func(b *bench) { b.insertWritten(); b.askWhatIf() },
	"mistakes":         func(b *bench) { b.insertWritten(); b.askMistakes() },
	"compare plays":    func(b *bench) { b.askCompare() },
	"compare cover":    func(b *bench) { b.showCompared(b.cover(), b.cover()) },
	"import plays":     func(b *bench) { b.askImport() },
	"import file":      func(b *bench) { b.askImportFile(b.importing()) },
	"open":             func(b *bench) { b.askOpen() },
	"save as":          func(b *bench) { b.askSaveAs() },
	"save failed":      func(b *bench) { b.saveFailed(os.ErrPermission, func() {}) },
	"save text":        func(b *bench) { b.askSaveText("a.txt", "a") },
	"save chart":       func(b *bench) { b.askSaveChart(image.NewGray(image.Rect(0, 0, 1, 1))) },
	"open roster":      func(b *bench) { b.askOpenRoster() },
	"save roster":      func(b *bench) { b.askSaveRosterAs() },
	"replace the pair": func(b *bench) { b.keepTwice() },
	"remove the pair":  func(b *bench) { b.keepTwice(); b.answer(fyne.KeyEscape); b.askRemovePair(0) },
	"handout":          func(b *bench) { b.askHandout() },
	"picture":          func(b *bench) { b.askPhoto() },
	"logo":             func(b *bench) { b.askLogo() },
	"a file":           func(b *bench) { b.browseFiles("A file", b.folder(), photoExts, func(string) {}) },
	"a folder":         func(b *bench) { b.browseFolder(b.folder(), func(string) {}) },
	"find a command":   func(b *bench) { b.findCommand() },
	"keys":             func(b *bench) { b.showKeys() },
	"cautions":         func(b *bench) { b.showCautions() },
	"replace the file": func(b *bench) { b.unlessExists(b.folder(), "", func() {}) },
	"changed on disk":  func(b *bench) { b.askOverwrite("a.json", func() {}) },
	"unsaved":          func(b *bench) { b.rename("another"); b.closeLesson(b.desk.Shown()) },
	"unsaved lessons":  func(b *bench) { b.state = b.leftBehind(); b.offerLeft() },
	"throw away":       func(b *bench) { b.askThrowAway(nil) },
	"progress":         func(b *bench) { b.showProgress("a.pdf", func() {}) },
	"under way":        func(b *bench) { b.showWorking("Opening…", func() {}) },
	"failed":           func(b *bench) { b.fail(os.ErrNotExist, "All is kept.") },
	"several failed":   func(b *bench) { b.failAll([]readFile{{path: "a", err: os.ErrNotExist}}, 2) },
}

// dialogBench is an editor that anew can open a lesson in.
func dialogBench(t *testing.T) *bench {
	b := newBench(t)
	b.path = filepath.Join(t.TempDir(), "lesson.json")
	b.anew()
	return b
}

// anew shows a lesson of two plays that has a mark and a text, its court in focus.
func (b *bench) anew() {
	b.t.Helper()
	l, sample := builtIn()[0], lessontest.SamplePlay()
	l.Plays = l.Plays[:2:2]
	l.Plays[0].Marks, l.Plays[0].Cues = sample.Marks, sample.Cues
	b.openLesson(l, b.path)
	b.wait()
	b.win.Canvas().Focus(b.court)
}

// openDialog opens one, that a test may go through.
func (b *bench) openDialog(name string) {
	b.t.Helper()
	b.anew()
	dialogs[name](b)
	if b.question() == nil {
		b.t.Fatalf("%s: no dialog is open", name)
	}
}

func (b *bench) folder() string { return filepath.Dir(b.path) }

func (b *bench) cover() courtview.Snapshot {
	b.t.Helper()
	s, ok := b.court.Snapshot()
	if !ok {
		b.t.Fatal("the play has no cover to compare")
	}
	return s
}

// leftBehind is a folder with a lesson of a program that has been killed.
func (b *bench) leftBehind() string {
	folder := b.t.TempDir()
	j, err := journal.Open(folder)
	if err == nil {
		err = errors.Join(j.Keep(1, journal.Entry{Lesson: b.session.Lesson(), About: journal.About{When: time.Unix(1e9, 0)}}), journal.Abandon(j))
	}
	if err != nil {
		b.t.Fatal(err)
	}
	return folder
}

// insertWritten puts a play in that has what ifs.
func (b *bench) insertWritten() {
	b.askNewPlay()
	b.answer(fyne.KeyReturn)
}

// keepTwice keeps a pair in a roster and asks to keep it once more.
func (b *bench) keepTwice() {
	b.pairs.path = filepath.Join(b.folder(), "roster.json")
	b.keepPair(court.Near)
	b.wait()
	b.keepPair(court.Near)
}

// controlsOfDialog are what the Tab key goes through in the dialog shown.
func (b *bench) controlsOfDialog() (all []fyne.Focusable) {
	c := b.win.Canvas()
	for first := c.Focused(); first != nil && !slices.Contains(all, c.Focused()); c.FocusNext() {
		all = append(all, c.Focused())
	}
	return all
}

// Escape closes every dialog whichever control has the focus, and changes nothing;
// the focus is in the dialog from the start and goes back to where it was.
func TestEscapeClosesEveryDialog(t *testing.T) {
	b := dialogBench(t)
	for _, name := range slices.Sorted(maps.Keys(dialogs)) {
		b.openDialog(name)
		all := b.controlsOfDialog()
		if len(all) == 0 {
			t.Fatalf("%s: nothing in the dialog has the focus", name)
		}
		for i := range all {
			if b.question() == nil {
				dialogs[name](b)
			}
			for range i {
				b.win.Canvas().FocusNext()
			}
			before, at := b.session.Lesson(), b.win.Canvas().Focused()
			b.escapeAll(name)
			if got := b.win.Canvas().Focused(); got != fyne.Focusable(b.court) {
				t.Errorf("%s: closed from control %d, %T: %T has the focus, want the court again", name, i+1, at, got)
			}
			if !reflect.DeepEqual(b.session.Lesson(), before) {
				t.Errorf("%s: Escape on control %d, %T, has changed the lesson", name, i+1, at)
			}
		}
	}
}

// escapeAll presses Escape until no dialog is open: one may lie over another, or
// ask once more.
func (b *bench) escapeAll(name string) {
	b.t.Helper()
	for range 3 {
		q := b.question()
		if q == nil {
			break
		}
		at := b.win.Canvas().Focused()
		at.TypedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
		if !q.done {
			b.t.Fatalf("%s: Escape on %T does not close the dialog", name, at)
		}
		b.wait()
	}
	if b.win.Canvas().Overlays().Top() != nil {
		b.t.Fatalf("%s: something is still open", name)
	}
}

// Enter gives the usual answer from the control that has the focus at first; where
// there is nothing to do the dialog stays.
func TestEnterAnswersEveryDialog(t *testing.T) {
	stays := []string{"import plays", "keys", "a file"} // nothing is ticked, nothing to do, the folder above
	b := dialogBench(t)
	for _, name := range slices.Sorted(maps.Keys(dialogs)) {
		b.openDialog(name)
		q := b.question()
		b.win.Canvas().Focused().TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
		if want := !slices.Contains(stays, name); q.done != want {
			t.Errorf("%s: after Enter the dialog is answered: %v, want %v", name, q.done, want)
		}
		b.wait()
		b.escapeAll(name)
	}
}

// There is one kind of dialog, and no control that keeps Escape for itself.
func TestControlsHandTheirKeysOn(t *testing.T) {
	bad := []string{"fyne/v2/dialog", "widget.NewEntry", "widget.NewMultiLineEntry", "widget.NewPasswordEntry", "widget.NewButton", "widget.NewCheck(", "widget.NewSlider", "widget.NewList(",
		"widget.NewTable(", "widget.NewSelect", "widget.NewRadioGroup", "widget.NewCheckGroup", "widget.NewHyperlink", "widget.NewTree("}
	seen := 0
	files, err := filepath.Glob("*.go")
	for _, part := range []string{"panel", "exporting", "photopage", "rehearse", "drilling"} {
		more, _ := filepath.Glob(filepath.Join(part, "*.go")) // the pattern is sound
		files = append(files, more...)
	}
	for _, path := range files {
		if strings.HasSuffix(path, "_test.go") {
			continue
		}
		text, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		for _, word := range bad {
			if strings.Contains(string(text), word) && path != "question.go" {
				t.Errorf("%s has %s: dialogs are questions, controls are of heard", path, word)
			}
		}
		seen++
	}
	if err != nil || seen < 100 {
		t.Errorf("%d files read, %v", seen, err)
	}
}

// Escape in a field of the window puts its text back and gives the keys to the
// court; on a page it closes the page.
func TestEscapeLeavesAField(t *testing.T) {
	b := dialogBench(t)
	c := b.win.Canvas()
	b.cards.open(b.cards.player)
	c.Focus(firstControl(b.cards.player.Detail))
	if c.Focused() == nil || c.Focused() == fyne.Focusable(b.court) {
		t.Fatalf("%T has the focus, want a field of the player card", c.Focused())
	}
	c.Focused().TypedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
	if c.Focused() != fyne.Focusable(b.court) {
		t.Errorf("after Escape %T has the focus, want the court", c.Focused())
	}
	for name, page := range map[string]struct {
		open  func()
		shown func() bool
	}{
		"match plan": {b.openMatchPlan, b.plan.Shown}, "reels": {b.openReels, b.reels.Shown}, "exports": {b.askExport, b.exports.Shown},
		"photo": {b.openPhoto, b.photos.page.Shown}, "start": {b.openStart, b.start.Shown},
	} {
		page.open()
		if !page.shown() {
			t.Fatalf("the page %s does not open", name)
		}
		c.Focus(nil)
		for i := 0; page.shown() && i < 200; i++ {
			c.FocusNext()
			f := c.Focused()
			f.TypedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
			if page.shown() {
				t.Errorf("the page %s stays after Escape on %T", name, f)
				break
			}
		}
	}
}
