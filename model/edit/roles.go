package edit

import (
	"slices"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
)

// MirrorSides is play i of a lesson at the other court of the same turn: even
// becomes odd, odd even. Everybody stands and runs as in a mirror on the
// centreline. The score goes with it, up a point from an even one and down from
// an odd one, or the other way where no game comes to that, and those whose
// score it is take the parts: after a point the server and the partner have
// changed courts and the receivers have not, so the receivers exchange theirs
// (USA Pickleball Official Rulebook 2026, 5.B; in a format without swaps the
// partner serves). A play whose score is not said, or that no game comes to, is
// mirrored and keeps its score and its people.
func MirrorSides(l lesson.Lesson, i int) lesson.Lesson {
	p := l.Plays[i]
	mirrored := Mirrored(p)
	by, ok := p.Server()
	if _, said := scoreOf(l, p); !ok || !said {
		return l.WithPlay(i, mirrored)
	}
	from := court.SideOf(by.Team(), p.AtServe(by).Place)
	for _, points := range nextPoints(p.Situation.Call.Serving) {
		next := p.Situation
		next.Call.Serving += points
		if s, ok := serveAt(l, next, by, receiverOf(p).Partner(), from.Other()); ok && s.From() != from {
			return l.WithPlay(i, assign(mirrored, by, s))
		}
	}
	return l.WithPlay(i, mirrored)
}

// nextPoints are the steps to the other parity that are tried: 4 and 5 are a
// pair, as are 6 and 7.
func nextPoints(score int) [2]int {
	if score%2 == 0 {
		return [2]int{1, -1}
	}
	return [2]int{-1, 1}
}

// ReverseRoles is play i of a lesson with the teams' parts exchanged: those who
// served receive, from the same places of their own end, and the other team
// serves by the same call. Where the score asks for another server or receiver
// than the one who takes the part, the partners exchange theirs; where it asks
// for the other court, everything is mirrored. A play whose score is not said,
// or that no game comes to, keeps whoever takes the part.
func ReverseRoles(l lesson.Lesson, i int) lesson.Lesson {
	p := l.Plays[i]
	turned := Turned(p)
	by, ok := turned.Server()
	if _, said := scoreOf(l, p); !ok || !said {
		return l.WithPlay(i, turned)
	}
	from := court.SideOf(by.Team(), turned.AtServe(by).Place)
	if s, ok := serveAt(l, turned.Situation, by, receiverOf(turned), from); ok {
		turned = assign(turned, by, s)
	}
	return l.WithPlay(i, turned)
}

// scoreOf is the state that a play is served at; false where its score is not
// said or no game comes to it.
func scoreOf(l lesson.Lesson, p lesson.Play) (game.State, bool) {
	o, ok := p.OpeningOf()
	if !ok || o.Serving != o.Server.Team() || o.Call == (game.Call{}) && !l.Scoring.Format.Rally() {
		return game.State{}, false
	}
	s, err := l.StateAt(o)
	return s, err == nil && !s.Over()
}

// receiverOf is who returns the serve of a play that has one.
func receiverOf(p lesson.Play) game.Player { return returner(p, p.Shots[0].By) }

// serveAt is a state of the lesson's game at a situation: of those that are
// served from a court, or else of all, the one with most of the server and the
// receiver that are asked for; false if there is none.
func serveAt(l lesson.Lesson, to lesson.Situation, by, receiver game.Player, from court.Side) (game.State, bool) {
	q := game.Query{
		Format: l.Scoring.Format, To: l.Scoring.To, Starters: l.Starters(),
		Call: to.Call, Serving: to.Serving, Began: l.Match.First,
	}
	states, err := q.Who()
	if err != nil {
		return game.State{}, false
	}
	states = slices.DeleteFunc(states, game.State.Over)
	best, most := -1, -1
	for i, s := range states {
		n := 0
		if s.From() == from {
			n += 4
		}
		if s.Server() == by {
			n += 2
		}
		if s.Receiver() == receiver {
			n++
		}
		if n > most {
			best, most = i, n
		}
	}
	if best < 0 {
		return game.State{}, false
	}
	return states[best], true
}

// SwapEnds is the lesson after the teams have changed ends: everybody does the
// same, seen from the other end of the court, also in the match and by the cameras
// of reels. What belongs to the court stays: obstacles, the wind, the room round it.
func SwapEnds(l lesson.Lesson) lesson.Lesson {
	l.Teams[court.Near], l.Teams[court.Far] = l.Teams[court.Far], l.Teams[court.Near]
	l.Plays = slices.Clone(l.Plays)
	for i, p := range l.Plays {
		l.Plays[i] = Turned(p)
		for n, m := range p.Marks {
			if m.Kind == lesson.ObstacleMark {
				l.Plays[i].Marks[n] = m
			}
		}
	}
	l.Match = swapped(l.Match)
	l.Reels = slices.Clone(l.Reels)
	for i, r := range l.Reels {
		l.Reels[i].Takes = slices.Clone(r.Takes)
		for n := range r.Takes {
			l.Reels[i].Takes[n].Camera = cameraAcross(r.Takes[n].Camera)
		}
	}
	return l
}

// cameraAcross films the same from the other end; what does not count for a
// kind of camera stays as it is.
func cameraAcross(c lesson.Camera) lesson.Camera {
	switch c.Kind {
	case lesson.HalfCourt:
		c.End = c.End.Other()
	case lesson.Follow, lesson.PushIn:
		c.Player = across(c.Player)
	}
	return c
}

// across is the player with the same number at the other end.
func across(id game.Player) game.Player { return game.PlayerOf(id.Team().Other(), id.Number()) }

func swapped(m lesson.Match) lesson.Match {
	if m.First != nil {
		m.First = new(m.First.Other())
	}
	if m.From != nil {
		o := *m.From
		o.Serving, o.Server = o.Serving.Other(), across(o.Server)
		m.From = &o
	}
	m.Rallies = slices.Clone(m.Rallies)
	for i, r := range m.Rallies {
		m.Rallies[i].Winner = r.Winner.Other()
		m.Rallies[i].Formations = [2]lesson.Formation{r.Formations[court.Far], r.Formations[court.Near]}
	}
	return m
}
