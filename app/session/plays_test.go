package session

import (
	"testing"

	"homeside/model/lesson/lessontest"
)

// Every change of the list of plays is one step that can be taken back.
func TestPlaysOfTheLesson(t *testing.T) {
	s := New(lessontest.Long(2), "", nil)
	s.SelectPlay(1)
	s.DuplicatePlay()
	if got := len(s.Lesson().Plays); got != 3 || s.PlayIndex() != 2 {
		t.Errorf("DuplicatePlay: %d plays, play %d shown, want 3 and 2", got, s.PlayIndex())
	}
	s.RenamePlay("a copy")
	if p, _ := s.Play(); p.Title != "a copy" || s.Lesson().Plays[1].Title == "a copy" {
		t.Errorf("RenamePlay: titles %q and %q, want only the copy renamed", s.Lesson().Plays[1].Title, p.Title)
	}
	s.DeletePlay()
	if got := len(s.Lesson().Plays); got != 2 || s.PlayIndex() != 1 {
		t.Errorf("DeletePlay: %d plays, play %d shown, want 2 and 1", got, s.PlayIndex())
	}
	for range 3 {
		s.Undo()
	}
	if got := len(s.Lesson().Plays); got != 2 || s.Modified() {
		t.Errorf("after undoing all: %d plays, modified %v, want 2 and not", got, s.Modified())
	}
}

// A lesson may lose its last play; then there is nothing to change.
func TestNoPlaysLeft(t *testing.T) {
	s := New(lessontest.Long(1), "", nil)
	s.DeletePlay()
	s.DuplicatePlay()
	s.RenamePlay("nothing")
	s.DeletePlay()
	if got := len(s.Lesson().Plays); got != 0 {
		t.Errorf("%d plays, want none", got)
	}
	if s.Current() != nil {
		t.Error("a lesson without plays has a rally")
	}
}
