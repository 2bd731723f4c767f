package flight

import (
	"math"
	"testing"

	"homeside/model/units"
)

// netAt is the distance from the launch to the net in the check vectors, m.
const netAt = 6.7056

// struck is a ball leaving up degrees above the horizon, netAt before the net. In
// the vectors x is forward and y to the left; here forward is Y and left is -X.
func struck(speed, up, height float64) State {
	s, c := math.Sincos(units.Degrees(up).Radians())
	return State{At: Vec{0, -netAt, height}, Velocity: Vec{0, speed * c, speed * s}}
}

// spun is struck with topspin and sidespin in revolutions a minute.
func spun(speed, up, height float64, top, side units.RPM) State {
	s := struck(speed, up, height)
	s.Spin = TopSpin(s.Velocity, top, side)
	return s
}

// failer is what *testing.T, *testing.B and *rapid.T have in common.
type failer interface {
	Helper()
	Errorf(format string, args ...any)
	Fatalf(format string, args ...any)
}

func mustFly(t failer, m Model, s State) *Path {
	t.Helper()
	p, err := m.Fly(s)
	if err != nil {
		t.Fatalf("Fly(%v): %v", s, err)
	}
	return p
}

// near fails unless got is want to within.
func near(t failer, what string, got, want, within float64) {
	t.Helper()
	if !(math.Abs(got-want) <= within) {
		t.Errorf("%s = %.10f, want %.10f within %g", what, got, want, within)
	}
}

// half is half a unit of the sixth decimal, to which most vectors are given.
const half = 5.01e-7

// Vectors computed by an independent program (fixed steps of 0.1 ms, fourth
// order): ball 0.0243 kg, 0.0742 m, air 1.225 kg/m³.
func TestVectorsOfFlight(t *testing.T) {
	drag := func(cd float64) Model { m := Default(); m.Ball.Drag = cd; return m }
	wind := func(y float64) Model { m := Default(); m.Air.Wind.Y = y; return m }
	high := Default()
	high.Air = Altitude(units.FootInMetres * 5280)
	for _, c := range []struct {
		name  string
		model Model
		from  State
		t, x  float64 // s, m; 0 is not given
	}{
		{"18@10", Default(), struck(18, 10, .8), .807531, 11.531120},
		{"18@10 Cd .30", drag(.30), struck(18, 10, .8), 0, 11.746262},
		{"18@10 Cd .45", drag(.45), struck(18, 10, .8), 0, 10.759735},
		{"15@15", Default(), struck(15, 15, .8), .923977, 10.898828},
		{"14@25", Default(), struck(14, 25, .6), 1.210425, 12.130158},
		{"13@45", Default(), struck(13, 45, .5), 1.741155, 12.225160},
		{"topspin", Default(), spun(18, 10, .8, 1200, 0), .722760, 10.524502},
		{"backspin", Default(), spun(18, 10, .8, -1200, 0), .915911, 12.761995},
		{"tail wind", wind(3), struck(18, 10, .8), 0, 12.345821},
		{"head wind", wind(-3), struck(18, 10, .8), 0, 10.634904},
		{"a mile up", high, struck(18, 10, .8), 0, 11.880646},
	} {
		p := mustFly(t, c.model, c.from)
		if p.Outcome != Landed {
			t.Errorf("%s: outcome %v, want landed", c.name, p.Outcome)
		}
		near(t, c.name+" x", p.End.At.Y+netAt, c.x, half)
		if c.t > 0 {
			near(t, c.name+" t", float64(p.Duration), c.t, half)
		}
		if p.End.At.Z != float64(c.model.Ball.Radius()) {
			t.Errorf("%s: lands at z = %v, want exactly the radius", c.name, p.End.At.Z)
		}
	}
}

func TestVectorsOfOneDrive(t *testing.T) {
	p := mustFly(t, Default(), struck(18, 10, .8))
	near(t, "speed", float64(p.End.Speed()), 12.474441, half)
	near(t, "height at the net", float64(p.Net.State.Height()), 1.151750, half)
	if p.TouchesNet || !p.Net.Reached {
		t.Errorf("18@10: touches %v, reached %v; want a clean passing", p.TouchesNet, p.Net.Reached)
	}
	if p := mustFly(t, Default(), struck(20, 5, .7)); p.Outcome != HitNet {
		t.Errorf("20@5 from 0.7 m: %v, want net", p.Outcome)
	}
	p = mustFly(t, Default(), spun(18, 10, .8, 0, 1200))
	near(t, "sidespin, to the left", -p.End.At.X, .429008, half)
}

// The published window of the third-shot drop down the line is 10.9–13.0 m/s at
// 15.5–22.5° (Steyn et al. 2024, Cd 0.30, air 1.29); its edges land at the edges
// of the far quarter of the non-volley zone, 1.600–2.134 m past the net.
func TestPublishedDropWindow(t *testing.T) {
	m := Default()
	m.Ball.Drag, m.Air.Density = .30, 1.29
	past := func(speed, up, h float64) float64 { return mustFly(t, m, struck(speed, up, h)).End.At.Y }
	near(t, "12@19 lands past the net", past(12, 19, .70), 2.139, 1e-3)
	near(t, "10.9@22.5 lands past the net", past(10.9, 22.5, .70), 1.601, 1e-3)
	for _, v := range []float64{11.5, 12} {
		found := false
		for up := 15.5; up <= 22.5; up += .25 {
			p := mustFly(t, m, struck(v, up, .65))
			found = found || p.Outcome == Landed && p.End.At.Y >= 1.600 && p.End.At.Y <= 2.134
		}
		if !found {
			t.Errorf("%v m/s: no angle in 15.5–22.5 degrees lands in the far quarter", v)
		}
	}
}

func TestSameFlightTwice(t *testing.T) {
	m := Default()
	if a, b := mustFly(t, m, drive()), mustFly(t, m, drive()); a.End != b.End || a.Apex != b.Apex {
		t.Errorf("two flights of one launch end at %v and %v", a.End, b.End)
	}
}
