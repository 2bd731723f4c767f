package rally

import (
	"math"
	"testing"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

// A ball met at the top of its second bounce has touched the court twice before,
// without a break, and comes up lower than after the first.
func TestSecondBounce(t *testing.T) {
	p := lesson.Play{Shots: []lesson.Shot{
		{By: game.Near1, Aim: court.Pt(-5, 15), Intent: lesson.Apex(8), Meet: lesson.Meet{How: lesson.SecondTop}},
		{By: game.Far1, Aim: court.Pt(2, -15), Intent: lesson.Apex(8)},
	}}
	for id := range p.Tracks {
		e := game.Player(id).Team()
		p.Tracks[id] = []lesson.Keyframe{{Place: court.OwnPoint(e, 5, 23), Facing: e.Facing()}}
	}
	r, err := Solve(lesson.Lesson{Plays: []lesson.Play{p}}, 0)
	if err != nil {
		t.Fatal(err)
	}
	s := r.Strokes[0]
	first, second := s.Planned.Duration, s.Planned.Duration+s.Rebound.Duration
	if got, want := s.Met, second+s.Second.Top(); got != want {
		t.Errorf("met after %v s, want %v", got, want)
	}
	if r.Strokes[1].At != s.Met {
		t.Errorf("the return is struck at %v s, want %v", r.Strokes[1].At, s.Met)
	}
	radius := float64(r.Model.Ball.Radius())
	for _, at := range []units.Seconds{first - 1e-6, first + 1e-6, second - 1e-6, second + 1e-6} {
		if got := float64(r.At(at).Ball.Height()); math.Abs(got-radius) > 1e-4 {
			t.Errorf("At(%v s): the ball is %v m high, want a radius, %v", at, got, radius)
		}
	}
	if low, high := s.Second.Apex.State.Height(), s.Rebound.Apex.State.Height(); low >= high || float64(low) <= radius {
		t.Errorf("the second bounce rises to %v m, want less than the first's %v", low, high)
	}
	if r.Strokes[1].Second != nil {
		t.Error("a ball that nobody waits for has a second bounce")
	}
}
