package reel

import (
	"slices"

	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
)

// newTake solves what a take shows; false if a play is not there.
func newTake(i int, t lesson.Take, solve func(int) (*rally.Rally, error)) (Take, bool) {
	out := Take{Take: t, Index: i}
	var err error
	if out.Rally, err = solve(t.Play - 1); err != nil {
		return out, false
	}
	out.From, out.To = out.Rally.From, out.Rally.To
	if t.Beside > 0 {
		if out.Other, err = solve(t.Beside - 1); err != nil {
			return out, false
		}
		out.From, out.To = min(out.From, out.Other.From), max(out.To, out.Other.To)
	}
	first, last := out.From, out.To
	if t.From != nil {
		out.From = out.timeOf(*t.From, first, last)
	}
	if t.To != nil {
		out.To = out.timeOf(*t.To, first, last)
	}
	return out, true
}

// timeOf is the time of an anchor within the play. An event that the play does
// not have means its end.
func (t Take) timeOf(a lesson.Anchor, first, last units.Seconds) units.Seconds {
	if a.Event.Shot >= len(t.Rally.Strokes) {
		a.Event = lesson.TheEnd
	}
	return min(max(t.Rally.TimeAt(a), first), last)
}

// take adds the pieces of a take; false if it shows nothing.
func (r *Reel) take(t Take) bool {
	if t.From > t.To {
		return false
	}
	once := t.steps()
	t.Start, t.pieces.at = r.length, len(r.pieces)
	for range t.Times() {
		loop := r.length
		for _, s := range once {
			r.add(piece{take: len(r.Takes), from: s.from, to: s.to, speed: s.speed, freeze: s.freeze, loop: loop}, s.length)
		}
		t.once = r.length - loop
	}
	t.End, t.pieces.to = r.length, len(r.pieces)
	if t.pieces.at == t.pieces.to {
		return false
	}
	r.Takes = append(r.Takes, t)
	return true
}

// step is a piece of one loop before it has a place in the clip.
type step struct {
	from, to, length units.Seconds
	speed            float64
	freeze           int
}

// steps cuts a take where its speed changes and where it holds.
func (t Take) steps() []step {
	var out []step
	cuts := t.cuts()
	for i, at := range cuts {
		for k, f := range t.Freezes {
			if t.moment(f.At) == at {
				out = append(out, step{at, at, f.Length, 0, k})
			}
		}
		if i+1 < len(cuts) {
			speed := t.speedAt((at + cuts[i+1]) / 2)
			out = append(out, step{at, cuts[i+1], (cuts[i+1] - at) / units.Seconds(speed), speed, -1})
		}
	}
	return out
}

// cuts are the moments within the take at which anything changes, its ends
// among them, in their order and each once.
func (t Take) cuts() []units.Seconds {
	all := []units.Seconds{t.From, t.To}
	add := func(a lesson.Anchor) {
		if at := t.moment(a); at > t.From && at < t.To {
			all = append(all, at)
		}
	}
	for _, s := range t.Slows {
		add(s.Span.From)
		add(s.Span.To)
	}
	for _, f := range t.Freezes {
		add(f.At)
	}
	slices.Sort(all)
	return slices.Compact(all)
}

// moment is the time of an anchor, in the take or out of it.
func (t Take) moment(a lesson.Anchor) units.Seconds {
	first, last := t.Rally.From, t.Rally.To
	if t.Other != nil {
		first, last = min(first, t.Other.From), max(last, t.Other.To)
	}
	return t.timeOf(a, first, last)
}

// speedAt is the speed at a moment of the play: that of the last slow stretch
// that holds it, else the take's own.
func (t Take) speedAt(at units.Seconds) float64 {
	for _, s := range slices.Backward(t.Slows) {
		if t.moment(s.Span.From) <= at && at < t.moment(s.Span.To) {
			return s.Speed
		}
	}
	return t.Rate()
}
