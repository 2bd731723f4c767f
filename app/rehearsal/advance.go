package rehearsal

import (
	"homeside/export/sound"
	"homeside/model/units"
)

// mostPhases bounds how many phases one stretch of time can pass: a window that
// was asleep for an hour does not catch up.
const mostPhases = 8

// Advance lets real time pass and tells the beeps due in it. Nothing passes
// while it waits, is paused or is done.
func (h *Rehearsal) Advance(dt units.Seconds) []Heard {
	if !h.Passing() || !(dt > 0) {
		return nil
	}
	var heard []Heard
	var gone units.Seconds
	for range mostPhases {
		step := min(dt-gone, max(h.lasts()-h.in, 0))
		heard = append(heard, h.due(h.in, h.in+step, gone)...)
		h.in += step
		gone += step
		if h.in < h.lasts() || !h.leave() {
			return heard
		}
	}
	return heard
}

// leave goes on to the next phase; false at the end of all.
func (h *Rehearsal) leave() bool {
	switch h.phase {
	case Warning:
		h.enter(Counting)
	case Counting:
		h.enter(Running)
	case Running:
		if h.plan.Rounds > 0 && h.round >= h.plan.Rounds {
			h.enter(Done)
			return false
		}
		h.enter(Resting)
	case Resting:
		h.enter(Counting)
	}
	return true
}

// due are the beeps of the phase from one of its times, included, to another;
// the phase stands gone after the stretch's beginning at its time from.
func (h *Rehearsal) due(from, to, gone units.Seconds) []Heard {
	var all []Heard
	add := func(at units.Seconds, k sound.Kind) {
		if at >= from && at < to {
			all = append(all, Heard{gone + at - from, k})
		}
	}
	switch h.phase {
	case Counting:
		for i := range h.plan.Count {
			add(h.plan.Beat*units.Seconds(i), sound.Count)
		}
	case Running:
		for _, b := range h.beeps {
			add((b.At-h.rally.From)/units.Seconds(h.plan.Speed), b.Kind)
		}
	}
	return all
}
