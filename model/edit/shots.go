package edit

import (
	"slices"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

// AddShot is the play with one more shot, its last. A play that is full (see
// lesson.MaxShots) or whose last shot is of the same team stays as it is.
func AddShot(p lesson.Play, s lesson.Shot) lesson.Play {
	n := len(p.Shots)
	if n >= lesson.MaxShots || n > 0 && p.Shots[n-1].By.Team() == s.By.Team() {
		return p
	}
	s.Aim = within(s.Aim, bounds)
	p.Shots = append(slices.Clip(p.Shots), s)
	return p
}

// HitBy is the play with shot i hit by the hitter's partner or, if by is the
// hitter, as it is.
func HitBy(p lesson.Play, i int, by game.Player) lesson.Play {
	s := p.Shots[i]
	if by.Team() == s.By.Team() {
		s.By = by
	}
	return p.WithShot(i, s)
}

// CutShots is the play with its first n shots only, one at least. What hangs on
// the events of the others hangs on the contact of the last one kept, at the same
// time as before; at says when an anchor is.
func CutShots(p lesson.Play, n int, at func(lesson.Anchor) units.Seconds) lesson.Play {
	n = max(n, 1)
	if n >= len(p.Shots) {
		return p
	}
	c := cut{n, at}
	p.Shots = slices.Clip(p.Shots[:n])
	for id, track := range p.Tracks {
		track = slices.Clone(track)
		for i, k := range track {
			track[i].At = c.anchor(k.At)
			if k.Leave != nil {
				track[i].Leave = new(c.anchor(*k.Leave))
			}
		}
		p.Tracks[id] = track
	}
	p.Marks, p.Cues = slices.Clone(p.Marks), slices.Clone(p.Cues)
	for i := range p.Marks {
		p.Marks[i].Span = c.span(p.Marks[i].Span)
	}
	for i := range p.Cues {
		p.Cues[i].Span = c.span(p.Cues[i].Span)
	}
	return p
}

// cut hangs anchors on the shots that are left.
type cut struct {
	kept int
	at   func(lesson.Anchor) units.Seconds
}

func (c cut) anchor(a lesson.Anchor) lesson.Anchor {
	if a.Event.Moment == lesson.End || a.Event.Shot < c.kept {
		return a
	}
	last := lesson.At(lesson.ContactOf(c.kept - 1))
	last.Offset = min(max(c.at(a)-c.at(last), -lesson.MaxOffset), lesson.MaxOffset)
	return last
}

func (c cut) span(s lesson.Span) lesson.Span {
	return lesson.Span{From: c.anchor(s.From), To: c.anchor(s.To)}
}

// NextShot is the shot that usually follows in a play, hit by one of the other
// team: after the serve a deep return, after the return a drop, and then dinks,
// each across the court from where it is hit, at x.
func NextShot(l lesson.Lesson, p lesson.Play, by game.Player, x units.Feet) lesson.Shot {
	kind, depth := lesson.Dink, units.Feet(usualShort)
	switch len(p.Shots) {
	case 1:
		kind, depth = lesson.DeepReturn, usualDeep
	case 2:
		kind = lesson.Drop
	}
	across := min(max(-x/2, -units.Feet(usualWide)), units.Feet(usualWide))
	s := lesson.Shot{By: by, Aim: court.Pt(across, depth*by.Team().Other().Sign())}
	return s.Hit(kind, l.Manner(kind))
}

// Where the usual shots are aimed: into the middle of the kitchen, 4 ft inside
// the baseline, and no wider than half-way to the sideline (our choice).
const (
	usualShort = court.Kitchen - 2
	usualDeep  = court.Baseline - 4
	usualWide  = court.HalfWidth / 2
)
