package movement

import (
	"math"

	"homeside/model/units"
)

// SpeedNeeded is the top speed that this pace would need to do a run in a
// window, everything else the same. It says false when no top speed a Pace may
// have is enough, when the run or the pace is out of range and when the window
// is not a number. A run that any speed manages gives the least a Pace may have.
func (p Pace) SpeedNeeded(r Run, window units.Seconds) (units.MetresPerSecond, bool) {
	p.TopSpeed = mostSpeed
	if p.Validate() != nil || r.Validate() != nil || math.IsNaN(float64(window)) {
		return 0, false
	}
	late := func(v float64) bool {
		p.TopSpeed = units.MetresPerSecond(v)
		return p.fastest(r).Duration() > window
	}
	if late(mostSpeed) {
		return 0, false
	}
	lo, hi := leastSpeed, mostSpeed
	if !late(lo) {
		return leastSpeed, true
	}
	for range 50 { // each halves the bracket
		if mid := lo + (hi-lo)/2; late(mid) {
			lo = mid
		} else {
			hi = mid
		}
	}
	return units.MetresPerSecond(hi), true
}
