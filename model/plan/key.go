package plan

import (
	"homeside/model/court"
	"homeside/model/game"
)

// key is what makes two states of a game one state of a chain.
type key struct {
	score   [2]int
	serving court.End
	number  int            // the server number of the call; 0 in rally scoring
	server  game.Player    // with the persons only
	right   [2]game.Player // likewise: who belongs on the right, by court.End
}

// scoreKey tells no persons apart: enough for who wins and how long it takes. Past
// deuce n-all is (n-1)-all again. In side-out scoring it makes 4n^2+8 states,
// with the two results the 4n^2+10 of arXiv:2303.02942.
func scoreKey(s game.State) key {
	return key{score: backBy(1, s), serving: s.Serving(), number: s.Call().Server}
}

// personKey tells the persons apart. Past deuce a score goes back by two points
// each: by one, the pairs would change sides.
func personKey(s game.State) key {
	k := key{score: backBy(2, s), serving: s.Serving(), number: s.Call().Server, server: s.Server()}
	for _, e := range court.Ends {
		k.right[e] = s.On(e, court.Right)
	}
	return k
}

// backBy is a state's score with steps of so many points each taken off both
// teams while both have n-1 points or more.
func backBy(step int, s game.State) [2]int {
	score := s.Score()
	if past := min(score[0], score[1]) - (s.Points() - 1); past > 0 {
		past -= past % step
		score[0], score[1] = score[0]-past, score[1]-past
	}
	return score
}
