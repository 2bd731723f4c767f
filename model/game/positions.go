package game

import "homeside/model/court"

// Pair is where the partners of a team belong at a serve.
type Pair struct {
	Right, Left Player
	Known       bool // false: the score does not tell, Right is the starting server
}

// Positions is where each team's players belong, by court.End, as far as the
// call alone tells. In side-out scoring and rally-parity each team's own score
// tells it all (USA Pickleball Official Rulebook 2026, 5.B.3): the starting
// server is on the right at even, on the left at odd. In rally-fixed nobody ever
// swaps. In rally-own-serve the score tells it only of a team that cannot have won
// a point on its own serve; Query.Who knows more where the server is known.
func Positions(f Format, c Call, serving court.End, starters [2]Player) [2]Pair {
	var pairs [2]Pair
	score := scores(c, serving)
	for _, e := range court.Ends {
		starter := PlayerOf(e, starters[e].Number())
		pairs[e] = Pair{Right: starter, Left: starter.Partner(), Known: f != RallyOwnServe || cannotHaveSwapped(c, e == serving)}
		if swapsByParity(f) && parity(score[e]) == court.Left {
			pairs[e].Right, pairs[e].Left = starter.Partner(), starter
		}
	}
	return pairs
}

// cannotHaveSwapped says of the serving or the receiving team in rally-own-serve
// that it has no point won on its own serve: no point at all, or the one that
// gained it the serve.
func cannotHaveSwapped(c Call, serves bool) bool {
	if serves {
		return c.Serving == 0 || c.Serving == 1 && c.Receiving > 0
	}
	return c.Receiving == 0
}

// swapsByParity says whether a team's own score alone places its players.
func swapsByParity(f Format) bool { return f == SideOut || f == RallyParity }

// scores is the score of a call by court.End.
func scores(c Call, serving court.End) (score [2]int) {
	score[serving&1], score[serving.Other()&1] = c.Serving, c.Receiving
	return score
}
