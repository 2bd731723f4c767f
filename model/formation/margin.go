package formation

import (
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
)

// margin is the time to spare of a player of the pair at the deadline, the least
// of the runs that end by then; false for one who has none. Servers are in place
// when the return bounces, receivers are set when the third comes; who poaches
// gets to the ball and the partner, by the end, to the other half.
func (w *writer) margin(r *rally.Rally, id game.Player) (least units.Seconds, ok bool) {
	if w.volleyer() == id {
		least, ok = w.toVolley(r, id), true
	}
	t, until := r.Tracks[id], r.TimeAt(w.deadline())
	for i, leg := range t.Legs {
		stop := t.Stops[i+1]
		if stop.Index == rally.Implied || stop.At <= 0 || stop.At > until || leg.Run.Distance == 0 || stop.Keyframe.Through {
			continue
		}
		if !ok || leg.Margin < least {
			least, ok = leg.Margin, true
		}
	}
	return least, ok
}

// deadline is when the pair has to be in place.
func (w *writer) deadline() lesson.Anchor {
	switch {
	case w.s.Serves():
		return event(1, lesson.Bounce)
	case w.volleyer() != nobody:
		return after(event(fourth, lesson.Bounce), walkInTime)
	}
	return w.deadlineOfReturn()
}

// nobody is no player.
const nobody game.Player = 255

// volleyer is who of the pair goes for a volley: a poacher, or the runner at whom
// the third is driven.
func (w *writer) volleyer() game.Player {
	switch {
	case w.s.Lob:
		return nobody
	case w.s.Third == DriveAtRunner && !w.s.Serves():
		return w.receiver
	case w.poachesThird():
		return w.receiver.Partner()
	case w.poachesFourth():
		return w.p.Shots[third].By.Partner()
	}
	return nobody
}

// toVolley is the time to spare of a poacher at full effort until the ball is
// within arm, paddle and a lunge.
func (w *writer) toVolley(r *rally.Rally, id game.Player) units.Seconds {
	last := r.Strokes[len(r.Strokes)-1]
	leg, ball := legTo(r.Tracks[id], last.At), groundOf(last.From)
	legs := w.s.Lesson.Player(id).Legs()
	fast, err := leg.Gait.Of(legs).Fastest(leg.Run)
	if err != nil || leg.Run.Distance == 0 {
		return last.At - leg.From
	}
	lo, hi := units.Seconds(0), fast.Duration()
	for range 40 { // to a part of a nanosecond
		t := (lo + hi) / 2
		done, _ := fast.At(t)
		if leg.Way.At(float64(done/leg.Run.Distance)).Distance(ball).Metres() > legs.Reach() {
			lo = t
		} else {
			hi = t
		}
	}
	return last.At - (leg.From + hi)
}

// legTo is the leg that leads to the stop at a time.
func legTo(t rally.Track, at units.Seconds) rally.Leg {
	for i, leg := range t.Legs {
		if t.Stops[i+1].At == at {
			return leg
		}
	}
	return rally.Leg{}
}
