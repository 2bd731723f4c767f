package app

import (
	"image"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"homeside/app/exporting"
	"homeside/app/heard"
	"homeside/internal/rodisk"
)

// textIn is all that the labels of a part of the window say.
func textIn(o fyne.CanvasObject) string {
	switch o := o.(type) {
	case *widget.Label:
		return o.Text + "\n"
	case *widget.PopUp:
		return textIn(o.Content)
	case *container.Scroll:
		return textIn(o.Content)
	case *fyne.Container:
		var all strings.Builder
		for _, i := range o.Objects {
			all.WriteString(textIn(i))
		}
		return all.String()
	}
	return ""
}

// refusedToWrite fails unless a dialog says that the disk can only be read, and all
// of this; then it is closed.
func (b *bench) refusedToWrite(doing string, want ...string) {
	b.t.Helper()
	if b.question() == nil {
		b.t.Fatalf("%s: no dialog says that it failed; traced\n%s", doing, b.traced.String())
	}
	got := textIn(b.question().overlay)
	for _, w := range append(want, "This disk can only be read, not written.") {
		if !strings.Contains(got, w) {
			b.t.Errorf("%s: it says\n%s\nwant %q in it", doing, got, w)
		}
	}
	b.answer(fyne.KeyEscape)
}

// On a disk that can only be read, saving says so, what is kept, and where; the
// lesson stays as it is and can be saved elsewhere. So do exports and the small files.
func TestReadOnlyDisk(t *testing.T) {
	var lessonPath string
	rodisk.Run(t, func(folder string) {
		data, err := os.ReadFile(lessonFile(t, "before"))
		lessonPath = filepath.Join(folder, "lesson.json")
		if err == nil {
			err = os.WriteFile(lessonPath, data, 0o600)
		}
		if err != nil {
			t.Fatal(err)
		}
	}, func(folder string) {
		state := t.TempDir()
		b := stateBench(t, state, lessonPath)
		b.rename("after")
		b.keptNow()
		b.save()
		b.wait()
		b.refusedToWrite("save", "Your lesson is still open here; save it under another name or in another folder.", "kept, for a crash, in "+briefPath(state), lessonPath)
		if !b.session.Modified() || b.session.Path() != lessonPath || titleIn(t, lessonPath) != "before" {
			t.Errorf("after a save that failed: modified %v, path %s, the file %q", b.session.Modified(), b.session.Path(), titleIn(t, lessonPath))
		}
		elsewhere := filepath.Join(t.TempDir(), "lesson.json")
		b.saveTo(elsewhere, func() {})
		b.wait()
		if b.asked() != "" || titleIn(t, elsewhere) != "after" {
			t.Errorf("saved elsewhere: %q is asked, the file has %q", b.asked(), titleIn(t, elsewhere))
		}
		b.saveText(filepath.Join(folder, "a.txt"), "text")
		b.wait()
		b.refusedToWrite("text", "Nothing was written. Your lesson is unchanged.")
		b.saveChart(filepath.Join(folder, "a.png"), image.NewGray(image.Rect(0, 0, 3, 3)))
		b.wait()
		b.refusedToWrite("chart", "Nothing was written. Your lesson is unchanged.")
		b.writeRoster(filepath.Join(folder, "r.json"), b.pairs.roster)
		b.wait()
		b.refusedToWrite("roster", "The roster is as it was, in its file and here.")
		b.exportTo(folder)
		if got := names(t, folder); len(got) != 1 {
			t.Errorf("on the disk are %v, want the lesson alone", got)
		}
	})
}

// exportTo exports the play in a format of every kind to a folder that cannot be
// written.
func (b *bench) exportTo(folder string) {
	b.t.Helper()
	b.askExport()
	named := b.exports.Named()
	kinds := []string{".png", ".gif", ".vtt", ".html"}
	for i, o := range exporting.Outputs() {
		if !slices.Contains(kinds, o.Key) || o.Needs != nil && o.Needs() != nil {
			continue
		}
		named["export-output"].(interface{ SetSelectedIndex(int) }).SetSelectedIndex(i)
		named["export-path"].(*heard.Entry).SetText(filepath.Join(folder, "x"+o.Ext))
		press(named["export-go"])
		b.exports.Work.Wait()
		b.refusedToWrite("export "+o.Name, "Nothing was written. Your lesson is unchanged.")
	}
}
