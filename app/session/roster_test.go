package session_test

import (
	"reflect"
	"testing"

	"homeside/app/session"
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/roster"
)

func TestPutPair(t *testing.T) {
	p := roster.Pair{Name: "Quay Street", Players: [2]lesson.Player{{Name: "Nele"}, {Name: "Sven", Hand: lesson.LeftHanded}}}
	for _, e := range court.Ends {
		l := pairs(game.SideOut)
		l.Teams[e].Starter = 2
		s := session.New(l, "", nil)
		s.PutPair(p, e)
		if got := roster.PairOf(s.Lesson(), e); got != p || s.Lesson().Teams[e].Starter != 2 {
			t.Errorf("%v: PutPair makes the team %+v, want %+v with the second still the starter", e, s.Lesson().Teams[e], p)
		}
		if name, _ := s.CanUndo(); name != "put in Quay Street as the "+e.String()+" team" {
			t.Errorf("%v: PutPair made the step %q", e, name)
		}
		s.PutPair(p, e) // there already
		s.Undo()
		if !reflect.DeepEqual(s.Lesson(), l) {
			t.Errorf("%v: one Undo leaves %+v, want the lesson as before", e, s.Lesson().Teams)
		}
	}
}
