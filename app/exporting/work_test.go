package exporting

import (
	"os"
	"testing"

	"fyne.io/fyne/v2/test"
)

// The end of the program cancels an export under way, waits for it, and leaves
// nothing of it; the window is not asked for anything then.
func TestEndLeavesNothing(t *testing.T) {
	o := open(t)
	o.output.SetSelectedIndex(find(o.outputs, ".avi"))
	o.size.SetSelectedIndex(4) // 4K: long enough
	if o.Busy() {
		t.Error("the page is busy before an export")
	}
	test.Tap(o.export)
	o.wait(t, "export runs")
	if !o.Busy() {
		t.Error("the page is not busy during an export")
	}
	o.Work.End()
	if left, err := os.ReadDir(o.folder); err != nil || len(left) > 0 {
		t.Errorf("the end leaves %v, %v; want nothing", left, err)
	}
	asked := false
	o.Work.Do(func() { asked = true })
	if asked {
		t.Error("after the end the window is asked for something")
	}
}

// What the file lacks is said after it is named, and stays to be read.
func TestPageSaysWhatIsLacking(t *testing.T) {
	s := subject(t)
	s.Lesson.Teams[0].Players[0].Initials = "中"
	o := openWith(t, s)
	o.output.SetSelectedIndex(find(o.outputs, ".html"))
	test.Tap(o.export)
	path := o.path.Text
	o.wait(t, "exported "+path)
	if got, want := o.line.Text, "Exported "+path+"\nNo font here has 中 (U+4E2D): pictures show empty boxes instead."; got != want {
		t.Errorf("the page says %q, want %q", got, want)
	}
}
