package signal

import (
	"fmt"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
)

// Tally counts a pair's rallies by what it did and where they aimed.
type Tally [2][2]lesson.Count

// TallyOf counts the rallies that a team of the lesson served from one side and
// in which the return shows where the opponents aimed:
//
//   - switch is a switch; stay is a stay or ordinary places, which look the same;
//     a stack shows before the serve and a poach is another plan: neither counts;
//   - a return down the line goes to the half in front of the receiver, one to the
//     mover to the half of the server, who is the one who moves; one to the middle or short
//     is aimed at neither half and does not count.
//
// The tally does not note where a third shot went, so a receiving pair's signals
// cannot be counted. The error says why no game can have begun as the match says.
func TallyOf(l lesson.Lesson, team court.End, from court.Side) (Tally, error) {
	var t Tally
	m, err := l.Game()
	if err != nil {
		return t, fmt.Errorf("count the signals: %w", err)
	}
	for i, s := range m.States() {
		if i >= len(l.Match.Rallies) || s.Over() || s.Serving() != team || s.From() != from {
			continue
		}
		r := l.Match.Rallies[i]
		do, done := actionOf(r.Formations[team])
		aim, aimed := aimOf(r.Return, s)
		if done && aimed {
			t.add(do, aim, r.Winner == team)
		}
	}
	return t, nil
}

func (t *Tally) add(do Action, aim Aim, won bool) {
	c := &t[do][aim]
	c.Rallies++
	if won {
		c.Won++
	}
}

// actionOf is what a formation of the tally was as a signal.
func actionOf(f lesson.Formation) (Action, bool) {
	switch f {
	case lesson.Switched:
		return Switch, true
	case lesson.Stayed, lesson.Ordinary:
		return Stay, true
	default:
		return Stay, false
	}
}

// aimOf is the half of the serving pair's court to which a return went.
func aimOf(r lesson.ReturnTo, s game.State) (Aim, bool) {
	servers := Right
	if s.From() == court.Left {
		servers = Left
	}
	switch r {
	case lesson.ToMover:
		return servers, true
	case lesson.DownLine:
		return servers ^ 1, true
	default:
		return Left, false
	}
}

// Game is the chances as counted; false while one of the four has no rally.
func (t Tally) Game() (Game, bool) {
	var g Game
	for _, do := range Actions {
		for _, aim := range Aims {
			c := t[do][aim]
			if c.Rallies == 0 {
				return Game{}, false
			}
			g[do][aim] = float64(c.Won) / float64(c.Rallies)
		}
	}
	return g, true
}
