package session_test

import (
	"testing"

	"homeside/app/session"
	"homeside/model/lesson"
)

func renamed(title string) lesson.Lesson {
	l := drill()
	l.Title = title
	return l
}

func TestUndoRedoModified(t *testing.T) {
	s := session.New(renamed("a"), "a.json", nil)
	check := func(what, title string, modified bool, undo, redo string) {
		t.Helper()
		u, _ := s.CanUndo()
		r, _ := s.CanRedo()
		if got := s.Lesson().Title; got != title || s.Modified() != modified || u != undo || r != redo {
			t.Errorf("%s: %q, modified %v, undo %q, redo %q, want %q, %v, %q, %q", what, got, s.Modified(), u, r, title, modified, undo, redo)
		}
	}
	check("new", "a", false, "", "")
	s.Do("to b", renamed("b"))
	check("a step", "b", true, "to b", "")
	s.Saved("b.json")
	check("saved", "b", false, "to b", "")
	if s.Path() != "b.json" {
		t.Errorf("saved as %q, want b.json", s.Path())
	}
	s.Undo()
	check("undone", "a", true, "", "to b")
	s.Undo()
	check("undone at the start", "a", true, "", "to b")
	s.Redo()
	check("redone", "b", false, "to b", "")
	s.Undo()
	s.Do("to c", renamed("c"))
	check("another step", "c", true, "to c", "")
}

// A draft is shown but not kept until it is committed, as one step.
func TestDraft(t *testing.T) {
	s := session.New(renamed("a"), "", nil)
	for _, title := range []string{"b", "c", "d"} {
		s.Preview(renamed(title))
	}
	if s.Lesson().Title != "d" || !s.Previewing() || s.Modified() {
		t.Errorf("while previewing: %q, draft %v, modified %v, want d, a draft, not modified", s.Lesson().Title, s.Previewing(), s.Modified())
	}
	s.Commit("to d")
	if name, _ := s.CanUndo(); s.Lesson().Title != "d" || s.Previewing() || name != "to d" {
		t.Errorf("committed: %q, draft %v, undo %q, want d as the step to d", s.Lesson().Title, s.Previewing(), name)
	}
	if s.Undo(); s.Lesson().Title != "a" {
		t.Errorf("the gesture took more than one step: undone to %q, want a", s.Lesson().Title)
	}
	s.Commit("nothing")
	if _, ok := s.CanUndo(); ok {
		t.Error("Commit without a draft made a step")
	}
	s.Preview(renamed("e"))
	s.Cancel()
	if s.Lesson().Title != "a" || s.Previewing() || s.Modified() {
		t.Errorf("cancelled: %q, draft %v, modified %v, want a as before", s.Lesson().Title, s.Previewing(), s.Modified())
	}
	s.Preview(renamed("f"))
	if s.Redo(); s.Lesson().Title != "d" || s.Previewing() {
		t.Errorf("redone over a draft: %q, draft %v, want d", s.Lesson().Title, s.Previewing())
	}
}

// Every change is told, and the revision counts changes of what is shown, not
// of the moment.
func TestChangesAreTold(t *testing.T) {
	changes := 0
	s := session.New(drill(), "", func() { changes++ })
	for _, c := range []struct {
		name  string
		do    func()
		shown bool
	}{
		{"Do", func() { s.Do("step", renamed("b")) }, true},
		{"Undo", s.Undo, true},
		{"Redo", s.Redo, true},
		{"Preview", func() { s.Preview(renamed("c")) }, true},
		{"Cancel", s.Cancel, true},
		{"SelectPlay", func() { s.SelectPlay(1) }, true},
		{"Seek", func() { s.Seek(0.5) }, false},
		{"TogglePlay", s.TogglePlay, false},
		{"Advance", func() { s.Advance(0.1) }, false},
		{"SetSpeed", func() { s.SetSpeed(0.5) }, false},
		{"Saved", func() { s.Saved("x.json") }, false},
		{"Load", func() { s.Load(drill(), "y.json") }, true},
	} {
		told, revision := changes, s.Revision()
		c.do()
		if changes == told {
			t.Errorf("%s was not told", c.name)
		}
		if (s.Revision() != revision) != c.shown {
			t.Errorf("%s took the revision from %d to %d, want a change: %v", c.name, revision, s.Revision(), c.shown)
		}
	}
}

// The play is solved once for each change.
func TestCurrentIsKept(t *testing.T) {
	s := session.New(drill(), "", nil)
	r := s.Current()
	s.Seek(1)
	if s.Current() != r {
		t.Error("Current was solved again for another moment")
	}
	s.Do("step", renamed("b"))
	if s.Current() == r {
		t.Error("Current is still the one before the change")
	}
}

// A step that shortens the lesson or the play leaves a play and a moment shown.
func TestShownStaysWithinTheLesson(t *testing.T) {
	s := session.New(drill(), "", nil)
	s.SelectPlay(1)
	s.Seek(100)
	short := drill()
	short.Plays = short.Plays[:1]
	short.Plays[0].Shots = short.Plays[0].Shots[:1]
	s.Do("shorten", short)
	if s.PlayIndex() != 0 || s.Now() > s.Current().To {
		t.Errorf("after the step play %d is shown at %v, want play 0 within its %v", s.PlayIndex(), s.Now(), s.Current().To)
	}
	s.Do("empty", lesson.Lesson{})
	if _, ok := s.Play(); ok || s.PlayIndex() != 0 {
		t.Errorf("an empty lesson shows play %d", s.PlayIndex())
	}
}

func TestLoad(t *testing.T) {
	s := session.New(drill(), "a.json", nil)
	s.Do("step", renamed("b"))
	s.SelectPlay(1)
	s.Preview(renamed("c"))
	s.TogglePlay()
	s.Load(renamed("d"), "")
	_, undo := s.CanUndo()
	if s.Lesson().Title != "d" || s.Path() != "" || s.Modified() || undo || s.PlayIndex() != 0 || s.Now() != 0 || s.Playing() || s.Previewing() {
		t.Errorf("loaded: %q at %q, modified %v, undo %v, play %d at %v, playing %v, draft %v, want all new",
			s.Lesson().Title, s.Path(), s.Modified(), undo, s.PlayIndex(), s.Now(), s.Playing(), s.Previewing())
	}
}
