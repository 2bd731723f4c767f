package session_test

import (
	"slices"
	"strings"
	"testing"

	"homeside/app/session"
	"homeside/model/court"
	"homeside/model/game"
)

func titles(d *session.Desk) string {
	var all []string
	for i, p := range d.Papers() {
		title := p.Lesson.Title
		if p.Modified {
			title += "*"
		}
		if i == d.Shown() {
			title = "[" + title + "]"
		}
		all = append(all, title)
	}
	return strings.Join(all, " ")
}

func wantDesk(t *testing.T, what string, d *session.Desk, want string) {
	t.Helper()
	if got := titles(d); got != want {
		t.Errorf("%s: the desk has %s, want %s", what, got, want)
	}
}

// Every lesson keeps its own steps, play, moment and file while another is shown.
func TestLessonsKeepTheirOwnSteps(t *testing.T) {
	s := session.New(renamed("a"), "a.json", nil)
	d := session.NewDesk(s)
	s.Do("to A", renamed("A"))
	s.Seek(0.5)
	d.Open(renamed("b"), "b.json")
	wantDesk(t, "opened", d, "A* [b]")
	if _, ok := s.CanUndo(); ok || s.Path() != "b.json" || s.Now() != 0 {
		t.Errorf("b: undo %v, path %q, moment %v, want none, b.json, 0", ok, s.Path(), s.Now())
	}
	s.Do("to B", renamed("B"))
	d.Show(0)
	wantDesk(t, "back", d, "[A*] B*")
	if step, _ := s.CanUndo(); step != "to A" || s.Now() != 0.5 || s.Path() != "a.json" {
		t.Errorf("a: undo %q, moment %v, path %q, want to A, 0.5, a.json", step, s.Now(), s.Path())
	}
	s.Undo()
	d.Step(1)
	s.Undo()
	wantDesk(t, "undone", d, "a [b]")
	d.Step(1)
	s.Redo()
	wantDesk(t, "redone", d, "[A*] b")
	d.Step(-1)
	wantDesk(t, "around", d, "A* [b]")
}

// A draft is not carried to another lesson, and a change of lesson is a change
// of what is shown.
func TestShowingAnotherLesson(t *testing.T) {
	told := 0
	s := session.New(renamed("a"), "", func() { told++ })
	d := session.NewDesk(s)
	d.Open(renamed("b"), "")
	s.SetSpeed(0.5)
	s.Preview(renamed("draft"))
	revision, before := s.Revision(), told
	d.Show(0)
	wantDesk(t, "shown", d, "[a] b")
	if s.Previewing() || s.Revision() <= revision || told <= before || s.Speed() != 0.5 {
		t.Errorf("draft %v, revision %d after %d, told %d after %d, speed %v; want none, a later one, more, 0.5", s.Previewing(), s.Revision(), revision, told, before, s.Speed())
	}
	for _, i := range []int{-1, 0, 2} {
		d.Show(i)
		wantDesk(t, "shown again", d, "[a] b")
	}
}

func TestClosingLessons(t *testing.T) {
	for _, c := range []struct {
		show  int
		close []int
		want  string
	}{
		{0, []int{0}, "[b] c"}, {1, []int{1}, "[a] c"}, {2, []int{2}, "a [b]"}, {2, []int{0}, "b [c]"}, {0, []int{2}, "[a] b"},
		{1, []int{1, 0, 0}, "[]"}, {0, []int{-1, 3}, "[a] b c"},
	} {
		s := session.New(renamed("a"), "", nil)
		d := session.NewDesk(s)
		d.Open(renamed("b"), "")
		d.Open(renamed("c"), "")
		d.Show(c.show)
		for _, i := range c.close {
			d.Close(i)
		}
		wantDesk(t, "closed", d, c.want)
		if shown := d.Paper(d.Shown()).Lesson.Title; s.Lesson().Title != shown {
			t.Errorf("close %v: the session shows %q, want %q", c.close, s.Lesson().Title, shown)
		}
	}
}

// stateAt is a state of a game that the near team serves at.
func stateAt(t *testing.T, call string) game.State {
	t.Helper()
	c, err := game.ParseCall(call)
	must(t, err)
	states, err := game.Query{Starters: [2]game.Player{game.Near1, game.Far1}, Call: c, Serving: court.Near}.Who()
	must(t, err)
	return states[0]
}

// An empty lesson gives way, an unsaved one asks to be saved until it is.
func TestBlankAndUnsaved(t *testing.T) {
	s := session.New(session.Blank(), "", nil)
	d := session.NewDesk(s)
	if !d.Blank() {
		t.Error("an empty lesson is not blank")
	}
	at := stateAt(t, "4-7-1")
	ours := session.Blank()
	ours.Title = "ours"
	d.Begin(ours, at)
	if got := s.Lesson().Title; !d.Blank() || got != "ours" || d.Len() != 1 {
		t.Errorf("begun: blank %v, %q, %d open, want ours, still blank", d.Blank(), got, d.Len())
	}
	if got, err := s.ScoreState(); err != nil || got != at {
		t.Errorf("begun: the first play is for %v (%v), want %v", got, err, at)
	}
	d.OpenUnsaved(renamed("a"), "")
	d.Begin(renamed("theirs"), at)
	wantDesk(t, "opened", d, "[a*]")
	if got := d.Modified(); !slices.Equal(got, []int{0}) {
		t.Errorf("modified: %v, want lesson 0", got)
	}
	s.Do("to b", renamed("b"))
	s.Undo()
	wantDesk(t, "undone", d, "[a*]")
	s.Saved("a.json")
	wantDesk(t, "saved", d, "[a]")
	s.Redo()
	s.Undo()
	wantDesk(t, "undone to the saved point", d, "[a]")
	if i, ok := d.Find("a.json"); !ok || i != 0 {
		t.Errorf("Find(a.json) = %d, %v, want 0", i, ok)
	}
	if _, ok := d.Find(""); ok {
		t.Error("a lesson without a file was found by none")
	}
	d.Close(0)
	if got, err := s.ScoreState(); err != nil || got.Call().String() != "0-0-2" {
		t.Errorf("closed: the next first play is for %v (%v), want the start of a game", got, err)
	}
}

// The state tells a change from none, and the number of a lesson stays.
func TestPaperTellsChanges(t *testing.T) {
	s := session.New(renamed("a"), "", nil)
	d := session.NewDesk(s)
	first := d.Paper(0)
	s.Do("to b", renamed("b"))
	second := d.Paper(0)
	if first.State == second.State || second.Step != "to b" {
		t.Errorf("after a step the state is the same: %v, step %q", first.State == second.State, second.Step)
	}
	d.Open(renamed("c"), "")
	s.Do("to d", renamed("d"))
	if got := d.Paper(0); got.State != second.State || got.ID != first.ID {
		t.Error("a lesson put aside has changed")
	}
	d.Show(0)
	s.Undo()
	if got := d.Paper(0); got.State != first.State || got.ID != first.ID {
		t.Error("after undo the state is another than before the step")
	}
}

// A lesson is saved as it was handed over, whatever has been done to it since.
func TestSavedAsItWas(t *testing.T) {
	s := session.New(renamed("a"), "", nil)
	d := session.NewDesk(s)
	s.Do("to b", renamed("b"))
	written := d.Paper(0)
	s.Do("to c", renamed("c"))
	d.Open(renamed("d"), "")
	d.Saved(written, "b.json")
	wantDesk(t, "saved while another is shown", d, "c* [d]")
	d.Show(0)
	s.Undo()
	wantDesk(t, "undone to what was saved", d, "[b] d")
	if s.Path() != "b.json" {
		t.Errorf("saved to %q, want b.json", s.Path())
	}
	d.Close(0)
	d.Saved(written, "e.json")
	wantDesk(t, "saved after it was closed", d, "[d]")
}
