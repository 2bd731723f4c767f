package flight

import (
	"math"
	"testing"

	"homeside/model/units"
)

// netAt is the distance from the launch to the net in the check vectors, m.
const netAt = 6.7056

// struck is a ball leaving up degrees above the horizon, netAt before the net.
func struck(speed, up, height float64) State {
	s, c := math.Sincos(units.Degrees(up).Radians())
	return State{At: Vec{0, -netAt, height}, Velocity: Vec{0, speed * c, speed * s}}
}

func mustFly(t testing.TB, m Model, s State) *Path {
	t.Helper()
	p, err := m.Fly(s)
	if err != nil {
		t.Fatalf("Fly(%v): %v", s, err)
	}
	return p
}

func near(t testing.TB, what string, got, want, within float64) {
	t.Helper()
	if !(math.Abs(got-want) <= within) {
		t.Errorf("%s = %.10f, want %.10f within %g", what, got, want, within)
	}
}

// Vectors computed by an independent program (RK4 at 0.1 ms).
func TestOrdinaryDrive(t *testing.T) {
	p := mustFly(t, Default(), struck(18, 10, .8))
	near(t, "time", float64(p.Duration), .807531, 5e-7)
	near(t, "x", p.End.At.Y+netAt, 11.531120, 5e-7)
	near(t, "speed", float64(p.End.Speed()), 12.474441, 5e-7)
	near(t, "height at net", p.Net.State.At.Z, 1.151750, 5e-7)
}

func TestSolvedShotsLand(t *testing.T) {
	m := Default()
	for _, k := range []struct {
		kind  Kind
		value float64
	}{{Apex, 2.7}, {Time, 1.5}, {NetClear, .5}, {Speed, 18}} {
		in := Intent{From: Vec{1, 7, .8}, AimX: -2, AimY: -6, Kind: k.kind, Value: k.value, Spin: 600, Side: 300}
		s := m.Solve(in)
		if s.Low == nil {
			t.Fatalf("Solve(%v %v): %v", k.kind, k.value, s.Reason)
		}
		for _, l := range s.All() {
			near(t, k.kind.String()+" x", l.Path.End.At.X, -2, 1e-6)
			near(t, k.kind.String()+" y", l.Path.End.At.Y, -6, 1e-6)
		}
	}
}
