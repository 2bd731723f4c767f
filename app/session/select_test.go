package session

import (
	"testing"

	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
)

// A player is pointed at until another moment or another player is shown.
func TestPointOut(t *testing.T) {
	s := New(lessontest.Long(1), "", nil)
	s.PointOut(game.Far2, 0.5)
	if id, ok := s.Pointed(); !ok || id != game.Far2 || s.Now() != 0.5 || s.Selected() != game.Far2 {
		t.Errorf("PointOut(far2, 0.5): Pointed() = %v, %v at %v, want far2 at 0.5", id, ok, s.Now())
	}
	s.Seek(0.6)
	if _, ok := s.Pointed(); ok {
		t.Error("at another moment somebody is still pointed at")
	}
	s.PointOut(game.Near1, 0)
	s.Select(game.Near1)
	if _, ok := s.Pointed(); ok {
		t.Error("after a player was chosen somebody is still pointed at")
	}
}

func TestChangePlayer(t *testing.T) {
	s := New(lessontest.Long(1), "", nil)
	same := func(p lesson.Player) lesson.Player { return p }
	s.ChangePlayer("nothing", game.Near2, same)
	if s.Modified() {
		t.Error("a change that makes no difference is a step")
	}
	s.ChangePlayer("rename", game.Near2, func(p lesson.Player) lesson.Player { p.Name = "Nobody"; return p })
	if got := s.Lesson().Player(game.Near2).Name; got != "Nobody" || !s.Modified() {
		t.Errorf("ChangePlayer: name %q, modified %v", got, s.Modified())
	}
}
