package app

import (
	"testing"

	"fyne.io/fyne/v2"

	"homeside/app/heard"
)

// typeIn fills in the field that has the keys and presses Enter.
func (b *bench) typeIn(text string) {
	b.t.Helper()
	entry, ok := b.win.Canvas().Focused().(*heard.Entry)
	if !ok {
		b.t.Fatalf("no field has the keys, but %T", b.win.Canvas().Focused())
	}
	entry.SetText(text)
	entry.TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	b.wait()
}

// The plays of a file come in behind the one shown, as one step; a file that is
// no lesson leaves the choice open.
func TestImportFromAFile(t *testing.T) {
	b := newBench(t, lessonFile(t, "ours"))
	p := b.importing()
	b.askImportFile(p)
	b.typeIn("/no/such.json")
	if b.asked() != "Homeside" {
		t.Errorf("a file that is not there: asked %q, want a sentence", b.asked())
	}
	b.answer(fyne.KeyReturn)
	before := len(p.Sources())
	b.askImportFile(p)
	b.typeIn(lessonFile(t, "theirs"))
	if got := p.Sources(); len(got) != before+1 || got[before].Lesson.Title != "theirs" {
		t.Fatalf("%d sources, want the file's lesson behind the %d there were", len(got), before)
	}
	p.TickAll()
	b.win.Canvas().Focus(p.FocusOn())
	b.answer(fyne.KeyReturn)
	step, _ := b.session.CanUndo()
	if got := len(b.session.Lesson().Plays); got != 2 || step != "import plays" || b.session.PlayIndex() != 1 {
		t.Errorf("after the import %d plays, step %q, play %d shown; want 2, import plays, the new one", got, step, b.session.PlayIndex()+1)
	}
}

// The other lessons that are open can be imported from, then the built-in ones.
func TestImportSources(t *testing.T) {
	b := newBench(t, lessonFile(t, "one"), lessonFile(t, "two"))
	all := b.importSources()
	if len(all) != 1+len(builtIn()) || all[0].Name != "one" {
		t.Errorf("%d sources, the first %q; want the other open lesson and the %d built-in ones", len(all), all[0].Name, len(builtIn()))
	}
}
