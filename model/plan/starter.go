package plan

import "homeside/model/game"

// Starters are the plans of one game by who of the pair is its starting server,
// by number. Who wins is the same in both.
type Starters [2]Plan

// CompareStarters plans a game with each of the pair as its starting server.
func CompareStarters(set game.Settings, pair Pair, c Chances, efforts Efforts) (Starters, error) {
	var both Starters
	for i := range both {
		set.Starters[pair.Team] = pair.Player(i + 1)
		start, err := set.Start()
		if err != nil {
			return both, err
		}
		if both[i], err = Of(start, pair, c, efforts); err != nil {
			return both, err
		}
	}
	return both, nil
}

// alike is how close two expectations are, relative to them, that differ by rounding only.
const alike = 1e-9

// Better is the starter with whom the score puts the partners less often on each
// other's sides or, if that is the same, with whom they stack less or else run
// less; false if neither.
func (s Starters) Better() (game.Player, bool) {
	for _, cost := range [3]func(Plan) float64{
		func(p Plan) float64 { return p.Swapped },
		func(p Plan) float64 { return p.Stacks },
		func(p Plan) float64 { return float64(p.Feet[0] + p.Feet[1]) },
	} {
		a, b := cost(s[0]), cost(s[1])
		switch {
		case a < b*(1-alike):
			return s[0].Pair.Player(1), true
		case b < a*(1-alike):
			return s[0].Pair.Player(2), true
		}
	}
	return s[0].Pair.Player(1), false
}
