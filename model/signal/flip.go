package signal

import (
	"slices"

	"homeside/model/lesson"
)

// Advice is a mix in one word.
type Advice uint8

// The advice, from never switching to always.
const (
	AlwaysStay Advice = iota
	MostlyStay        // half and half counts as this: when unsure, stay
	MostlySwitch
	AlwaysSwitch
)

var adviceNames = [...]string{"always stay", "mostly stay", "mostly switch", "always switch"}

// String is the advice in words.
func (a Advice) String() string { return adviceNames[a&3] }

// Advice is the mix in one word.
func (m Mix) Advice() Advice {
	switch {
	case m.Saddle && m.Switch == 0:
		return AlwaysStay
	case m.Saddle:
		return AlwaysSwitch
	case m.Switch <= 0.5:
		return MostlyStay
	default:
		return MostlySwitch
	}
}

// Flip is where the advice changes if one of the four chances is another and the
// other three stay.
type Flip struct {
	Do     Action
	Aim    Aim
	At     float64 // the chance at which it changes
	Up     bool    // it changes when the chance rises to At; else when it falls to it
	Advice Advice  // beyond At
}

// Flips lists, for each of the four chances, the nearest change of the advice
// upwards and downwards within [0, 1].
func (g Game) Flips() []Flip {
	var flips []Flip
	for _, do := range Actions {
		for _, aim := range Aims {
			for _, up := range [2]bool{false, true} {
				if at, then, ok := g.flip(do, aim, up); ok {
					flips = append(flips, Flip{do, aim, at, up, then})
				}
			}
		}
	}
	return flips
}

// flip looks for the next change of the advice in one direction. The advice can
// change only where the chance equals its neighbour in the row or column, or
// where the best mix is half and half.
func (g Game) flip(do Action, aim Aim, up bool) (at float64, then Advice, ok bool) {
	now, edge := g[do][aim], 0.0
	if up {
		edge = 1
	}
	beyond := func(x float64) bool { return x != edge && (x > now == up || x == now) && x >= 0 && x <= 1 }
	row, column, across := g[do][aim^1], g[do^1][aim], g[do^1][aim^1]
	places := slices.DeleteFunc([]float64{now, row, column, row + across - column}, func(x float64) bool { return !beyond(x) })
	slices.Sort(places)
	if !up {
		slices.Reverse(places)
	}
	advice := g.Best().Advice()
	for i, x := range places {
		next := edge
		if i+1 < len(places) {
			next = places[i+1]
		}
		g[do][aim] = (x + next) / 2
		if then := g.Best().Advice(); x != next && then != advice {
			return x, then, true
		}
	}
	return 0, 0, false
}

// Rallies is how many rallies in a row, won if the flip is upwards or else lost,
// carry a count past the flip; at least 1, 0 if no number does.
func (f Flip) Rallies(c lesson.Count) int {
	for k := 1; k <= mostRallies; k++ {
		won := c.Won
		if f.Up {
			won += k
		}
		if p := float64(won) / float64(c.Rallies+k); f.Up && p > f.At || !f.Up && p < f.At {
			return k
		}
	}
	return 0
}

// mostRallies is where Flip.Rallies gives up: far more than a season of one pair.
const mostRallies = 10000
