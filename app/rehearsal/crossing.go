package rehearsal

import (
	"cmp"
	"slices"

	"homeside/model/advice"
	"homeside/model/court"
	"homeside/model/rally"
	"homeside/model/units"
)

// together is how far apart in time a crossing and the closest approach are when
// they are one thing to be careful of.
const together units.Seconds = 1

// crossings are the moments of a rally at which partners have to agree who goes in
// front, in the order of their times: where they change sides, and where they come
// too close without.
func crossings(r *rally.Rally) []advice.Approach {
	var all []advice.Approach
	for _, team := range court.Ends {
		own := advice.Crossings(r, team)
		c, ok := advice.Closest(r, team)
		near := func(a advice.Approach) bool { return a.When > c.When-together && a.When < c.When+together }
		if ok && c.Distance < advice.TooClose && !slices.ContainsFunc(own, near) {
			own = append(own, c)
		}
		all = append(all, own...)
	}
	slices.SortStableFunc(all, func(a, b advice.Approach) int { return cmp.Compare(a.When, b.When) })
	return all
}

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
