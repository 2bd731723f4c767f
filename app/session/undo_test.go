package session

import (
	"testing"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson/lessontest"
)

// Undo of a step in another play shows that play.
func TestUndoShowsWhatItChanges(t *testing.T) {
	s := New(lessontest.Long(3), "", nil)
	s.SelectPlay(2)
	l, ok := s.PlaceAt(game.Near1, court.Pt(3, -23))
	if !ok {
		t.Fatal("PlaceAt: no play")
	}
	s.Do("move", l)
	s.SelectPlay(0)
	s.Undo()
	if got := s.PlayIndex(); got != 2 {
		t.Errorf("after Undo of a step in play 2 PlayIndex() = %d, want 2", got)
	}
	s.SelectPlay(1)
	s.Redo()
	if got := s.PlayIndex(); got != 2 {
		t.Errorf("after Redo of a step in play 2 PlayIndex() = %d, want 2", got)
	}
}
