package advice

import (
	"homeside/model/court"
	"homeside/model/finding"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
)

// What a run may do without a caution: our choice.
const (
	MostBackward units.Feet = 6 // turn and run, do not backpedal
	ClearOf      units.Feet = 3 // of an obstacle
)

// backward are the runs that go backwards too far.
func backward(s *sheet) {
	for _, id := range game.Players {
		t := s.Tracks[id]
		for i, l := range t.Legs {
			if l.Gait != rally.Backward || !s.Reached(l.From) {
				continue
			}
			done, _ := l.Profile.At(ends(t, i) - l.Push())
			if ft := done.Feet(); ft > MostBackward {
				from, _ := l.Way.Ends()
				s.about(id, finding.RunsBackward, l.From, from, finding.Is("distance", ft), finding.Is("stop", i+1))
			}
		}
	}
}

// obstacles are the runs that pass too near a marked obstacle, each obstacle
// once for each player, where the player is nearest.
func obstacles(s *sheet) {
	for n, m := range s.Play.Marks {
		if m.Kind != lesson.ObstacleMark {
			continue
		}
		for _, id := range game.Players {
			if at, d, ok := s.nearest(id, m.Place); ok && d < ClearOf {
				s.about(id, finding.NearObstacle, at, s.Tracks[id].RunAt(at).Place, finding.Is("distance", d), finding.Is("mark", n))
			}
		}
	}
}

// nearest is when a player on the run is nearest to a point, and how near.
func (s *sheet) nearest(id game.Player, p court.Point) (at units.Seconds, d units.Feet, ok bool) {
	t := s.Tracks[id]
	for i, l := range t.Legs {
		if l.Run.Distance == 0 || !s.Reached(l.From) {
			continue
		}
		when, far := nearestOn(l, ends(t, i), p)
		if !ok || far < d-alike {
			at, d, ok = when, far, true
		}
	}
	return at, d, ok
}

// pieces is how finely a leg is looked at.
const pieces = 64

// nearestOn is when within a leg its runner is nearest to a point: the best of
// some even moments, closed in on.
func nearestOn(l rally.Leg, end units.Seconds, p court.Point) (units.Seconds, units.Feet) {
	far := func(t units.Seconds) units.Feet {
		done, _ := l.Profile.At(t - l.Push())
		return l.Way.At(float64(done / l.Run.Distance)).Distance(p)
	}
	part := (end - l.From) / pieces
	best := l.From
	for i := range pieces + 1 {
		if t := l.From + part*units.Seconds(i); far(t) < far(best) {
			best = t
		}
	}
	lo, hi := max(best-part, l.From), min(best+part, end)
	for range rounds {
		third := (hi - lo) / 3
		if far(lo+third) <= far(hi-third) {
			hi -= third
		} else {
			lo += third
		}
	}
	return lo, far(lo)
}
