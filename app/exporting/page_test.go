package exporting

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"homeside/app/heard"
	"homeside/export/exporttest"
	"homeside/words"
)

// The page writes what is chosen into the folder of the lesson, keeps the choice
// and shows the folder.
func TestPageExports(t *testing.T) {
	o := open(t)
	test.Tap(o.presets[7]) // captions
	if got, want := o.path.Text, filepath.Join(o.folder, "first.vtt"); got != want {
		t.Errorf("the file is suggested as %s, want %s", got, want)
	}
	if !strings.HasPrefix(o.text.Text, "WEBVTT") || !o.textBox.Visible() || o.frame.Box.Visible() {
		t.Errorf("captions are previewed as %q, text shown %v, frame shown %v", o.text.Text, o.textBox.Visible(), o.frame.Box.Visible())
	}
	o.path.SetText(filepath.Join(o.folder, "mine")) // the ending is put behind it
	test.Tap(o.export)
	path := filepath.Join(o.folder, "mine.vtt")
	o.wait(t, "exported "+path)
	if data, err := os.ReadFile(path); err != nil || !bytes.HasPrefix(data, []byte("WEBVTT")) {
		t.Errorf("%s: %.20q, %v", path, data, err)
	}
	test.Tap(o.show)
	o.wait(t, "shown "+o.folder)
	o.Close()
	o.Open(0)
	if o.show.Visible() {
		t.Error("opened again, the page shows the button of an earlier export without its line")
	}
	o.again(t, test.NewTempApp(t))
	if got := o.chosenOutput().Key; got != ".vtt" || o.path.Text != filepath.Join(o.folder, "first.vtt") {
		t.Errorf("after a restart %s into %s, want .vtt as before, named anew", got, o.path.Text)
	}
}

// An MP4 has the beeps of the play if they are ticked, as long as the clip; a
// preset leaves the tick as it is, and what cannot be heard shows none.
func TestPageWritesBeeps(t *testing.T) {
	o := open(t)
	o.output.SetSelectedIndex(find(o.outputs, ".png"))
	if o.beeps.Visible() {
		t.Error("a PNG picture offers beeps")
	}
	test.Tap(o.presets[0]) // a phone feed
	o.size.SetSelectedIndex(7)
	for _, ticked := range []bool{true, false} {
		if !o.beeps.Visible() || o.beeps.Checked != ticked {
			t.Fatalf("the MP4's beeps are shown %v, ticked %v, want ticked %v", o.beeps.Visible(), o.beeps.Checked, ticked)
		}
		path := filepath.Join(o.folder, fmt.Sprintf("%v.mp4", ticked))
		o.path.SetText(path)
		test.Tap(o.export)
		o.wait(t, "exported "+path)
		if got, want := exporttest.HeardCodec(t, path), map[bool]string{true: "aac"}[ticked]; got != want {
			t.Errorf("an MP4 with beeps ticked %v is heard by %q, want %q", ticked, got, want)
		}
		test.Tap(o.beeps)
	}
	o.beeps.SetChecked(false)
	test.Tap(o.presets[2])
	if o.beeps.Checked {
		t.Error("a preset ticks the beeps again")
	}
	o.output.SetSelectedIndex(find(o.outputs, ".webm"))
	o.ground.SetSelectedIndex(1)
	if o.beeps.Visible() {
		t.Error("a WebM on a clear ground offers beeps")
	}
}

// The purpose that is chosen is ticked, until something else is chosen; the time of
// the frame shown is said.
func TestPageShowsPurposeAndTime(t *testing.T) {
	o := open(t)
	ticked := func() (out []int) {
		for i, b := range o.presets {
			if b.Icon != nil {
				out = append(out, i)
			}
		}
		return out
	}
	for _, i := range []int{4, 1} {
		test.Tap(o.presets[i])
		if got := ticked(); len(got) != 1 || got[0] != i {
			t.Errorf("after purpose %d these are ticked: %v", i, got)
		}
	}
	o.rate.SetSelectedIndex(0)
	if got := ticked(); len(got) != 0 {
		t.Errorf("with another rate these are ticked: %v, want none", got)
	}
	from, to := o.subject.Source.Span()
	o.moment.SetValue(float64(from) + 2)
	if got, want := o.clock.Text, words.ClipTime(2, to-from); got != want || !o.clock.Visible() {
		t.Errorf("2 s after the start the page says %q, want %q", got, want)
	}
	test.Tap(o.presets[7])
	if o.clock.Visible() {
		t.Error("captions have a moment")
	}
}

// While a file is written, and after that, nothing is said to be measured that is not:
// an export that ended well needs no estimate, one that did not is estimated again.
func TestAnExportEndsTheMeasuring(t *testing.T) {
	measuring := words.T("Measuring a few frames…")
	o := open(t)
	test.Tap(o.presets[7]) // captions
	for _, c := range []struct {
		path, told string
		after      bool
	}{{"mine", "exported", false}, {"none/such/mine", "failed", true}} {
		o.path.SetText(filepath.Join(o.folder, c.path))
		o.remeasure()
		o.measuring() // as if it took long
		if test.Tap(o.export); o.estimate.Text == measuring {
			t.Errorf("%s: the page measures while it exports", c.path)
		}
		for told := ""; !strings.HasPrefix(told, c.told); told = <-o.told {
		}
		if got := o.estimate.Text != ""; got != c.after {
			t.Errorf("%s: the estimate says %q, want one: %v", c.path, o.estimate.Text, c.after)
		}
	}
}

// A clip that is cancelled midway leaves nothing.
func TestPageCancels(t *testing.T) {
	o := open(t)
	o.output.SetSelectedIndex(find(o.outputs, ".avi"))
	o.size.SetSelectedIndex(4) // 4K: long enough to press Cancel
	test.Tap(o.export)
	o.wait(t, "export runs")
	test.Tap(o.cancel)
	o.wait(t, "cancelled")
	if left, err := os.ReadDir(o.folder); err != nil || len(left) > 0 {
		t.Errorf("a cancelled export leaves %v, %v; want nothing", left, err)
	}
	if o.export.Disabled() || o.bar.Visible() || o.cancel.Visible() {
		t.Error("after a cancelled export the page is not as before")
	}
}

// By keys alone: a purpose is chosen, the export begun and cancelled. Escape is the
// window's, see TestEscapeLeavesAField.
func TestPageByKeys(t *testing.T) {
	o := open(t)
	w := fyne.CurrentApp().Driver().CanvasForObject(o.Box)
	press := func(k fyne.KeyName) { w.Focused().TypedKey(&fyne.KeyEvent{Name: k}) }
	to := func(b *heard.Button) {
		t.Helper()
		for range 60 {
			if w.FocusNext(); w.Focused() == b {
				return
			}
		}
		t.Fatalf("Tab does not reach %q", b.Text)
	}
	to(o.presets[2])
	press(fyne.KeySpace)
	if o.output.SelectedIndex() == find(o.outputs, ".png") || w.Focused() != o.presets[2] {
		t.Errorf("a purpose chosen by the space bar: output %d, the keys are with %v", o.output.SelectedIndex(), w.Focused())
	}
	o.output.SetSelectedIndex(find(o.outputs, ".avi"))
	o.size.SetSelectedIndex(4) // 4K: long enough to press Cancel
	to(o.export)
	press(fyne.KeyReturn)
	o.wait(t, "export runs")
	if w.Focused() != o.cancel {
		t.Fatalf("while the export runs the keys are with %v, want Cancel", w.Focused())
	}
	press(fyne.KeySpace)
	o.wait(t, "cancelled")
	if w.Focused() != o.export {
		t.Errorf("after that the keys are with %v, want Export", w.Focused())
	}
}

func TestPageNamesAndEndings(t *testing.T) {
	o := open(t)
	for _, c := range []struct{ key, path, want string }{
		{".gif", "/a/x.png", "/a/x.gif"}, {".gif", "/a/x", "/a/x.gif"}, {".gif", "/a/x.y", "/a/x.y.gif"}, {".vtt", "/a/x.chapters.vtt", "/a/x.vtt"},
		{".chapters.vtt", "/a/x.vtt", "/a/x.chapters.vtt"}, {".frames", "/a/x.MP4", "/a/x.frames"},
	} {
		o.choice.Output = find(o.outputs, c.key)
		if got := o.withExt(c.path); got != c.want {
			t.Errorf("withExt(%s) of %s = %s, want %s", c.path, c.key, got, c.want)
		}
	}
}

// A name typed with the ending of another format chooses that format, and says so;
// half an ending, or one of no format, chooses nothing.
func TestTypedEndingChoosesTheFormat(t *testing.T) {
	o := open(t)
	o.measuring()
	o.ready = false // nothing is measured meanwhile
	for _, c := range []struct{ chosen, typed, want string }{
		{".mp4", "x.png", ".png"}, {".mp4", "x.PNG", ".png"}, {".png", "x.gif", ".gif"}, {".vtt", "x.chapters.vtt", ".chapters.vtt"},
		{".png", "x.gi", ".png"}, {".png", "x.doc", ".png"}, {"handout cones", "x.pdf", "handout cones"},
	} {
		o.choice.Output = find(o.outputs, c.chosen)
		o.say("")
		o.path.SetText("/a/" + c.typed)
		if got := o.chosenOutput().Key; got != c.want || o.output.Selected != o.chosenOutput().Name && got != c.chosen {
			t.Errorf("%s typed for %s chooses %s, shown as %q, want %s", c.typed, c.chosen, got, o.output.Selected, c.want)
		}
		if told := strings.Contains(o.line.Text, o.chosenOutput().Name); told != (c.want != c.chosen) {
			t.Errorf("%s typed for %s: the page says %q", c.typed, c.chosen, o.line.Text)
		}
	}
}

// A page laid out for a choice of few rows has room for those of another choice.
func TestFormDoesNotOverlap(t *testing.T) {
	o := open(t)
	test.Tap(o.presets[7])                // captions
	o.Box.Resize(fyne.NewSize(1100, 780)) // laid out with the fewest rows
	test.Tap(o.presets[0])                // a clip
	bottom := float32(0)
	for _, c := range o.form.Objects {
		if !c.Visible() {
			continue
		}
		if c.Position().Y < bottom || c.Size().Height < c.MinSize().Height {
			t.Errorf("a %T at %.0f, %.0f high and wanting %.0f, under what ends at %.0f", c, c.Position().Y, c.Size().Height, c.MinSize().Height, bottom)
		}
		bottom = c.Position().Y + c.Size().Height
	}
}
