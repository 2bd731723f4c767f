package lesson

import (
	"slices"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/units"
)

// Lesson is the whole document. Its zero value has no plays and two unnamed teams.
type Lesson struct {
	Title      string
	Notes      string
	Scoring    Scoring
	Venue      Venue
	Conditions Conditions
	Vocabulary Vocabulary // what this lesson means by the kinds of shot
	Teams      [2]Team    // by court.End: near, far
	Plays      []Play
	Match      Match // the game that the plays are of
	Logo       Logo  // for the reels
	Reels      []Reel
}

// Scoring is the format all plays of a lesson are played in.
type Scoring struct {
	Format game.Format // side-out by default
	To     int         // points that win; 0 means 11
}

// Points is the number of points that win, 11 where the lesson does not say.
func (s Scoring) Points() int {
	if s.To == 0 {
		return DefaultPoints
	}
	return s.To
}

// DefaultPoints is the usual game (USA Pickleball Official Rulebook 2026, 4.A).
const DefaultPoints = 11

// Venue is the room around the court, measured by the coach. Zero lengths mean
// the least playing surface, 30 x 60 ft (rulebook 2026, 3.A.3).
type Venue struct {
	BehindBaseline units.Feet // free room behind each baseline
	BesideSideline units.Feet // free room beside each sideline
}

// Surface is the playing surface at this venue.
func (v Venue) Surface() court.Rect {
	r := court.Surface
	if v.BesideSideline > 0 {
		r.Max.X = court.HalfWidth + v.BesideSideline
	}
	if v.BehindBaseline > 0 {
		r.Max.Y = court.Baseline + v.BehindBaseline
	}
	r.Min = r.Max.Mirror()
	return r
}

// Player is the person with this id.
func (l Lesson) Player(id game.Player) Player {
	return l.Teams[id.Team()].Players[id.Number()-1]
}

// Team is the near or the far team.
func (l Lesson) Team(e court.End) Team { return l.Teams[e] }

// WithPlay is the lesson with play i replaced.
func (l Lesson) WithPlay(i int, p Play) Lesson {
	l.Plays = slices.Clone(l.Plays)
	l.Plays[i] = p
	return l
}

// WithPlayer is the lesson with one person replaced.
func (l Lesson) WithPlayer(id game.Player, p Player) Lesson {
	l.Teams[id.Team()].Players[id.Number()-1] = p // Teams is an array: l is a copy
	return l
}
