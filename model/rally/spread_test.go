package rally

import (
	"math"
	"testing"

	"homeside/model/court"
	"homeside/model/flight"
	"homeside/model/game"
	"homeside/model/lesson"
)

// oneShot is a play of one serve straight down the middle.
func oneShot(t *testing.T, m flight.Model, in lesson.Intent) *Rally {
	t.Helper()
	p := lesson.Play{Shots: []lesson.Shot{{
		By: game.Near1, Aim: court.Pt(0, 16), Intent: in,
		From: &lesson.Place{Point: court.Pt(0, -22), Height: 2.6},
	}}}
	for _, id := range game.Players {
		p.Tracks[id] = []lesson.Keyframe{{}}
	}
	r, err := SolveWith(lesson.Lesson{Plays: []lesson.Play{p}}, 0, m)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

// In a vacuum the landing of a ball that leaves at speed v and elevation a from
// height h over the landing is at R = v cos a (v sin a + sqrt(v² sin² a + 2 g h)) / g
// (any mechanics text). For small errors the scatter along the way is the root of
// the sum of (dR/dv s_v)² and (dR/da s_a)², across it R s_a; the ellipse's half
// axes are 2.4477 times these (chi-square, two degrees of freedom, 95 %).
func TestSpreadOfSmallErrors(t *testing.T) {
	m := flight.Default()
	m.Air.Density = 0
	r := oneShot(t, m, lesson.Apex(9))
	launch := r.Strokes[0].Planned.At(0)
	v, a := launch.Velocity.Length(), math.Asin(launch.Velocity.Z/launch.Velocity.Length())
	h := launch.At.Z - float64(m.Ball.Radius())
	reach := func(v, a float64) float64 {
		s := v * math.Sin(a)
		return v * math.Cos(a) * (s + math.Sqrt(s*s+2*9.80665*h)) / 9.80665
	}
	e := lesson.AimError{Speed: 0.05, Angle: 0.2}
	const d = 1e-6
	along := math.Hypot((reach(v+d, a)-reach(v-d, a))/(2*d)*0.05, (reach(v, a+d)-reach(v, a-d))/(2*d)*e.Angle.Radians())
	across := reach(v, a) * e.Angle.Radians()

	got, ok := r.SpreadOf(0, e)
	if !ok || got.InNet > 0 {
		t.Fatalf("SpreadOf = %+v, %v, want all flights to land", got, ok)
	}
	near := func(what string, got, want float64) {
		if math.Abs(got-want) > 0.06*want { // 2,000 draws tell a deviation to about 1.6 %
			t.Errorf("%s = %v m, want %v", what, got, want)
		}
	}
	near("half the long axis", float64(got.Long.Metres()), 2.4477*math.Max(along, across))
	near("half the short axis", float64(got.Short.Metres()), 2.4477*math.Min(along, across))
	if got.Centre.Distance(court.Pt(0, 16)) > 0.1 {
		t.Errorf("centre = %v, want near the aim (0, 16)", got.Centre)
	}
	along90 := math.Abs(math.Remainder(float64(got.Direction), 180))
	if along > across && along90 > 10 || along < across && along90 < 80 {
		t.Errorf("long axis at %v degrees, want along the larger scatter (along %v m, across %v m)", got.Direction, along, across)
	}
}

func TestSpreadIsTheSameEveryTime(t *testing.T) {
	r := oneShot(t, flight.Default(), lesson.Apex(8))
	e := lesson.AimError{Speed: 0.5, Angle: 1.5}
	a, _ := r.SpreadOf(0, e)
	b, _ := r.SpreadOf(0, e)
	if a != b {
		t.Errorf("two simulations of one shot differ: %+v, %+v", a, b)
	}
}

func TestSpreadCountsTheNet(t *testing.T) {
	r := oneShot(t, flight.Default(), lesson.NetClear(0.2))
	got, ok := r.SpreadOf(0, lesson.AimError{Speed: 1, Angle: 2})
	if !ok || got.InNet < 100 || got.InNet > 1900 {
		t.Errorf("a shot just over the net that scatters: %+v, %v, want some into the net and some not", got, ok)
	}
	if _, ok := r.SpreadOf(0, lesson.AimError{Speed: 0, Angle: 0}); !ok {
		t.Error("a shot without scatter has no ellipse, want a point")
	}
}

func BenchmarkSpread(b *testing.B) {
	p := lesson.Play{Shots: []lesson.Shot{{By: game.Near1, Aim: court.Pt(0, 16), Intent: lesson.Apex(8)}}}
	for _, id := range game.Players {
		p.Tracks[id] = []lesson.Keyframe{{Place: court.Pt(0, -23)}}
	}
	r, err := Solve(lesson.Lesson{Plays: []lesson.Play{p}}, 0)
	if err != nil {
		b.Fatal(err)
	}
	for b.Loop() {
		r.SpreadOf(0, lesson.AimError{Speed: 0.5, Angle: 1.5})
	}
}
