package rules

import (
	"math"

	"homeside/model/court"
	"homeside/model/finding"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
)

// A body is a cylinder on the player's place that the ball's centre may not
// enter. The sizes are our assumption: a standing player's shoulders and height,
// and a player in a chair, which is part of the body.
const (
	BodyRadius  units.Feet = 0.75
	BodyHeight  units.Feet = 6
	ChairRadius units.Feet = 1.1
	ChairHeight units.Feet = 4.5
)

type body struct{ radius, height units.Feet }

func bodyOf(p lesson.Player) body {
	if p.Wheelchair {
		return body{ChairRadius, ChairHeight}
	}
	return body{BodyRadius, BodyHeight}
}

// nobodyHit: a serve that hits the server's partner is a fault of the servers
// (7.E.4), one that hits the receiver or the partner before it bounces a fault
// of the receivers (7.E.5); any other ball is a fault of whom it hits. The first
// body on a shot's way counts. Who strikes the ball is not hit by it.
func nobodyHit(s *sheet) []finding.Finding {
	var all []finding.Finding
	for i := 0; i < len(s.Strokes) && s.live(i); i++ {
		if f, ok := s.hitBy(i); ok {
			all = append(all, f)
		}
	}
	return all
}

// hitBy is the first body in the way of shot i.
func (s *sheet) hitBy(i int) (finding.Finding, bool) {
	stroke := s.Strokes[i]
	until := min(stroke.At+stroke.Met, s.Stopped())
	if i == len(s.Strokes)-1 {
		until = min(s.bounce(i), until)
	}
	for k := 1; k < len(s.frames) && s.frames[k].T <= until; k++ {
		a, b := &s.frames[k-1], &s.frames[k]
		if a.T < stroke.At {
			continue
		}
		for _, id := range game.Players {
			if m, ok := meeting(a, b, id, bodyOf(s.Player(id))); ok && !s.strikes(id, i, a.T) {
				return s.hit(i, id, m), true
			}
		}
	}
	return finding.Finding{}, false
}

// strikes says whether a player strikes shot i, or meets it from time t on.
func (s *sheet) strikes(id game.Player, i int, t units.Seconds) bool {
	stroke := s.Strokes[i]
	next := i+1 < len(s.Strokes) && s.Strokes[i+1].By == id
	return id == stroke.By || next && (stroke.Volleyed || t >= s.bounce(i))
}

func (s *sheet) hit(i int, id game.Player, m meet) finding.Finding {
	kind := finding.BallHitsPlayer
	switch {
	case i > 0 || m.at >= s.bounce(i):
	case id == s.server.Partner():
		kind = finding.ServeHitsOwn
	default:
		kind = finding.ServeHitsOther
	}
	return finding.New(kind, m.at, m.where, finding.Is("height", m.height), finding.Is("shot", finding.Shot(i)),
		finding.Is("by", s.Strokes[i].By)).About(id)
}

// meet is where the ball enters a body.
type meet struct {
	at     units.Seconds
	where  court.Point
	height units.Feet
}

// meeting is where the ball enters a player's body between two frames, both
// moving evenly. A ball that flies over does not.
func meeting(a, b *rally.Frame, id game.Player, body body) (meet, bool) {
	from, to := a.Ball.Ground(), b.Ball.Ground()
	lo, hi, ok := within(from.Sub(a.Players[id].Run.Place), to.Sub(b.Players[id].Run.Place), body.radius)
	if !ok {
		return meet{}, false
	}
	low, high := a.Ball.Height().Feet(), b.Ball.Height().Feet()
	height := func(u float64) units.Feet { return low + (high-low)*units.Feet(u) }
	if height(lo) > body.height {
		if height(hi) > body.height {
			return meet{}, false
		}
		lo = float64((body.height - low) / (high - low)) // comes down into it
	}
	return meet{a.T + (b.T-a.T)*units.Seconds(lo), from.Toward(to, lo), height(lo)}, true
}

// within is the part of the straight way from d to e that lies within a distance
// of the origin, as shares of it; false if none does.
func within(d, e court.Point, radius units.Feet) (lo, hi float64, ok bool) {
	way := e.Sub(d)
	a := float64(way.X*way.X + way.Y*way.Y)
	b := float64(d.X*way.X + d.Y*way.Y)
	c := float64(d.X*d.X + d.Y*d.Y - radius*radius)
	if a == 0 {
		return 0, 1, c <= 0
	}
	root := b*b - a*c
	if root < 0 {
		return 0, 0, false
	}
	root = math.Sqrt(root)
	lo, hi = max((-b-root)/a, 0), min((-b+root)/a, 1)
	return lo, hi, lo <= hi
}
