package advice

import (
	"math"
	"testing"

	"homeside/model/court"
	"homeside/model/finding"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

// cross has the near pair change places, each along a straight line, near2
// passing at depth y.
func cross(y float64) lesson.Lesson {
	return with(func(p *lesson.Play) {
		p.Tracks[game.Near1] = []lesson.Keyframe{{Place: pt(4, -22)}, {At: after(0, 3), Place: pt(-4, -22), Leave: new(after(0, 0.5))}}
		p.Tracks[game.Near2] = []lesson.Keyframe{{Place: pt(-4, y)}, {At: after(0, 3), Place: pt(4, y), Leave: new(after(0, 0.5))}}
		p.Shots = p.Shots[:2]
		p.Tracks[game.Far1] = p.Tracks[game.Far1][:1]
	})
}

// Two who pass on parallel lines come as close as the lines are, and the closest
// approach found agrees with a fine walk through time.
func TestClosest(t *testing.T) {
	for _, y := range []float64{-24, -26, -20.5} {
		r := solved(t, cross(y))
		a, ok := Closest(r, court.Near)
		if want := math.Abs(y + 22); !ok || !near(float64(a.Distance), want, 1e-3) {
			t.Errorf("partners on lines %v ft apart come as close as %v ft, %v", want, a.Distance, ok)
		}
		least, when := units.Feet(math.Inf(1)), units.Seconds(0)
		for i := range 8000 {
			now := units.Seconds(i) / 2000
			p, q := r.Tracks[game.Near1].RunAt(now).Place, r.Tracks[game.Near2].RunAt(now).Place
			if d := p.Distance(q); d < least {
				least, when = d, now
			}
		}
		if !near(float64(a.Distance), float64(least), 1e-4) || !near(float64(a.When), float64(when), 0.01) {
			t.Errorf("closest %v ft at %v s, a fine walk says %v at %v", a.Distance, a.When, least, when)
		}
		front := game.Near1
		if y > -22 {
			front = game.Near2
		}
		if a.Front != front || a.Level {
			t.Errorf("in front at %v: %v, level %v, want %v", y, a.Front, a.Level, front)
		}
		crossed := Crossings(r, court.Near)
		if len(crossed) != 1 || crossed[0].Front != front {
			t.Fatalf("crossings %+v, want one with %v in front", crossed, front)
		}
		if p, q := r.Tracks[game.Near1].RunAt(crossed[0].When).Place, r.Tracks[game.Near2].RunAt(crossed[0].When).Place; !near(float64(p.X), float64(q.X), 1e-5) {
			t.Errorf("they cross at %v s with x = %v and %v, want the same", crossed[0].When, p.X, q.X)
		}
	}
}

func TestCrossingTooClose(t *testing.T) {
	for _, c := range []struct {
		y    float64
		want bool
	}{{-24.9, true}, {-25.1, false}} {
		all := Check(solved(t, cross(c.y)))
		if got := has(all, finding.CloseCrossing); got != c.want {
			t.Errorf("%v ft apart: caution %v, want %v", -22-c.y, got, c.want)
		}
		if c.want {
			f := the(t, all, finding.CloseCrossing)
			if got := arg[game.Player](t, f, "front"); got != game.Near1 || f.Severity != finding.Caution || arg[game.Player](t, f, "other") != game.Near2 {
				t.Errorf("%+v, want near1 in front, a caution", f)
			}
		}
	}
}

// Partners who stand close together, or part, do not cross.
func TestStandingCloseIsNoCrossing(t *testing.T) {
	l := with(func(p *lesson.Play) {
		p.Tracks[game.Near1] = []lesson.Keyframe{{Place: pt(1, -22.9)}, {At: after(0, 2), Place: pt(-6, -22.9)}}
		p.Tracks[game.Near2] = []lesson.Keyframe{{Place: pt(3, -23)}}
		p.Shots = p.Shots[:1]
		p.Tracks[game.Far1] = p.Tracks[game.Far1][:1]
	})
	r := solved(t, l)
	if a, ok := Closest(r, court.Near); ok {
		t.Errorf("Closest = %+v, want none for partners who part", a)
	}
	if got := Crossings(r, court.Near); len(got) > 0 {
		t.Errorf("Crossings = %+v, want none", got)
	}
	if has(Check(r), finding.CloseCrossing) {
		t.Error("a caution for a server who leaves a partner's side")
	}
}

func TestStatedOrder(t *testing.T) {
	for _, c := range []struct {
		front *game.Player
		want  bool
	}{{nil, false}, {new(game.Near1), false}, {new(game.Near2), true}, {new(game.Far1), false}} {
		l := cross(-26)
		l.Plays[0].Front = c.front
		all := Check(solved(t, l))
		if got := has(all, finding.CrossingOrder); got != c.want {
			t.Errorf("stated %v: contradicted %v, want %v", c.front, got, c.want)
		}
		if !c.want {
			continue
		}
		f := the(t, all, finding.CrossingOrder)
		if f.Player != game.Near1 || arg[game.Player](t, f, "stated") != game.Near2 {
			t.Errorf("%+v, want near1 in front and near2 stated", f)
		}
		p, ok := Fix(f, l, 0)
		if !ok || p.Front == nil || *p.Front != game.Near1 {
			t.Errorf("Fix = front %v, %v, want the order as run", p.Front, ok)
		}
	}
}

func TestBackward(t *testing.T) {
	for _, c := range []struct {
		to     court.Point
		facing units.Degrees
		want   bool
	}{{pt(5, 13.9), 180, true}, {pt(5, 13.5), 180, false}, {pt(5, 20), 0, false}} {
		l := with(func(p *lesson.Play) {
			p.Tracks[game.Far2] = []lesson.Keyframe{{Place: pt(5, 7.7), Facing: c.facing}, {At: after(2, 1), Place: c.to, Facing: c.facing}}
		})
		all := Check(solved(t, l))
		if got := has(all, finding.RunsBackward); got != c.want {
			t.Errorf("back to %v facing %v: %v, want %v", c.to, c.facing, got, c.want)
		}
		if c.want {
			if got := arg[units.Feet](t, the(t, all, finding.RunsBackward), "distance"); !near(float64(got), float64(c.to.Y)-7.7, 1e-9) {
				t.Errorf("backwards %v ft, want %v", got, c.to.Y-7.7)
			}
		}
	}
}

// Distance from a point to a straight run, by hand: past it, and beyond its end.
func TestObstacles(t *testing.T) {
	for _, c := range []struct {
		bench court.Point
		want  float64 // ft; 0 is no caution
	}{{pt(7, 15), 2}, {pt(8.1, 15), 0}, {pt(5, 22), 2}, {pt(6, 22), math.Sqrt(5)}} {
		l := with(func(p *lesson.Play) {
			p.Tracks[game.Far2] = []lesson.Keyframe{{Place: pt(5, 10), Facing: 0}, {At: after(2, 1), Place: pt(5, 20), Facing: 0}}
			p.Marks = []lesson.Mark{{Place: pt(5, 12)}, {Kind: lesson.ObstacleMark, Place: c.bench}}
		})
		r := solved(t, l)
		all := Check(r)
		if got := has(all, finding.NearObstacle); got != (c.want > 0) {
			t.Errorf("bench at %v: caution %v, want %v", c.bench, got, c.want > 0)
			continue
		}
		if c.want == 0 {
			continue
		}
		f := the(t, all, finding.NearObstacle)
		if got := arg[units.Feet](t, f, "distance"); !near(float64(got), c.want, 1e-3) || arg[int](t, f, "mark") != 1 {
			t.Errorf("bench at %v: passes at %v ft, want %v", c.bench, got, c.want)
		}
		if got := r.Tracks[game.Far2].RunAt(f.When).Place; got != f.Where {
			t.Errorf("told at %v, the player is at %v", f.Where, got)
		}
	}
}
