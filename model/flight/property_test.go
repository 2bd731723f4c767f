package flight

import (
	"math"
	"testing"

	"homeside/model/units"

	"pgregory.net/rapid"
)

// anyLaunch is a launch with spin up to the lift's cap and beyond.
func anyLaunch(t *rapid.T) State {
	v := func(name string, lo, hi float64) float64 { return rapid.Float64Range(lo, hi).Draw(t, name) }
	s := State{At: Vec{v("x", -4, 4), v("y", -9, 9), v("z", .1, 3)}, Velocity: Vec{v("vx", -8, 8), v("vy", -25, 25), v("vz", -5, 15)}}
	s.Spin = TopSpin(s.Velocity, units.RPM(v("top", -1500, 1500)), units.RPM(v("side", -1000, 1000)))
	return s
}

func TestEnergyNeverGrows(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := anyLaunch(t)
		s.Spin = Vec{}
		p := mustFly(t, Default(), s)
		last := math.Inf(1)
		for i := range 50 {
			s := p.At(p.Duration * units.Seconds(i) / 49)
			e := s.Velocity.squared()/2 + units.Gravity*s.At.Z
			if e > last+1e-7 {
				t.Fatalf("energy grows from %v to %v J/kg at %v of %v s", last, e, p.Duration*units.Seconds(i)/49, p.Duration)
			}
			last = e
		}
	})
}

// Halving the tolerance moves the landing by less than 1e-6 m while the lift's cap
// is not at work, and by less than 1e-5 m otherwise.
func TestHalvingTheTolerance(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s, m := anyLaunch(t), Default()
		p, most := mustFly(t, m, s), 1e-6
		f, slowest := m.forces(s.Spin), p.Apex.State.Velocity.Length()
		for i := range 50 {
			slowest = min(slowest, p.At(p.Duration*units.Seconds(i)/49).Velocity.Length())
		}
		if f.capped*slowest < f.lift {
			most = 1e-5
		}
		m.Tolerance = DefaultTolerance / 2
		q := mustFly(t, m, s)
		if d := q.End.At.Sub(p.End.At).Length(); p.Outcome == Landed && q.Outcome == Landed && d > most {
			t.Fatalf("half the tolerance moves the landing by %v m, want at most %v", d, most)
		}
	})
}

// A launch seen in the mirror x = 0 flies the mirrored path: spin is an axial
// vector, so its parts in the mirror's plane turn round.
func TestMirroredSpin(t *testing.T) {
	mirror := func(s State) State {
		return State{Vec{-s.At.X, s.At.Y, s.At.Z}, Vec{-s.Velocity.X, s.Velocity.Y, s.Velocity.Z}, Vec{s.Spin.X, -s.Spin.Y, -s.Spin.Z}}
	}
	rapid.Check(t, func(t *rapid.T) {
		s, m := anyLaunch(t), Default()
		p, q := mustFly(t, m, s), mustFly(t, m, mirror(s))
		if d := mirror(q.End).At.Sub(p.End.At).Length(); d > 1e-9 || p.Outcome != q.Outcome {
			t.Fatalf("mirrored flight ends %v m from the mirrored end, %v and %v", d, p.Outcome, q.Outcome)
		}
		if a, b := mirror(m.Bounce(q.End)), m.Bounce(p.End); a.Velocity.Sub(b.Velocity).Length() > 1e-9 {
			t.Fatalf("mirrored bounce %v, want %v", a.Velocity, b.Velocity)
		}
	})
}

// The court has no preferred team: a launch turned half round flies the same.
func TestFarTeam(t *testing.T) {
	half := func(v Vec) Vec { return Vec{-v.X, -v.Y, v.Z} }
	rapid.Check(t, func(t *rapid.T) {
		s := anyLaunch(t)
		p := mustFly(t, Default(), s)
		q := mustFly(t, Default(), State{half(s.At), half(s.Velocity), half(s.Spin)})
		if d := half(q.End.At).Sub(p.End.At).Length(); d > 1e-9 || p.Outcome != q.Outcome || p.Net.Reached != q.Net.Reached {
			t.Fatalf("turned flight ends %v m away, %v and %v", d, p.Outcome, q.Outcome)
		}
	})
}

func TestAtIsContinuousAndHeld(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := mustFly(t, Default(), anyLaunch(t))
		if a, b := p.At(-1), p.At(0); a != b || a != p.Start {
			t.Fatalf("At(-1) = %v, At(0) = %v, want the start %v", a, b, p.Start)
		}
		if a := p.At(p.Duration + 1); a != p.End || p.At(p.Duration) != p.End && p.Duration > 0 {
			t.Fatalf("At(beyond) = %v, want the end %v", a, p.End)
		}
		at := p.Duration * units.Seconds(rapid.Float64Range(0, 1).Draw(t, "share"))
		const dt = 1e-6
		a, b := p.At(at), p.At(at+dt)
		if at+dt < p.Duration && b.At.Sub(a.At.Add(a.Velocity.Times(dt))).Length() > 1e-9 {
			t.Fatalf("At(%v) moves from %v to %v, its velocity is %v", at, a.At, b.At, a.Velocity)
		}
		if p.Apex.State.At.Z < a.At.Z-1e-9 {
			t.Fatalf("apex %v, but %v at %v", p.Apex.State.At.Z, a.At.Z, at)
		}
	})
}
