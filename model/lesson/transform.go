package lesson

import (
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/units"
)

// transform rewrites every place, direction and player of a play.
type transform struct {
	point  func(court.Point) court.Point
	facing func(units.Degrees) units.Degrees
	side   float64 // what the sidespin is multiplied by
	part   [4]game.Player
}

// Mirrored is the play seen in a mirror that stands on the centreline: left and
// right change places, hands and names do not.
func (p Play) Mirrored() Play {
	return transform{
		point:  func(a court.Point) court.Point { return court.Pt(0-a.X, a.Y) },
		facing: func(d units.Degrees) units.Degrees { return (-d).Normal() },
		side:   -1,
		part:   game.Players,
	}.play(p)
}

// Turned is the play from the other end: the court turned half round, near1 in
// far1's part and so on. The other team then serves.
func (p Play) Turned() Play {
	t := transform{
		point:  court.Point.Mirror,
		facing: func(d units.Degrees) units.Degrees { return (d + 180).Normal() },
		side:   1,
		part:   [4]game.Player{game.Far1, game.Far2, game.Near1, game.Near2},
	}
	p = t.play(p)
	p.Situation.Serving = p.Situation.Serving.Other()
	return p
}

// Renamed is the play with each player's part taken by another, by game.Player.
// Partners must stay partners and teams whole.
func (p Play) Renamed(part [4]game.Player) Play {
	return transform{
		point:  func(a court.Point) court.Point { return a },
		facing: func(d units.Degrees) units.Degrees { return d },
		side:   1,
		part:   part,
	}.play(p)
}

func (t transform) play(p Play) Play {
	out := p
	if p.Front != nil {
		out.Front = new(t.part[*p.Front])
	}
	out.Shots = each(p.Shots, t.shot)
	for id := range p.Tracks {
		out.Tracks[t.part[id]] = each(p.Tracks[id], t.keyframe)
	}
	out.Marks = each(p.Marks, func(m Mark) Mark {
		m.Place, m.Tip = t.point(m.Place), t.point(m.Tip)
		return m
	})
	out.Cues = each(p.Cues, func(c Cue) Cue {
		if c.Kind == Signal {
			c.Giver, c.Reader = t.part[c.Giver], t.part[c.Reader]
		}
		return c
	})
	out.Photo = t.photo(p.Photo)
	return out
}

// photo keeps the points of a picture where they are in it: of a play that is
// mirrored there is none, as no picture is.
func (t transform) photo(p *Photo) *Photo {
	if p == nil || t.side < 0 {
		return nil
	}
	out := *p
	out.Points = each(p.Points, func(q PhotoPoint) PhotoPoint {
		q.Court = t.point(q.Court)
		return q
	})
	return &out
}

func (t transform) shot(s Shot) Shot {
	s.By, s.Aim, s.Side = t.part[s.By], t.point(s.Aim), s.Side*units.RPM(t.side)
	if s.From != nil {
		s.From = &Place{Point: t.point(s.From.Point), Height: s.From.Height}
	}
	return s
}

func (t transform) keyframe(k Keyframe) Keyframe {
	k.Place, k.Facing = t.point(k.Place), t.facing(k.Facing)
	if k.Via != nil {
		k.Via = new(t.point(*k.Via))
	}
	return k
}

// each is a list with every member changed; nil stays nil.
func each[T any](list []T, change func(T) T) []T {
	if list == nil {
		return nil
	}
	out := make([]T, len(list))
	for i, v := range list {
		out[i] = change(v)
	}
	return out
}
