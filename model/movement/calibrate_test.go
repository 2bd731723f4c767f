package movement

import (
	"errors"
	"math"
	"strings"
	"testing"

	"homeside/model/units"
	"pgregory.net/rapid"

	_ "homeside/internal/fixedseed"
)

// "15 ft in 1.9 s" with a time constant of 1 s: V = 4.572/(1.9 - (1 - e^-1.9))
// = 4.356075359216 m/s (bc -l).
func TestOneTiming(t *testing.T) {
	p := DefaultPace()
	got, err := p.Calibrated(Timing{units.Feet(15).Metres(), 1.9})
	if err != nil {
		t.Fatalf("Calibrated(15 ft in 1.9 s) error: %v", err)
	}
	if want := 4.356075359216; math.Abs(float64(got.TopSpeed)-want) > 1e-11 {
		t.Errorf("Calibrated(15 ft in 1.9 s).TopSpeed = %v m/s, want %v", got.TopSpeed, want)
	}
	if got.Tau != p.Tau || got.Braking != p.Braking || got.Arm != p.Arm {
		t.Errorf("Calibrated changed more than the top speed: %+v", got)
	}
	if back := got.Through(units.Feet(15).Metres()); math.Abs(float64(back)-1.9) > 1e-12 {
		t.Errorf("calibrated Through(15 ft) = %v s, want 1.9", back)
	}
}

// The published sprint (see TestPublishedSprint) printed to 1 ms gives its own
// speed and time constant back from two of its splits.
func TestTwoTimings(t *testing.T) {
	got, err := DefaultPace().Calibrated(Timing{40, 5.466}, Timing{10, 1.897})
	if err != nil {
		t.Fatalf("Calibrated(two splits) error: %v", err)
	}
	if v, tau := float64(got.TopSpeed), float64(got.Tau); math.Abs(v-8.5911) > 0.005 || math.Abs(tau-0.8113) > 0.002 {
		t.Errorf("Calibrated(10 m in 1.897 s, 40 m in 5.466 s) = %v m/s, %v s, want 8.5911, 0.8113", v, tau)
	}
}

func TestCalibratedGivesThePaceBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := DefaultPace()
		p.TopSpeed = units.MetresPerSecond(rapid.Float64Range(1, 10).Draw(t, "top"))
		p.Tau = units.Seconds(rapid.Float64Range(0.3, 2).Draw(t, "tau"))
		a := units.Metres(rapid.Float64Range(1, 5).Draw(t, "a"))
		b := a * units.Metres(rapid.Float64Range(1.5, 4).Draw(t, "times"))
		got, err := DefaultPace().Calibrated(Timing{a, p.Through(a)}, Timing{b, p.Through(b)})
		if err != nil || math.Abs(float64(got.TopSpeed/p.TopSpeed-1)) > 1e-6 || math.Abs(float64(got.Tau/p.Tau-1)) > 1e-6 {
			t.Errorf("Calibrated(timings of %v m/s, %v s) = %v m/s, %v s, %v", p.TopSpeed, p.Tau, got.TopSpeed, got.Tau, err)
		}
	})
}

func TestImpossibleTimings(t *testing.T) {
	nan := units.Seconds(math.NaN())
	for _, c := range []struct {
		name    string
		timings []Timing
		want    error
		words   string
	}{
		{"none", nil, ErrTimingCount, "one or two"},
		{"three", []Timing{{1, 1}, {2, 2}, {3, 3}}, ErrTimingCount, "one or two"},
		{"no distance", []Timing{{0, 1}}, ErrTimingValue, "above zero"},
		{"no time", []Timing{{4.572, 0}}, ErrTimingValue, "15 ft"},
		{"negative", []Timing{{4.572, -1}}, ErrTimingValue, "above zero"},
		{"not a number", []Timing{{4.572, nan}}, ErrTimingValue, "NaN"},
		{"hour", []Timing{{4.572, 3600}}, ErrTimingValue, "3600"},
		{"too fast", []Timing{{4.572, 0.4}}, ErrTimingTooFast, "nobody"},
		{"too slow", []Timing{{1, 30}}, ErrTimingTooSlow, "stroll"},
		{"same distance", []Timing{{5, 1}, {5, 2}}, ErrTimingOrder, "longer"},
		{"longer sooner", []Timing{{5, 2}, {10, 1.5}}, ErrTimingOrder, "longer"},
		{"fading", []Timing{{5, 1}, {10, 2.2}}, ErrTimingFading, "no faster"},
		{"surging", []Timing{{5, 2}, {30, 3}}, ErrTimingSurge, "too fast"},
	} {
		got, err := DefaultPace().Calibrated(c.timings...)
		if !errors.Is(err, c.want) || !strings.Contains(err.Error(), c.words) {
			t.Errorf("%s: Calibrated(%v) error = %v, want %v with %q", c.name, c.timings, err, c.want, c.words)
		}
		if got != DefaultPace() {
			t.Errorf("%s: Calibrated(%v) = %+v, want the pace as it was", c.name, c.timings, got)
		}
	}
	if _, err := (Pace{}).Calibrated(Timing{4.572, 1.9}); !errors.Is(err, ErrPace) {
		t.Errorf("Pace{}.Calibrated error = %v, want ErrPace", err)
	}
}

func TestSpeedNeeded(t *testing.T) {
	p := DefaultPace()
	rapid.Check(t, func(t *rapid.T) {
		q := p
		q.TopSpeed = units.MetresPerSecond(rapid.Float64Range(1, 12).Draw(t, "top"))
		r := Run{Distance: units.Metres(rapid.Float64Range(1, 15).Draw(t, "d")), Through: rapid.Bool().Draw(t, "through")}
		if got, ok := p.SpeedNeeded(r, q.fastest(r).Duration()); !ok || math.Abs(float64(got-q.TopSpeed)) > 1e-6 {
			t.Errorf("SpeedNeeded(%+v, its time at %v m/s) = %v, %v", r, q.TopSpeed, got, ok)
		}
	})
	if got, ok := p.SpeedNeeded(Run{Distance: 10}, 0.5); ok {
		t.Errorf("SpeedNeeded(10 m in 0.5 s) = %v, want none", got)
	}
	if got, ok := p.SpeedNeeded(Run{Distance: 1}, 1000); !ok || got != leastSpeed {
		t.Errorf("SpeedNeeded(1 m in 1000 s) = %v, %v, want the least", got, ok)
	}
	if _, ok := p.SpeedNeeded(Run{Distance: 1}, units.Seconds(math.NaN())); ok {
		t.Error("SpeedNeeded in a window that is not a number found a speed")
	}
	if _, ok := p.SpeedNeeded(Run{Distance: -1}, 1); ok {
		t.Error("SpeedNeeded for a negative distance found a speed")
	}
}
