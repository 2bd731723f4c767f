package rules

import (
	"slices"

	"homeside/model/court"
	"homeside/model/finding"
	"homeside/model/game"
	"homeside/model/rally"
	"homeside/model/units"
)

// MomentumWindow is how long after a volley a player who has not come to rest is
// still carried by it: our reading of 11.A.2, which names no time.
const MomentumWindow units.Seconds = 1

// atRest is the speed below which a player stands, and headingStep the time over
// which the direction of a run is read.
const (
	atRest      units.MetresPerSecond = 0.05
	headingStep units.Seconds         = 0.01
)

// noMomentum: who moves at a volley must not be carried into the kitchen (11.A.2):
// neither by the run itself before it comes to rest, nor because the player's
// braking, v²/2a straight ahead, is too long for what is left to the line.
func noMomentum(s *sheet) []finding.Finding {
	var all []finding.Finding
	for i := range s.Strokes {
		if !s.volleys(i) {
			continue
		}
		m := s.momentum(i)
		where, at, ok := s.carriedInto(m)
		if !ok {
			continue
		}
		f := s.ofStroke(finding.Momentum, i, finding.Is("support", s.support(m.by)), finding.Is("speed", m.speed), finding.Is("stop", m.stop))
		f.Where, f.When = where, at
		all = append(all, f)
	}
	return all
}

// momentum is how a player moves at a volley.
type momentum struct {
	by    game.Player
	at    units.Seconds
	feet  [2]court.Point
	speed units.MetresPerSecond
	way   court.Point // the direction, of length 1; 0 if there is none
	stop  units.Feet  // what the braking takes, within the window
}

func (s *sheet) momentum(i int) momentum {
	stroke := s.Strokes[i]
	now := s.At(stroke.At).Players[stroke.By]
	m := momentum{by: stroke.By, at: stroke.At, feet: now.Feet, speed: now.Run.Speed}
	before := s.At(stroke.At - headingStep).Players[stroke.By]
	m.way, _ = now.Run.Place.Sub(before.Run.Place).Unit() // without one the player stands
	a := s.Player(stroke.By).Legs().Braking
	t := min(float64(m.speed)/a, float64(MomentumWindow))
	m.stop = units.Metres(t * (float64(m.speed) - a*t/2)).Feet()
	return m
}

// carriedInto is where and when momentum takes a player into the kitchen.
func (s *sheet) carriedInto(m momentum) (court.Point, units.Seconds, bool) {
	kitchen := m.by.Team()
	if _, in := kitchenFoot(kitchen, m.feet); in || m.speed < atRest {
		return court.Point{}, 0, false // in it already, or standing
	}
	if foot, at, ok := s.ranInto(m); ok {
		return foot, at, true
	}
	for _, foot := range m.feet {
		to := foot.Add(m.way.Times(float64(m.stop)))
		if share, ok := enters(court.KitchenOf(kitchen), foot, to); ok {
			return foot.Toward(to, share), m.at, true
		}
	}
	return court.Point{}, 0, false
}

// ranInto is the first foot that touches the kitchen after the volley before the
// run has come to rest.
func (s *sheet) ranInto(m momentum) (court.Point, units.Seconds, bool) {
	after := slices.IndexFunc(s.frames, func(f rally.Frame) bool { return f.T > m.at })
	for k := max(after, 0); after >= 0 && k < len(s.frames) && s.frames[k].T <= m.at+MomentumWindow; k++ {
		p := &s.frames[k].Players[m.by]
		if foot, ok := kitchenFoot(m.by.Team(), p.Feet); ok {
			return foot, s.frames[k].T, true
		}
		if p.Run.Speed < atRest {
			break
		}
	}
	return court.Point{}, 0, false
}

// enters is the share of the way from a to b after which it is in r; false if it
// never is.
func enters(r court.Rect, a, b court.Point) (float64, bool) {
	x0, x1, okX := between(a.X, b.X, r.Min.X, r.Max.X)
	y0, y1, okY := between(a.Y, b.Y, r.Min.Y, r.Max.Y)
	lo, hi := max(x0, y0), min(x1, y1)
	return lo, okX && okY && lo <= hi
}

// between is the part of the way from one coordinate to another that lies from
// low to high, as shares of it; false if none does.
func between(from, to, low, high units.Feet) (lo, hi float64, ok bool) {
	way := to - from
	if way == 0 {
		return 0, 1, from >= low && from <= high
	}
	u, v := float64((low-from)/way), float64((high-from)/way)
	lo, hi = max(min(u, v), 0), min(max(u, v), 1)
	return lo, hi, lo <= hi
}
