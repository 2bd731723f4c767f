package rehearsal

import (
	"homeside/model/advice"
	"homeside/model/units"
)

// Crossings are the moments at which partners have to agree who goes in front, in
// the order of their times.
func (h *Rehearsal) Crossings() []advice.Approach { return h.crossings }

// How long in real time a crossing is warned of before and after it.
const (
	warnBefore units.Seconds = 1.5
	warnAfter  units.Seconds = 0.8
)

// CrossingNow is the crossing to be warned of at the moment shown: during Warning
// the first, in the rally one that is about to come or has just been. What stands
// still is shown until its next event, and stands for all of that.
func (h *Rehearsal) CrossingNow() (advice.Approach, bool) {
	switch h.phase {
	case Warning:
		return h.crossings[0], true
	case Running:
		from, to := h.Stretch()
		from -= warnAfter * units.Seconds(h.plan.Speed)
		to += warnBefore * units.Seconds(h.plan.Speed)
		for _, a := range h.crossings {
			if a.When >= from && a.When <= to {
				return a, true
			}
		}
	}
	return advice.Approach{}, false
}

// Stretch is what of the rally the picture stands for: a moment or, where it
// stands still, all from it to the next event.
func (h *Rehearsal) Stretch() (from, to units.Seconds) {
	from = h.Moment()
	if !h.paused && !h.plan.Cuts {
		return from, from
	}
	for _, e := range h.rally.Events {
		if e.Reached && e.At > from+sameMoment {
			return from, e.At
		}
	}
	return from, from
}
