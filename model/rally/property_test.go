package rally

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"homeside/model/court"
	"homeside/model/flight"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
	"homeside/model/units"
)

// randomRally solves any play that a lesson may hold, sensible or not.
func randomRally(t *rapid.T) *Rally {
	l := lesson.Lesson{Teams: teams(), Plays: []lesson.Play{lessontest.Plays().Draw(t, "play")}}
	r, err := Solve(l, 0)
	if err != nil {
		t.Fatalf("Solve of a sound play: %v", err)
	}
	return r
}

func moment(t *rapid.T, r *Rally) units.Seconds {
	return units.Seconds(rapid.Float64Range(float64(r.From), float64(r.To)).Draw(t, "moment"))
}

func TestFramesAreFinite(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := randomRally(t)
		at := rapid.OneOf(rapid.Float64(), rapid.SampledFrom([]float64{math.NaN(), math.Inf(1), math.Inf(-1), float64(r.Stopped())}), rapid.Just(float64(moment(t, r)))).Draw(t, "at")
		f := r.At(units.Seconds(at))
		if !(f.T >= r.From && f.T <= r.To) {
			t.Fatalf("At(%v).T = %v, want within %v to %v", at, f.T, r.From, r.To)
		}
		if !f.Ball.At.Finite() || !f.Ball.Velocity.Finite() || !f.Ball.Spin.Finite() || f.Ball.At.Z < float64(r.Model.Ball.Radius())-1e-9 {
			t.Fatalf("At(%v): ball %+v, want numbers and above the court", at, f.Ball)
		}
		for id, p := range f.Players {
			ok := p.Drawn.Place.Finite() && finite(units.Seconds(p.Drawn.Speed)) && p.Drawn.Speed >= 0 && p.Feet[0].Finite() && p.Feet[1].Finite()
			if !ok || !(p.Drawn.Facing >= 0 && p.Drawn.Facing < 360) {
				t.Fatalf("At(%v): %v is %+v, want numbers and a facing in [0, 360)", at, game.Player(id), p)
			}
		}
		for _, e := range r.Events {
			if !finite(e.At) || e.At < 0 || e.Reached && e.At > r.To { // a volleyed ball may be planned to bounce later
				t.Fatalf("event %v at %v, want within 0 to %v", e.Name, e.At, r.To)
			}
		}
	})
}

// fastestBall is faster than any ball a rally solves: launches end at 30 m/s, a
// fall from a lesson's 100 ft at 24.
const fastestBall = 60 // m/s

// The ball jumps nowhere after the serve; a player only where a run has no time.
func TestNothingJumps(t *testing.T) {
	const dt = 0.001
	rapid.Check(t, func(t *rapid.T) {
		r := randomRally(t)
		at := moment(t, r)
		if rapid.Bool().Draw(t, "at an event") {
			at = rapid.SampledFrom(r.Events).Draw(t, "event").At - dt/2
		}
		a, b := r.At(at), r.At(at+dt)
		if way := b.Ball.At.Sub(a.Ball.At).Length(); at >= 0 && way > fastestBall*dt {
			t.Fatalf("from %v s to %v s the ball goes %v m, from %v to %v", a.T, b.T, way, a.Ball.At, b.Ball.At)
		}
		for _, id := range game.Players {
			got, most := a.Players[id].Drawn.Place.Distance(b.Players[id].Drawn.Place), 1e-9+farthest(r.Tracks[id], a.T, b.T)
			if got > most {
				t.Fatalf("from %v s to %v s %v goes %v ft, at most %v", a.T, b.T, id, got, most)
			}
		}
	})
}

// farthest is how far a track's player can get between two moments: minimum jerk
// goes at most at 1.875 times the mean speed.
func farthest(track Track, from, to units.Seconds) (most units.Feet) {
	for _, run := range track.Runs {
		switch {
		case run.To < from || run.From > to:
		case run.To == run.From:
			most += run.Way.Length()
		default:
			most += min(1, 1.875*units.Feet((to-from)/(run.To-run.From))) * run.Way.Length()
		}
	}
	return most * 2 // within a chord of a hairpin the speed is not even
}

// At an event the ball is where the event says.
func TestBallAtEvents(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := randomRally(t)
		for i, s := range r.Strokes {
			if last := i == len(r.Strokes)-1; !r.Reached(s.At) || !last && r.Strokes[i+1].At == s.At {
				continue
			}
			if got := r.At(s.At).Ball.At; got.Sub(s.From).Length() > 1e-9 {
				t.Fatalf("%s.contact: ball at %v, want %v", lesson.ShotName(i), got, s.From)
			}
		}
		for _, e := range r.Events {
			ball := r.At(e.At).Ball.At
			switch {
			case !e.Reached:
			case e.Name.Moment == lesson.Net && math.Abs(ball.Y) > 1e-6:
				t.Fatalf("%v: ball at %v, want in the net's plane", e.Name, ball)
			case e.Name.Moment == lesson.Bounce && r.Strokes[e.Name.Shot].Planned.Outcome == flight.Landed && math.Abs(ball.Z-float64(r.Model.Ball.Radius())) > 1e-6:
				t.Fatalf("%v: ball %v m high, want on the court", e.Name, ball.Z)
			}
		}
	})
}

// Nobody meets a ball before the net that comes from beyond it.
func TestStrokesFollowOneAnother(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := randomRally(t)
		for i := 1; i < len(r.Strokes); i++ {
			a, b := r.Strokes[i-1], r.Strokes[i]
			if b.At != a.At+a.Met || b.At < a.At {
				t.Fatalf("%s is struck at %v, want %v after %v", lesson.ShotName(i), b.At, a.Met, a.At)
			}
			if a.Volleyed != (a.Met < a.Planned.Duration) {
				t.Fatalf("%s is met after %v of %v s, volleyed: %v", lesson.ShotName(i-1), a.Met, a.Planned.Duration, a.Volleyed)
			}
			if a.Volleyed && a.Met <= a.Planned.Net.T {
				t.Fatalf("%s is volleyed after %v s, before the net after %v s", lesson.ShotName(i-1), a.Met, a.Planned.Net.T)
			}
		}
	})
}

// sensible draws a play of ordinary shots.
func sensible(t *rapid.T) lesson.Play {
	feet := func(label string, lo, hi float64) units.Feet {
		return units.Feet(rapid.Float64Range(lo, hi).Draw(t, label))
	}
	p := play()
	by := game.Player(rapid.IntRange(0, 3).Draw(t, "server"))
	for range rapid.IntRange(1, 5).Draw(t, "shots") {
		shot := lesson.Shot{
			By: by, Aim: court.Pt(feet("x", -9, 9), -by.Team().Sign()*feet("y", 4, 20)), Intent: lesson.Apex(feet("apex", 9, 15)),
			Spin: units.RPM(feet("spin", -600, 600)), Side: units.RPM(feet("side", -300, 300)),
			Meet: lesson.Meet{How: lesson.MeetHow(rapid.IntRange(0, 3).Draw(t, "meet")), Height: feet("height", 0.5, 4)},
		}
		p.Shots = append(p.Shots, shot)
		by ^= 2 | game.Player(rapid.IntRange(0, 1).Draw(t, "partner"))
	}
	server := p.Shots[0].By
	p.Tracks[server] = []lesson.Keyframe{{Place: court.Pt(feet("x", -9, 9), 23*server.Team().Sign()), Facing: server.Team().Facing()}}
	p.Tracks[game.Far2] = append(p.Tracks[game.Far2], lesson.Keyframe{
		At: lesson.At(lesson.TheEnd), Place: court.Pt(feet("x", -12, 12), feet("y", 5, 30)), Via: new(court.Pt(3, 18)), Facing: 200,
	})
	return p
}

// mirrored is a play seen from the other end.
func mirrored(p lesson.Play) lesson.Play {
	out := p
	out.Shots = nil
	for _, s := range p.Shots {
		s.By, s.Aim = s.By^2, s.Aim.Mirror()
		out.Shots = append(out.Shots, s)
	}
	for id, track := range p.Tracks {
		out.Tracks[id^2] = nil
		for _, k := range track {
			k.Place, k.Facing = k.Place.Mirror(), k.Facing+180
			if k.Via != nil {
				k.Via = new(k.Via.Mirror())
			}
			out.Tracks[id^2] = append(out.Tracks[id^2], k)
		}
	}
	return out
}

// The court turned half round gives the same rally turned half round.
func TestMirror(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := sensible(t)
		l := lesson.Lesson{Teams: teams(), Plays: []lesson.Play{p, mirrored(p)}}
		if bad := lesson.Validate(l); bad != nil {
			t.Fatalf("the test's own lesson: %v", bad)
		}
		a, err := Solve(l, 0)
		b, err2 := Solve(l, 1)
		if err != nil || err2 != nil || len(a.Events) != len(b.Events) {
			t.Fatalf("Solve: %v, %v, %d and %d events", err, err2, len(a.Events), len(b.Events))
		}
		for i, e := range a.Events {
			if f := b.Events[i]; e.Name != f.Name || e.Reached != f.Reached || !near(float64(e.At), float64(f.At), 1e-6) {
				t.Fatalf("event %+v is mirrored as %+v", e, f)
			}
		}
		at := moment(t, a)
		f, m := a.At(at), b.At(at)
		if want := (flight.Vec{X: -f.Ball.At.X, Y: -f.Ball.At.Y, Z: f.Ball.At.Z}); m.Ball.At.Sub(want).Length() > 1e-4 {
			t.Fatalf("At(%v): mirrored ball at %v, want %v", at, m.Ball.At, want)
		}
		for _, id := range game.Players {
			got, want := m.Players[id^2].Drawn.Place, f.Players[id].Drawn.Place.Mirror()
			if got.Distance(want) > 1e-3 {
				t.Fatalf("At(%v): mirrored %v at %v, want %v", at, id, got, want)
			}
		}
	})
}
