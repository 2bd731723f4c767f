package session_test

import (
	"reflect"
	"testing"

	"homeside/app/session"
	"homeside/model/edit"
	"homeside/model/game"
	"homeside/model/lesson"
)

// A shot is added behind the last, by the opponent nearer to the ball, shown and
// picked; the shots behind one are taken away again.
func TestAddAndCutShots(t *testing.T) {
	s := session.New(drill(), "", nil)
	if !s.AddShot("add") {
		t.Fatal("AddShot does nothing")
	}
	p, _ := s.Play()
	if len(p.Shots) != 3 || p.Shots[2].By != game.Near1 || p.Shots[2].Kind != lesson.Drop {
		t.Errorf("after the return to the right %+v comes, want a drop of near1", p.Shots[2])
	}
	if got, want := s.Now(), s.Current().Strokes[2].At; got != want || !s.IsPicked(edit.Part{Kind: edit.AimPart, Index: 2}) {
		t.Errorf("at %v is shown and %v is picked, want the aim at the contact %v", got, s.Picked(), want)
	}
	s.CutShots("cut", 2)
	if !reflect.DeepEqual(s.Lesson(), drill()) {
		t.Errorf("cut to two shots the play is %+v", s.Lesson().Plays[0])
	}
	s.CutShots("cut", 2) // no step
	s.Undo()
	s.Undo()
	if s.Modified() || s.AddShot("add") == false {
		t.Error("two undos do not take the shot and the cut back")
	}
	for s.AddShot("add") {
	}
	if p, _ := s.Play(); len(p.Shots) != lesson.MaxShots {
		t.Errorf("shots can be added up to %d, want %d", len(p.Shots), lesson.MaxShots)
	}
}
