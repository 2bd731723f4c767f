package movement

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// Flash & Hogan 1985: 10 s^3 - 15 s^4 + 6 s^5, at a quarter .103515625, peak
// speed 1.875 times the mean.
func TestMinimumJerk(t *testing.T) {
	for _, c := range []struct{ s, want, rate float64 }{
		{0, 0, 0}, {0.25, 0.103515625, 1.0546875}, {0.5, 0.5, 1.875}, {0.75, 0.896484375, 1.0546875}, {1, 1, 0},
		{-1, 0, 0}, {2, 1, 0}, {math.NaN(), 0, 0}, {math.Inf(1), 1, 0}, {math.Inf(-1), 0, 0},
	} {
		if got := MinimumJerk(c.s); got != c.want {
			t.Errorf("MinimumJerk(%v) = %v, want %v", c.s, got, c.want)
		}
		if got := MinimumJerkRate(c.s); got != c.rate {
			t.Errorf("MinimumJerkRate(%v) = %v, want %v", c.s, got, c.rate)
		}
	}
}

func TestMinimumJerkProperties(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := rapid.Float64Range(0.001, 0.999).Draw(t, "s")
		if got := MinimumJerk(s) + MinimumJerk(1-s); math.Abs(got-1) > 1e-12 {
			t.Errorf("MinimumJerk(%v) + MinimumJerk(1-s) = %v, want 1", s, got)
		}
		const h = 1e-5
		want := (MinimumJerk(s+h) - MinimumJerk(s-h)) / (2 * h)
		if got := MinimumJerkRate(s); math.Abs(got-want) > 1e-7 {
			t.Errorf("MinimumJerkRate(%v) = %v, want the slope %v", s, got, want)
		}
	})
}
