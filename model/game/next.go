package game

import "homeside/model/court"

// Next is the state after a rally won by a team. A game that is over stays as
// it is.
func (s State) Next(winner court.End) State {
	winner &= 1
	switch {
	case s.Over():
		return s
	case s.format.Rally():
		return s.nextRally(winner)
	default:
		return s.nextSideOut(winner)
	}
}

// nextSideOut follows USA Pickleball Official Rulebook 2026, 4.A and 5.B.
func (s State) nextSideOut(winner court.End) State {
	switch {
	case winner == s.serving: // 5.B.5: a point, and the serving partners change sides
		s.score[winner]++
		s.swapped[winner] = !s.swapped[winner]
	case s.firstServer: // 5.B.5: the partner serves, from where that player correctly is
		s.firstServer = false
		s.server = s.server.Partner()
	default: // 5.B.6 side out; 5.B.2: the player correctly on the right serves first
		s.serving = winner
		s.firstServer = true
		s.server = s.On(winner, court.Right)
	}
	return s
}

// nextRally follows 14.A for rally-parity, and club practice for the others.
func (s State) nextRally(winner court.End) State {
	held := winner == s.serving
	s.score[winner]++
	s.serving = winner
	if s.format == RallyParity || s.format == RallyOwnServe && held {
		s.swapped[winner] = !s.swapped[winner]
	}
	switch {
	case s.format == RallyFixed, s.format == RallyOwnServe && !held:
		s.server = s.On(winner, parity(s.score[winner]))
	case !held:
		s.server = s.On(winner, court.Right)
	}
	return s
}

// parity is the court of a score: even right, odd left (5.B.3).
func parity(score int) court.Side { return court.Side(score & 1) }

// WinnerTo is the team whose winning of this rally leads to a call by a team;
// false if no rally does, so that the call does not follow on this state.
func (s State) WinnerTo(c Call, serving court.End) (court.End, bool) {
	if s.Over() {
		return court.Near, false
	}
	for _, w := range court.Ends {
		if n := s.Next(w); n.serving == serving && n.Call() == c {
			return w, true
		}
	}
	return court.Near, false
}

// ChangesEnds says whether the teams change ends between two states of one game
// (21.B): the later one is the first past the middle score. A game that is over
// changes no ends.
func ChangesEnds(before, after State) bool {
	return !before.PastEndChange() && after.PastEndChange() && !after.Over()
}
