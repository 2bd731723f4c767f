package session

import (
	"math"
	"testing"

	"homeside/model/lesson"
	"homeside/model/units"
)

// While a loop is played the moment stays in it, however long a tick takes.
func TestAdvanceInALoop(t *testing.T) {
	for _, c := range []struct {
		at, dt, want units.Seconds
	}{{0.5, 0.1, 0.6}, {0.9, 0.2, 0.6}, {0.9, 1.2, 0.6}, {0, 0.3, 0.3}, {1.5, 0.1, 1.6}} {
		s := New(serve(), "", nil)
		s.SetLoop(1, 0.5) // whichever end comes first
		s.Seek(c.at)
		s.playing = true
		s.Advance(c.dt)
		if got := s.Now(); math.Abs(float64(got-c.want)) > 1e-9 || !s.Playing() {
			t.Errorf("in a loop from 0.5 to 1, %v s after %v: at %v, playing %v, want %v", c.dt, c.at, got, s.Playing(), c.want)
		}
	}
}

// A loop over the whole never stops; without one the play does.
func TestLoopOverTheWhole(t *testing.T) {
	s := New(serve(), "", nil)
	s.ToggleLoop()
	r := s.Current()
	if from, to, on := s.Loop(); !on || from != r.From || to != r.To {
		t.Errorf("Loop() = %v to %v, %v, want the rally %v to %v", from, to, on, r.From, r.To)
	}
	s.TogglePlay()
	for range 100 {
		s.Advance(0.3)
	}
	if !s.Playing() || s.Now() < r.From || s.Now() > r.To {
		t.Errorf("after half a minute: at %v, playing %v, want somewhere in the rally", s.Now(), s.Playing())
	}
	s.ToggleLoop()
	for range 100 {
		s.Advance(0.3)
	}
	if s.Playing() || s.Now() != r.To {
		t.Errorf("without a loop: at %v, playing %v, want stopped at %v", s.Now(), s.Playing(), r.To)
	}
}

// The keys set one end after the other; an end on the wrong side moves the other.
func TestLoopByKeys(t *testing.T) {
	s := New(serve(), "", nil)
	r := s.Current()
	at := func(now units.Seconds, set func()) (units.Seconds, units.Seconds) {
		s.Seek(now)
		set()
		from, to, _ := s.Loop()
		return from, to
	}
	for _, c := range []struct {
		name     string
		now      units.Seconds
		set      func()
		from, to units.Seconds
	}{
		{"start", 0.4, s.LoopFrom, 0.4, r.To},
		{"end", 1.2, s.LoopTo, 0.4, 1.2},
		{"a start behind the end", 1.4, s.LoopFrom, 1.4, r.To},
		{"an end before the start", 0.2, s.LoopTo, r.From, 0.2},
	} {
		if from, to := at(c.now, c.set); from != c.from || to != c.to {
			t.Errorf("%s at %v: the loop is %v to %v, want %v to %v", c.name, c.now, from, to, c.from, c.to)
		}
	}
}

// A play from outside the loop starts again in it, and other lessons and plays
// have no loop.
func TestLoopBelongsToItsPlay(t *testing.T) {
	l := serve()
	l.Plays = append(l.Plays, l.Plays[0])
	s := New(l, "", nil)
	s.SetLoop(0.2, 0.8)
	s.Seek(1.5)
	s.TogglePlay()
	if got := s.Now(); got != 0.2 {
		t.Errorf("playing from behind the loop starts at %v, want its start", got)
	}
	s.SelectPlay(1)
	if _, _, on := s.Loop(); on {
		t.Error("the loop is kept for another play")
	}
	s.SetLoop(0.2, 0.8)
	s.Load(lesson.Lesson{}, "")
	if _, _, on := s.Loop(); on {
		t.Error("an empty lesson has a loop")
	}
}
