package movement

import (
	"errors"
	"math"
	"testing"

	"homeside/model/units"
	"pgregory.net/rapid"
)

func drawPace(t *rapid.T) Pace {
	p := DefaultPace()
	p.TopSpeed = units.MetresPerSecond(rapid.Float64Range(leastSpeed, mostSpeed).Draw(t, "top"))
	p.Tau = units.Seconds(rapid.Float64Range(leastTau, mostTau).Draw(t, "tau"))
	p.Braking = rapid.Float64Range(0.1, 20).Draw(t, "brake")
	return p
}

func drawRun(t *rapid.T) Run {
	r := Run{
		Distance: units.Metres(rapid.OneOf(rapid.Just(0.0), rapid.Float64Range(1e-6, 50)).Draw(t, "distance")),
		Start:    units.MetresPerSecond(rapid.Float64Range(0, 20).Draw(t, "start")),
		Through:  rapid.Bool().Draw(t, "through"),
	}
	if rapid.Bool().Draw(t, "capped") {
		r.Cap = units.MetresPerSecond(rapid.Float64Range(leastCap, 10).Draw(t, "cap"))
	}
	if rapid.Bool().Draw(t, "rest") {
		r.Start = 0
	}
	return r
}

// A profile starts at 0, ends exactly at its distance, never goes back, and
// its speed is never negative, never jumps, and is the slope of its distance.
func TestProfileIsARun(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, r := drawPace(t), drawRun(t)
		run, err := p.Fastest(r)
		if err != nil {
			t.Fatalf("Fastest(%+v) error: %v", r, err)
		}
		if rapid.Bool().Draw(t, "stretched") {
			run, _ = run.Fill(run.Duration() * units.Seconds(rapid.Float64Range(1, 4).Draw(t, "stretch")))
		}
		end := run.Duration()
		if d, v := run.At(end); d != r.Distance || v != run.Arrival() {
			t.Fatalf("At(end) = %v m, %v m/s, want %v, %v", d, v, r.Distance, run.Arrival())
		}
		if !r.Through && run.Arrival() > 1e-9 {
			t.Fatalf("Arrival() = %v m/s, want to stand", run.Arrival())
		}
		checkSteps(t, p, run)
	})
}

// checkSteps walks a profile in small steps.
func checkSteps(t *rapid.T, p Pace, run Profile) {
	const steps = 400
	h := float64(run.Duration()) / steps
	hardest := max(p.Braking, float64(p.TopSpeed)/float64(p.Tau))
	if d := float64(run.Distance()); run.Outcome == BrakesTooHard && d > 0 {
		v := run.phases[0].v
		hardest = max(hardest, v*v/(2*d))
	}
	d0, v0 := run.At(0)
	if d0 != 0 {
		t.Fatalf("At(0) = %v m, want 0", d0)
	}
	for i := 1; i <= steps; i++ {
		d, v := run.At(units.Seconds(h * float64(i)))
		slack := 1e-9 * max(1, float64(run.Peak()), float64(run.Distance()))
		switch jump := math.Abs(float64(v - v0)); {
		case math.IsNaN(float64(d)) || math.IsNaN(float64(v)):
			t.Fatalf("At(step %d) = %v, %v, want numbers", i, d, v)
		case d < d0 || d > run.Distance() || v < 0 || float64(v) > float64(run.Peak())+slack:
			t.Fatalf("At(step %d) = %v m, %v m/s after %v m, want forward, up to %v m at %v m/s", i, d, v, d0, run.Distance(), run.Peak())
		case jump > hardest*h+slack:
			t.Fatalf("speed jumps by %v m/s in %v s at step %d, want at most %v m/s2", jump, h, i, hardest)
		case math.Abs(float64(d-d0)-h*float64(v+v0)/2) > hardest*h*h+slack:
			t.Fatalf("step %d covers %v m at %v to %v m/s in %v s", i, d-d0, v0, v, h)
		}
		d0, v0 = d, v
	}
}

// A faster pace, a quicker start, better brakes, a looser cap and leave to run
// through never arrive later.
func TestFasterNeverArrivesLater(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, r := drawPace(t), drawRun(t)
		slow := p.fastest(r).Duration()
		q, s := p, r
		switch rapid.IntRange(0, 4).Draw(t, "better") {
		case 0:
			q.TopSpeed += units.MetresPerSecond(rapid.Float64Range(0, 5).Draw(t, "more"))
		case 1:
			q.Tau *= units.Seconds(rapid.Float64Range(0.1, 1).Draw(t, "less"))
		case 2:
			if p.fastest(Run{r.Distance, r.Start, r.Cap, true}).Outcome == StartsTooFast {
				s.Start, r.Start = 0, 0 // better brakes would obey the cap sooner
				slow = p.fastest(r).Duration()
			}
			q.Braking *= rapid.Float64Range(1, 5).Draw(t, "more")
		case 3:
			s.Cap = 0
		case 4:
			s.Through = true
		}
		if fast := q.fastest(s).Duration(); float64(fast-slow) > 1e-9*max(1, float64(slow)) {
			t.Errorf("%+v %+v takes %v s, but %+v %+v takes %v s, want no longer", p, r, slow, q, s, fast)
		}
	})
}

func TestFillArrivesOnTimeOrLateByTheDifference(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		run := drawPace(t).fastest(drawRun(t))
		window := units.Seconds(rapid.Float64Range(0, 20).Draw(t, "window"))
		got, late := run.Fill(window)
		if late < 0 || (late > 0) != (run.Duration() > window) || math.Abs(float64(got.Duration()-late-window)) > 1e-12*max(1, float64(run.Duration())) {
			t.Errorf("Fill(%v) of %v s = %v s, late %v, want it to arrive at the window's end plus late", window, run.Duration(), got.Duration(), late)
		}
	})
}

// Through, DistanceIn and Fastest agree.
func TestThroughInverts(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawPace(t)
		d := units.Metres(rapid.Float64Range(1e-9, 50).Draw(t, "d"))
		at := p.Through(d)
		if got := p.DistanceIn(at); math.Abs(float64(got-d)) > 1e-12*float64(d)+1e-15 {
			t.Errorf("DistanceIn(Through(%v)) = %v m", d, got)
		}
		if got := p.fastest(Run{Distance: d, Through: true}).Duration(); got != at {
			t.Errorf("Fastest(%v through) = %v s, want Through = %v", d, got, at)
		}
	})
}

func TestEdgesOfThrough(t *testing.T) {
	p, nan, inf := DefaultPace(), math.NaN(), math.Inf(1)
	for _, c := range []struct {
		p    Pace
		d    float64
		want float64
	}{{p, 0, 0}, {p, -1, 0}, {p, nan, inf}, {p, inf, inf}, {Pace{}, 1, inf}, {Pace{TopSpeed: -1, Tau: 1}, 1, inf}, {Pace{TopSpeed: units.MetresPerSecond(nan), Tau: 1}, 1, inf}} {
		if got := float64(c.p.Through(units.Metres(c.d))); got != c.want {
			t.Errorf("%v m/s: Through(%v) = %v, want %v", c.p.TopSpeed, c.d, got, c.want)
		}
	}
	for _, c := range []struct{ t, want float64 }{{0, 0}, {-1, 0}, {nan, 0}, {inf, inf}} {
		if got := float64(p.DistanceIn(units.Seconds(c.t))); got != c.want {
			t.Errorf("DistanceIn(%v) = %v, want %v", c.t, got, c.want)
		}
	}
	if got := (Pace{}).DistanceIn(1); got != 0 {
		t.Errorf("Pace{}.DistanceIn(1) = %v, want 0", got)
	}
}

// No input makes a number that is none: refused by name, or answered.
func TestNothingStrangeGetsOut(t *testing.T) {
	strange := []float64{0, 5e-324, 1e-308, 1e-100, 1e-9, 0.05, 1, 15, 20, 1000, 1e300, -1, math.Inf(1), math.Inf(-1), math.NaN()}
	for _, d := range strange {
		for _, v := range strange {
			for _, c := range strange {
				for _, through := range []bool{false, true} {
					r := Run{units.Metres(d), units.MetresPerSecond(v), units.MetresPerSecond(c), through}
					run, err := DefaultPace().Fastest(r)
					if err != nil {
						if !errors.Is(err, ErrRun) || r.Validate() == nil {
							t.Errorf("Fastest(%+v) error: %v, want ErrRun", r, err)
						}
						continue
					}
					checkNumbers(t, r, run)
				}
			}
		}
	}
	if _, err := (Pace{}).Fastest(Run{}); !errors.Is(err, ErrPace) {
		t.Errorf("Pace{}.Fastest error = %v, want ErrPace", err)
	}
}

func checkNumbers(t *testing.T, r Run, run Profile) {
	t.Helper()
	numbers := []float64{float64(run.Duration()), float64(run.Peak()), float64(run.Arrival())}
	for _, at := range []units.Seconds{-1, 0, run.Duration() / 2, run.Duration(), 1e300, units.Seconds(math.NaN()), units.Seconds(math.Inf(1))} {
		d, v := run.At(at)
		numbers = append(numbers, float64(d), float64(v))
	}
	for _, x := range numbers {
		if math.IsNaN(x) || math.IsInf(x, 0) || x < 0 {
			t.Errorf("Fastest(%+v) gives %v among %v, want ordinary numbers", r, x, numbers)
			return
		}
	}
}
