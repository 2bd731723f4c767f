package movement

import (
	"errors"
	"fmt"
	"math"

	"homeside/model/units"
)

// ErrRun says that a run has a figure outside its range; the message names it.
var ErrRun = errors.New("run out of range")

// Run is what a player has to do: cover a distance along one path. The zero
// Run is no distance from rest to rest.
type Run struct {
	Distance units.Metres          // along the path; [0, 1000]
	Start    units.MetresPerSecond // speed along the path when it begins, see Carry; 0 is at rest; [0, 20]
	Cap      units.MetresPerSecond // highest speed the path allows, see BendCap; 0 is none; otherwise [0.05, ...]
	Through  bool                  // need not stop at the end
}

// Validate says what is wrong with a run: an ErrRun that names the figure, its
// value and its range, or nil.
func (r Run) Validate() error {
	for _, l := range []limit{
		{"distance", "m", float64(r.Distance), 0, 1000},
		{"starting speed", "m/s", float64(r.Start), 0, 20},
	} {
		if !(l.v >= l.min && l.v <= l.max) {
			return fmt.Errorf("%w: %s is %v %s, want %v to %v", ErrRun, l.name, l.v, l.unit, l.min, l.max)
		}
	}
	if r.Cap != 0 && !(r.Cap >= leastCap) {
		return fmt.Errorf("%w: speed cap is %v m/s, want 0 for none or at least %v", ErrRun, float64(r.Cap), leastCap)
	}
	return nil
}

// leastCap keeps times finite, in m/s.
const leastCap = 0.05

// Sideways acceleration of a player in a bend, in m/s2, and the tightest bend
// that still counts as running, in metres (both from memory).
const (
	BendGrip   = 3.0
	LeastBend  = 0.1
	straightTo = 1e6 // a bend of more than 1000 km is straight
)

// BendCap is the highest speed on a path by the least radius of its bends,
// sqrt(3 m/s2 x radius). An endless radius gives 0, no cap; a sharper bend
// than LeastBend, a negative radius and what is not a number count as LeastBend.
func BendCap(leastRadius units.Metres) units.MetresPerSecond {
	r := float64(leastRadius)
	if r > straightTo {
		return 0
	}
	if !(r >= LeastBend) {
		r = LeastBend
	}
	return units.MetresPerSecond(math.Sqrt(BendGrip * r))
}

// Carry is the speed that a player who arrives at some speed brings into the
// next run when the path turns by an angle of either sign: the component along
// the new direction, speed times the cosine. Beyond a right angle nothing is
// carried: the player plants a foot and starts from rest, which costs no time
// of its own. Not a number gives 0.
func Carry(arrival units.MetresPerSecond, turn units.Degrees) units.MetresPerSecond {
	v := float64(arrival) * math.Cos(turn.Radians())
	if !(v > 0) || math.IsInf(v, 0) {
		return 0
	}
	return units.MetresPerSecond(v)
}
