package formation

import (
	"errors"
	"strings"
	"testing"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
)

// near1 serves or receives on the right.
func TestRefusals(t *testing.T) {
	want := func(one, two lesson.Want) func(*Situation) {
		return func(s *Situation) {
			s.Lesson.Teams[court.Near].Players[0].Serving, s.Lesson.Teams[court.Near].Players[0].Receiving = one, one
			s.Lesson.Teams[court.Near].Players[1].Serving, s.Lesson.Teams[court.Near].Players[1].Receiving = two, two
		}
	}
	front := func(id game.Player) func(*Situation) { return func(s *Situation) { s.Front = &id } }
	for _, c := range []struct {
		kind   Kind
		serves bool
		change func(*Situation)
		says   string // part of the refusal; empty for none
	}{
		{lesson.Stacked, true, want(lesson.WantLeft, lesson.WantLeft), "both want the left side"},
		{lesson.Ordinary, false, want(lesson.WantRight, lesson.WantRight), "both want the right side"},
		{lesson.Stacked, true, want(lesson.WantRight, lesson.WantLeft), "near1 already stands on the right"},
		{lesson.Switched, false, want(lesson.Either, lesson.WantLeft), "near2 already stands on the left"},
		{lesson.Switched, true, want(lesson.WantLeft, lesson.WantRight), ""},
		{lesson.Stayed, true, want(lesson.WantRight, lesson.WantLeft), ""},
		{lesson.Switched, true, front(game.Near2), "near2 cannot go in front"},
		{lesson.Switched, true, front(game.Near1), ""},
		{lesson.Switched, false, front(game.Near1), "near1 cannot go in front: near2 is at the kitchen line"},
		{lesson.Poached, false, front(game.Near2), ""},
		{lesson.Ordinary, true, front(game.Near1), "nobody changes sides"},
		{lesson.Switched, true, front(game.Far1), "far1 is not of the near team"},
		{lesson.FormationUnsaid, true, func(*Situation) {}, "want ordinary, stack, switch, stay or poach"},
		{Kind(200), true, func(*Situation) {}, "want ordinary, stack, switch, stay or poach"},
		{lesson.Stacked, false, func(s *Situation) { s.Lesson.Venue.BesideSideline = 1 }, "no room to stand beside the court"},
		{lesson.Switched, false, func(s *Situation) { s.Lesson.Venue.BesideSideline = 1 }, ""},
		{lesson.Stacked, true, func(s *Situation) { s.Lesson.Venue.BesideSideline = 1 }, ""},
	} {
		s := plain(c.kind, c.serves).situation(t)
		c.change(&s)
		_, err := Write(s, c.kind)
		if c.says == "" && err != nil || c.says != "" && (!errors.Is(err, ErrRefused) || !strings.Contains(err.Error(), c.says)) {
			t.Errorf("Write(%v, serves %v): %v, want %q", c.kind, c.serves, err, c.says)
		}
	}
}

// With less room beside the court the stacked partner stands closer in.
func TestCloserIn(t *testing.T) {
	s := plain(lesson.Stacked, false).situation(t)
	for _, c := range []struct{ room, want float64 }{{0, 12}, {10, 12}, {2.25, 11.5}, {1.5, 10.75}} {
		s.Lesson.Venue.BesideSideline = court.Pt(0, 0).X
		if c.room > 0 {
			s.Lesson.Venue.BesideSideline = court.Point{X: 1}.Times(c.room).X
		}
		w, err := Write(s, lesson.Stacked)
		if err != nil {
			t.Fatalf("%v ft: %v", c.room, err)
		}
		if got := w.Contact(game.Near2).X; float64(got) != c.want {
			t.Errorf("%v ft beside the sideline: waits at x = %v ft, want %v", c.room, got, c.want)
		}
	}
}

func TestStateFor(t *testing.T) {
	for _, f := range game.Formats {
		for _, lead := range game.Players {
			for _, side := range [2]court.Side{court.Right, court.Left} {
				for _, serves := range [2]bool{true, false} {
					state, err := StateFor(f, lead, serves, side)
					if err != nil {
						t.Errorf("StateFor(%v, %v, %v, %v): %v", f, lead, serves, side, err)
						continue
					}
					got := state.Receiver()
					if serves {
						got = state.Server()
					}
					if got != lead || state.SideOf(lead) != side || state.Over() {
						t.Errorf("StateFor(%v, %v, %v, %v): %v on the %v", f, lead, serves, side, got, state.SideOf(got))
					}
				}
			}
		}
	}
	if _, err := StateFor(game.Format(9), game.Near1, true, court.Right); err == nil {
		t.Error("StateFor of an unknown format: no error")
	}
}
