package movement

import "homeside/model/units"

// WalkingSpeed is a comfortable walk for a first rehearsal. Comfortable gait
// of adults is 1.27-1.46 m/s (Bohannon 1997, from memory); walk it first.
const WalkingSpeed units.MetresPerSecond = 1.3

// WalkThrough is the factor by which the time of a whole play is stretched so
// that nobody moves faster than a walk: the highest of the peak speeds over the
// walk, and at least 1. All players and the ball share it, so that they meet
// where they meet at speed. A walk of 0 or less or not a number counts as
// WalkingSpeed; peaks that are not numbers are passed over.
func WalkThrough(walk units.MetresPerSecond, peaks ...units.MetresPerSecond) float64 {
	if !(walk > 0) {
		walk = WalkingSpeed
	}
	factor := 1.0
	for _, peak := range peaks {
		if f := float64(peak / walk); f > factor {
			factor = f
		}
	}
	return factor
}

// Slowed is the run with its time stretched by a factor, as WalkThrough gives
// it, over what it takes now. A factor below 1 or not a number counts as 1.
func (p Profile) Slowed(factor float64) Profile {
	if factor > 1 {
		p, _ = p.Fill(p.Duration() * units.Seconds(factor))
	}
	return p
}
