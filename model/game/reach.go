package game

import (
	"slices"

	"homeside/model/court"
)

// statesOf lists the states with the query's call that a game with this
// background can come to. It is worked out from the score at which the serving
// team's turn can have begun, or in rally-own-serve from the number of turns;
// the tests compare it with a walk through every game.
func (q Query) statesOf(b background) []State {
	s := stateOf(q.Format, Settings{To: q.To}.Points(), b.starters)
	s.score = scores(q.Call, q.Serving)
	s.serving = q.Serving
	s.firstServer = q.Call.Server == 1
	for _, e := range court.Ends {
		s.swapped[e] = swapsByParity(q.Format) && parity(s.score[e]) == court.Left
	}
	var states []State
	switch first := b.began == q.Serving; q.Format {
	case SideOut:
		states = s.sideOutTurns(first)
	case RallyParity:
		states = s.parityTurns(first)
	case RallyOwnServe:
		states = s.ownServeTurns(first)
	default:
		states = s.fixedTurn(first)
	}
	return slices.DeleteFunc(states, func(s State) bool { return q.Server != nil && s.server != *q.Server })
}

// sideOutTurns: the turn's first server was on the right when it began (5.B.2),
// so the starting server if the team's score was even then. In a game's first
// turn the starting server is called second server (5.B).
func (s State) sideOutTurns(began bool) []State {
	own, other := s.score[s.serving], s.score[s.serving.Other()]
	low := 0
	if other >= s.Points() { // with less the game was over
		low = other - 1
	}
	states := s.turnsBegunAt(low, own)
	if opening := s.servedBy(s.Starter(s.serving)); began && other == 0 && !s.firstServer && !slices.Contains(states, opening) {
		states = append(states, opening)
	}
	return states
}

// parityTurns: a turn begins with a point won on the other team's serve, and the
// player then on the right holds it; the game's first turn begins at nil-nil.
func (s State) parityTurns(began bool) []State {
	own, other := s.score[s.serving], s.score[s.serving.Other()]
	switch {
	case other == 0 && began: // still the first turn
		return s.turnsBegunAt(0, 0)
	case other == 0:
		return s.turnsBegunAt(1, min(1, own))
	case other >= s.Points():
		return s.turnsBegunAt(other, own)
	default:
		return s.turnsBegunAt(1, own)
	}
}

// turnsBegunAt lists the states whose turn began at an own score from low to
// high, with the player then on the right as its first server.
func (s State) turnsBegunAt(low, high int) []State {
	var states []State
	for at := low; at <= min(high, low+1); at++ { // only the parity counts
		p := s.Starter(s.serving)
		if odd, second := at&1 == 1, !s.format.Rally() && !s.firstServer; odd != second {
			p = p.Partner()
		}
		states = append(states, s.servedBy(p))
	}
	return states
}

// ownServeTurns: each turn but the game's first begins with a point without a
// swap, so the points less the turns gained are the swaps of a team. The server
// stands by the parity of the own score.
func (s State) ownServeTurns(began bool) []State {
	own, other := s.score[s.serving], s.score[s.serving.Other()]
	low, high, lead := min(1, other), min(own, other), 0
	if !began {
		low, high, lead = 1, min(own, other+1), 1
	}
	if !began && own == 2 && other == 2 && s.Points() <= 2 { // gained once means 0-2 on the way, which ends so short a game
		low = 2
	}
	var states []State
	for gained := low; gained <= min(high, low+1); gained++ {
		n := s
		n.swapped[s.serving] = (own-gained)&1 == 1
		n.swapped[s.serving.Other()] = (other-gained+lead)&1 == 1
		n.server = n.On(s.serving, parity(own))
		states = append(states, n)
	}
	return states
}

// fixedTurn: the score alone decides.
func (s State) fixedTurn(began bool) []State {
	own, other := s.score[s.serving], s.score[s.serving.Other()]
	if own+other == 0 && !began {
		return nil
	}
	return []State{s.servedBy(s.On(s.serving, parity(own)))}
}

func (s State) servedBy(p Player) State {
	s.server = p
	return s
}
