package session

import (
	"errors"
	"math"
	"testing"

	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
	"homeside/model/reel"
)

// withoutReels is a lesson of two plays.
func withoutReels() *Session {
	l := lessontest.Long(2)
	l.Reels = nil
	l.Plays[1].Title = "second"
	return New(l, "", nil)
}

func plays(s *Session) (out []int) {
	r, _ := s.Reel()
	for _, t := range r.Takes {
		out = append(out, t.Play)
	}
	return out
}

func same(a, b []int) bool {
	if len(a) != len(b) {
		return false
	}
	for i := range a {
		if a[i] != b[i] {
			return false
		}
	}
	return true
}

// Every change of a reel is one step that can be taken back.
func TestWorkOnAReel(t *testing.T) {
	s := withoutReels()
	s.AddTake() // without a reel nothing happens
	if _, ok := s.Reel(); ok || s.Modified() {
		t.Fatal("a take was added to no reel")
	}
	s.AddReel()
	s.SelectPlay(1)
	s.AddTake()
	if got := plays(s); !same(got, []int{1, 2}) || s.ReelPick() != 1 {
		t.Fatalf("AddTake: plays %v, pick %d; want 1 2, 1", got, s.ReelPick())
	}
	s.ChangeTake("slow down", func(t lesson.Take) lesson.Take { t.Speed = 0.5; return t })
	s.DuplicateTake()
	s.MoveTake(-9)
	if got := plays(s); !same(got, []int{2, 1, 2}) || s.ReelPick() != 0 {
		t.Fatalf("MoveTake(-9) of the last: plays %v, pick %d; want 2 1 2, 0", got, s.ReelPick())
	}
	if take, _ := s.Take(); take.Speed != 0.5 {
		t.Errorf("the copy has speed %v, want 0.5", take.Speed)
	}
	s.DeleteTake()
	s.PickTake(EndCard)
	s.AddTake()
	if got := plays(s); !same(got, []int{1, 2, 2}) || s.ReelPick() != 2 {
		t.Errorf("a take added at the end card: plays %v, pick %d; want 1 2 2, 2", got, s.ReelPick())
	}
	s.PickTake(TitleCard)
	if _, ok := s.Take(); ok {
		t.Error("the title card is a take")
	}
	s.MoveTake(1) // a card stays
	s.DeleteReel()
	for range 8 {
		s.Undo()
	}
	if _, ok := s.Reel(); ok || s.Modified() {
		t.Errorf("after undoing all there is a reel: %v, modified %v", ok, s.Modified())
	}
}

func TestFitReel(t *testing.T) {
	s := withoutReels()
	left, err := s.FitReel(40, reel.FitOptions{})
	if err != nil || len(left) > 0 {
		t.Fatalf("FitReel(40) = %v, %v; want all in", left, err)
	}
	s.ChangeReel("end", func(r lesson.Reel) lesson.Reel {
		r.Name, r.End, r.Logo = "mine", lesson.Card{Heading: "end", Length: 2}, lesson.TopLeft
		return r
	})
	if _, err := s.FitReel(20, reel.FitOptions{Recipe: reel.SlowFast}); err != nil {
		t.Fatal(err)
	}
	r, _ := s.Reel()
	if d := math.Abs(float64(s.SolvedReel().Length() - 20)); d > 1e-6 || r.Name != "mine" || r.Logo != lesson.TopLeft {
		t.Errorf("FitReel(20) lasts %v with its end card; %q, logo %v: want 20, mine, top-left", s.SolvedReel().Length(), r.Name, r.Logo)
	}
	var length *reel.LengthError
	if _, err := s.FitReel(3, reel.FitOptions{}); !errors.As(err, &length) {
		t.Errorf("FitReel(3) = %v, want a *reel.LengthError", err)
	}
}

// A reel that is solved is solved once, and anew after any change.
func TestSolvedReel(t *testing.T) {
	s := withoutReels()
	if !s.SolvedReel().Empty() {
		t.Error("no reel shows something")
	}
	s.AddReel()
	a := s.SolvedReel()
	if s.SolvedReel() != a {
		t.Error("a reel is solved twice")
	}
	s.ChangeTake("", func(t lesson.Take) lesson.Take { t.Speed = 0.5; return t })
	if b := s.SolvedReel(); b == a || !(b.Length() > a.Length()) {
		t.Errorf("at half speed the reel lasts %v, want more than %v", b.Length(), a.Length())
	}
	s.ChangeReel("", func(r lesson.Reel) lesson.Reel { return r })
	if name, _ := s.CanUndo(); name != "" {
		t.Errorf("a change that changes nothing is the step %q", name)
	}
}

func TestSeveralReels(t *testing.T) {
	s := withoutReels()
	s.AddReel()
	s.SelectPlay(1)
	s.AddReel()
	if r, _ := s.Reel(); s.ReelIndex() != 1 || r.Name != "second" {
		t.Errorf("the second reel is number %d, %q; want 1, second", s.ReelIndex(), r.Name)
	}
	s.SelectReel(0)
	s.SelectReel(7)
	s.DeletePlay() // of the second reel
	if s.ReelIndex() != 0 || !same(plays(s), []int{1}) {
		t.Errorf("reel %d of plays %v, want 0 of 1", s.ReelIndex(), plays(s))
	}
	s.SelectReel(1)
	if got := plays(s); len(got) != 0 {
		t.Errorf("the reel of a play that is deleted has takes %v, want none", got)
	}
	s.DeleteReel()
	s.DeleteReel()
	s.DeleteReel()
	if n := len(s.Lesson().Reels); n != 0 {
		t.Errorf("%d reels after deleting both, want none", n)
	}
}

func TestSetLogo(t *testing.T) {
	l := lessontest.Long(1)
	l.Logo = lesson.Logo{}
	s := New(l, "", nil)
	s.SetLogo(lessontest.SampleLogo())
	s.SetLogo(lessontest.SampleLogo()) // no second step
	s.Undo()
	if s.Modified() || s.Lesson().Logo.PNG != "" {
		t.Error("a logo given twice is not taken back by one undo")
	}
}
