package panel

import (
	"slices"
	"testing"

	"fyne.io/fyne/v2/test"

	"homeside/app/session"
	"homeside/model/lesson"
)

// The tabs follow the desk: hidden for one lesson, a mark for what is unsaved,
// and each asks for its own lesson.
func TestTabsFollowTheDesk(t *testing.T) {
	test.NewTempApp(t)
	s := session.New(lesson.Lesson{Title: "first"}, "", nil)
	d := session.NewDesk(s)
	var shown, closed []int
	tabs := NewTabs(d, func(i int) { shown = append(shown, i) }, func(i int) { closed = append(closed, i) })
	tabs.Refresh()
	if tabs.Box.Visible() {
		t.Error("one lesson takes a row of tabs")
	}
	d.OpenUnsaved(lesson.Lesson{Title: "a second lesson with a very long title"}, "")
	d.Open(lesson.Lesson{}, "x.json")
	tabs.Refresh()
	if want := []string{"first", "• a second lesson with a very…", "Untitled lesson"}; !tabs.Box.Visible() || !slices.Equal(tabs.titles, want) {
		t.Errorf("tabs %q, shown %v, want %q", tabs.titles, tabs.Box.Visible(), want)
	}
	tabs.tabs[1].title.OnTapped()
	tabs.tabs[2].close.OnTapped()
	if !slices.Equal(shown, []int{1}) || !slices.Equal(closed, []int{2}) {
		t.Errorf("asked to show %v and to close %v, want 1 and 2", shown, closed)
	}
	d.Close(2)
	d.Close(1)
	tabs.Refresh()
	if tabs.Box.Visible() {
		t.Error("the row of tabs stays with one lesson")
	}
}
