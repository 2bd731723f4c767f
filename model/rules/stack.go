package rules

import (
	"homeside/model/court"
	"homeside/model/finding"
	"homeside/model/game"
)

// stacked: partners may stand anywhere on their own side of the net (5.B.4).
// Students ask, so it is said. Where nobody ever changes sides in the score,
// stacking and switching have no purpose.
func stacked(s *sheet) []finding.Finding {
	var all []finding.Finding
	for _, e := range court.Ends {
		main, ok := s.main(e)
		if !ok {
			continue
		}
		partner := main.Partner()
		place := s.serve.Players[partner].Run.Place
		beside, swaps := s.beside(main, place), s.lesson.Scoring.Format.SwapsSides()
		id := finding.StackLegal
		switch {
		case settled(place).Y*e.Sign() < 0: // over the net, which is not legal
			continue
		case !swaps && (beside || s.switches(e)):
			id = finding.StackUseless
		case !beside:
			continue
		}
		all = append(all, finding.New(id, 0, place, finding.Is("partner", main)).About(partner))
	}
	return all
}

// main is the player of a team whose place counts at the serve: the server, or
// who returns.
func (s *sheet) main(e court.End) (game.Player, bool) {
	switch {
	case e == s.server.Team():
		return s.server, true
	case len(s.Strokes) > 1:
		return s.Strokes[1].By, true
	default:
		return 0, false
	}
}

// beside says whether a partner's place is stacked: in the same half of the court
// as the player's, or off the court beyond a sideline.
func (s *sheet) beside(main game.Player, place court.Point) bool {
	e := main.Team()
	same := court.SideOf(e, place) == court.SideOf(e, s.serve.Players[main].Run.Place)
	return same || max(place.X, -place.X) > court.HalfWidth
}

// switches says whether both partners of a team end in the other half.
func (s *sheet) switches(e court.End) bool {
	last := s.frames[len(s.frames)-1]
	for n := range 2 {
		id := game.PlayerOf(e, n+1)
		if court.SideOf(e, s.serve.Players[id].Run.Place) == court.SideOf(e, last.Players[id].Run.Place) {
			return false
		}
	}
	return true
}
