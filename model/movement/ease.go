package movement

import "math"

// MinimumJerk is the share of a path done at the share s of its time by a
// movement at rest at both ends, 10 s^3 - 15 s^4 + 6 s^5 (Flash & Hogan 1985).
// s is clamped to [0, 1]; not a number gives 0.
func MinimumJerk(s float64) float64 {
	s = share(s)
	return s * s * s * (10 - s*(15-6*s))
}

// MinimumJerkRate is the derivative of MinimumJerk, the speed over the mean
// speed: 0 at both ends and outside, 1.875 halfway.
func MinimumJerkRate(s float64) float64 {
	s = share(s)
	return 30 * s * s * (1 - s) * (1 - s)
}

// share clamps to [0, 1], not a number to 0.
func share(s float64) float64 {
	if math.IsNaN(s) {
		return 0
	}
	return min(max(s, 0), 1)
}
