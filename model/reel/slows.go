package reel

import "homeside/model/units"

// SlowFault is why a stretch of a take at another speed does not count as it is said.
type SlowFault uint8

// The faults.
const (
	SlowCounts  SlowFault = iota // none
	SlowEmpty                    // it ends before it begins, or where
	SlowOutside                  // it lies outside the take
	SlowCovered                  // a later one of the list counts where they overlap
)

// SlowFaults are all faults but none.
var SlowFaults = [...]SlowFault{SlowEmpty, SlowOutside, SlowCovered}

// SlowFaults says of every stretch of the take at another speed, in their order,
// whether it counts.
func (t *Take) SlowFaults() []SlowFault {
	out := make([]SlowFault, len(t.Slows))
	for i := range t.Slows {
		out[i] = t.slowFault(i)
	}
	return out
}

func (t *Take) slowFault(i int) SlowFault {
	from, to := t.slowSpan(i)
	switch {
	case from >= to:
		return SlowEmpty
	case to <= t.From || from >= t.To:
		return SlowOutside
	}
	for later := i + 1; later < len(t.Slows); later++ {
		if a, b := t.slowSpan(later); a < b && a < to && from < b {
			return SlowCovered
		}
	}
	return SlowCounts
}

// slowSpan is where stretch i is on the play's clock.
func (t *Take) slowSpan(i int) (from, to units.Seconds) {
	s := t.Slows[i].Span
	return t.moment(s.From), t.moment(s.To)
}
