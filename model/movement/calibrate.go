package movement

import (
	"errors"
	"fmt"
	"math"

	"homeside/model/units"
)

// What can be wrong with a stopwatch's timings.
var (
	// ErrTimingCount says that there are none or more than two.
	ErrTimingCount = errors.New("give one or two timings")
	// ErrTimingValue says that a distance or a time is not above zero, or too large.
	ErrTimingValue = errors.New("a distance and a time must be above zero and within reason")
	// ErrTimingTooFast says that no person is that fast.
	ErrTimingTooFast = errors.New("nobody runs that fast: check the distance, and start the watch at the first step")
	// ErrTimingTooSlow says that the time is that of someone who hardly moves.
	ErrTimingTooSlow = errors.New("that is slower than a stroll: check the distance and the time")
	// ErrTimingOrder says that the longer distance did not take longer.
	ErrTimingOrder = errors.New("the longer distance must take longer, and the two must differ")
	// ErrTimingFading says that the second part was not run faster than the first.
	ErrTimingFading = errors.New("the second part was run no faster than the first, as if without a start: rest, and time both again")
	// ErrTimingSurge says that the speed grew faster than a steady push gives.
	ErrTimingSurge = errors.New("the second part was run too fast for the first, as if the start was slow on purpose: time both again at full effort")
)

// Timing is what a stopwatch says of a run through a mark from rest, started
// at the first step, so that reaction is left out.
type Timing struct {
	Distance units.Metres
	Time     units.Seconds
}

// String is the timing in words.
func (t Timing) String() string {
	return fmt.Sprintf("%.4g ft (%.3g m) in %.4g s", float64(t.Distance.Feet()), float64(t.Distance), float64(t.Time))
}

// check says whether the timing is one at all: up to 200 m and 100 s.
func (t Timing) check() error {
	if !(t.Distance > 0 && t.Distance <= 200 && t.Time > 0 && t.Time <= 100) {
		return fmt.Errorf("%w: %v", ErrTimingValue, t)
	}
	return nil
}

// Calibrated is the pace with its top speed from a stopwatch. One timing keeps
// Tau and solves TopSpeed, V = d/(t - tau (1 - exp(-t/tau))); two timings, in
// any order, solve both. Everything else stays. Errors are the ErrTiming ones
// and, for a pace without a usable Tau, ErrPace.
func (p Pace) Calibrated(timings ...Timing) (Pace, error) {
	if n := len(timings); n < 1 || n > 2 {
		return p, ErrTimingCount
	}
	for _, t := range timings {
		if err := t.check(); err != nil {
			return p, err
		}
	}
	out := p
	if len(timings) == 2 {
		tau, err := solveTau(timings[0], timings[1])
		if err != nil {
			return p, err
		}
		out.Tau = units.Seconds(tau)
	}
	if !(out.Tau > 0) {
		return p, fmt.Errorf("calibrate: %w", p.Validate())
	}
	out.TopSpeed = units.MetresPerSecond(topSpeed(timings[0], float64(out.Tau)))
	if err := out.believable(timings[0]); err != nil {
		return p, err
	}
	return out, nil
}

// believable says whether a solved top speed is a person's.
func (p Pace) believable(t Timing) error {
	switch v := float64(p.TopSpeed); {
	case v > mostSpeed:
		return fmt.Errorf("%w: %v needs a top speed of %.3g m/s", ErrTimingTooFast, t, v)
	case v < leastSpeed:
		return fmt.Errorf("%w: %v is a top speed of %.2g m/s", ErrTimingTooSlow, t, v)
	}
	if err := p.Validate(); err != nil {
		return fmt.Errorf("calibrate: %w", err)
	}
	return nil
}

// topSpeed solves V for one timing, in m/s.
func topSpeed(t Timing, tau float64) float64 {
	return float64(t.Distance) / (tau * lag(float64(t.Time)/tau))
}

// solveTau finds the time constant for which two timings have the same top
// speed. The ratio of distances grows with tau from t2/t1, no start at all, to
// (t2/t1)^2, a push that never ends; the root is unique. Bisection on the
// logarithm of tau, over the range that a Pace may have.
func solveTau(a, b Timing) (float64, error) {
	if a.Distance > b.Distance {
		a, b = b, a
	}
	if a.Distance == b.Distance || a.Time >= b.Time {
		return 0, fmt.Errorf("%w: %v, %v", ErrTimingOrder, a, b)
	}
	surplus := func(tau float64) float64 { return topSpeed(a, tau) - topSpeed(b, tau) }
	lo, hi := leastTau, mostTau
	switch {
	case surplus(lo) >= 0:
		return 0, fmt.Errorf("%w: %v, %v", ErrTimingFading, a, b)
	case surplus(hi) <= 0:
		return 0, fmt.Errorf("%w: %v, %v", ErrTimingSurge, a, b)
	}
	for range 60 { // each halves the bracket
		mid := math.Sqrt(lo * hi)
		if surplus(mid) < 0 {
			lo = mid
		} else {
			hi = mid
		}
	}
	return math.Sqrt(lo * hi), nil
}
