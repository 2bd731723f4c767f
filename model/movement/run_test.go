package movement

import (
	"errors"
	"math"
	"strings"
	"testing"

	"homeside/model/units"
)

func TestRunValidate(t *testing.T) {
	for _, c := range []struct {
		r    Run
		name string // empty: sound
	}{
		{Run{}, ""}, {Run{Distance: 1000, Start: 20, Cap: 0.05, Through: true}, ""},
		{Run{Distance: -1}, "distance"}, {Run{Distance: units.Metres(math.NaN())}, "distance"}, {Run{Distance: 1001}, "distance"},
		{Run{Start: -1}, "starting speed"}, {Run{Start: 21}, "starting speed"},
		{Run{Cap: -1}, "cap"}, {Run{Cap: 0.01}, "cap"}, {Run{Cap: units.MetresPerSecond(math.NaN())}, "cap"},
	} {
		err := c.r.Validate()
		if c.name == "" && err != nil {
			t.Errorf("%+v.Validate() = %v, want nil", c.r, err)
		}
		if c.name != "" && (!errors.Is(err, ErrRun) || !strings.Contains(err.Error(), c.name)) {
			t.Errorf("%+v.Validate() = %v, want an ErrRun that names the %s", c.r, err, c.name)
		}
	}
}

// sqrt(3 m/s2 x radius): 3 m/s at 3 m.
func TestBendCap(t *testing.T) {
	inf := units.Metres(math.Inf(1))
	for _, c := range []struct {
		radius units.Metres
		want   float64
	}{{3, 3}, {12, 6}, {inf, 0}, {0.1, math.Sqrt(0.3)}, {0, math.Sqrt(0.3)}, {-2, math.Sqrt(0.3)}, {units.Metres(math.NaN()), math.Sqrt(0.3)}} {
		got := BendCap(c.radius)
		if math.Abs(float64(got)-c.want) > 1e-12 {
			t.Errorf("BendCap(%v m) = %v m/s, want %v", c.radius, got, c.want)
		}
		if err := (Run{Cap: got}).Validate(); err != nil {
			t.Errorf("BendCap(%v m) = %v m/s is no cap for a run: %v", c.radius, got, err)
		}
	}
}

func TestCarry(t *testing.T) {
	for _, c := range []struct {
		v    units.MetresPerSecond
		turn units.Degrees
		want float64
	}{{4, 0, 4}, {4, 60, 2}, {4, -60, 2}, {4, 90, 0}, {4, 120, 0}, {4, 180, 0}, {4, 360, 4}, {0, 0, 0}, {-1, 0, 0}, {units.MetresPerSecond(math.NaN()), 0, 0}, {4, units.Degrees(math.Inf(1)), 0}, {units.MetresPerSecond(math.Inf(1)), 0, 0}} {
		if got := Carry(c.v, c.turn); math.Abs(float64(got)-c.want) > 1e-12 {
			t.Errorf("Carry(%v, %v) = %v m/s, want %v", c.v, c.turn, got, c.want)
		}
	}
}

func TestWalkThrough(t *testing.T) {
	nan := units.MetresPerSecond(math.NaN())
	for _, c := range []struct {
		walk  units.MetresPerSecond
		peaks []units.MetresPerSecond
		want  float64
	}{{1.3, []units.MetresPerSecond{2.6, 5.2, 0}, 4}, {0, []units.MetresPerSecond{2.6}, 2}, {nan, []units.MetresPerSecond{2.6}, 2}, {2, []units.MetresPerSecond{1, nan}, 1}, {1.3, nil, 1}} {
		if got := WalkThrough(c.walk, c.peaks...); math.Abs(got-c.want) > 1e-12 {
			t.Errorf("WalkThrough(%v, %v) = %v, want %v", c.walk, c.peaks, got, c.want)
		}
	}
}

func TestSlowed(t *testing.T) {
	run := mustFastest(t, DefaultPace(), Run{Distance: 6})
	slow := run.Slowed(WalkThrough(WalkingSpeed, run.Peak()))
	if got := slow.Peak(); math.Abs(float64(got-WalkingSpeed)) > 1e-12 {
		t.Errorf("walked Peak() = %v m/s, want %v", got, WalkingSpeed)
	}
	if got := slow.Slowed(2).Duration(); math.Abs(float64(got-2*slow.Duration())) > 1e-12 {
		t.Errorf("Slowed(2) of a slowed run = %v s, want twice %v", got, slow.Duration())
	}
	for _, factor := range []float64{1, 0, -3, math.NaN()} {
		if got := run.Slowed(factor); got != run {
			t.Errorf("Slowed(%v) = %v s, want %v as it was", factor, got.Duration(), run.Duration())
		}
	}
}
