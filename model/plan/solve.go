package plan

import (
	"math"

	"homeside/model/court"
	"homeside/model/game"
)

// solution is a chain solved: for every node how many rallies of a game are
// expected there and how likely each team wins from there, by court.End.
type solution struct {
	rallies []float64
	win     [2][]float64
}

// solve goes through the blocks forwards for the visits, backwards for the
// results. The error is ErrEndless.
func (ch *chain) solve() (solution, error) {
	n := len(ch.nodes)
	blocks, place := make([]*block, len(ch.blocks)), make([]int, n)
	s := solution{rallies: make([]float64, n), win: [2][]float64{make([]float64, n), make([]float64, n)}}
	for i, members := range ch.blocks {
		blocks[i] = newBlock(ch, members, place)
		if !blocks[i].reduce() {
			return solution{}, ErrEndless
		}
	}
	s.rallies[0] = 1
	for i, members := range ch.blocks {
		ch.enter(blocks[i], members, place, s.rallies)
	}
	for i := len(ch.blocks) - 1; i >= 0; i-- {
		for _, e := range court.Ends {
			ch.leave(blocks[i], ch.blocks[i], place, s.win[e], e)
		}
	}
	if total := s.total(); math.IsInf(total, 0) || math.IsNaN(total) {
		return solution{}, ErrEndless
	}
	return s, nil
}

// enter turns the entries into a block into visits and passes them on.
func (ch *chain) enter(b *block, members, place []int, visits []float64) {
	v := make([]float64, len(members))
	for i, n := range members {
		v[i] = visits[n]
	}
	b.visits(v)
	for i, n := range members {
		visits[n] = v[i]
		for _, m := range ch.nodes[n].moves {
			if _, in := within(members, place, m.to); !in && m.to >= 0 {
				visits[m.to] += v[i] * m.chance
			}
		}
	}
}

// leave gives the members of a block their chance that a team wins.
func (ch *chain) leave(b *block, members, place []int, win []float64, team court.End) {
	v := make([]float64, len(members))
	for i, n := range members {
		for _, m := range ch.nodes[n].moves {
			switch _, in := within(members, place, m.to); {
			case in:
			case m.to >= 0:
				v[i] += m.chance * win[m.to]
			case m.to == resultOf(team):
				v[i] += m.chance
			}
		}
	}
	b.values(v)
	for i, n := range members {
		win[n] = min(v[i], 1) // never more, by rounding
	}
}

// total is the number of rallies expected in a game.
func (s solution) total() float64 {
	sum := 0.0
	for _, v := range s.rallies {
		sum += v
	}
	return sum
}

// Outlook is what a game comes to from a state on, whoever the players are.
type Outlook struct {
	Win     [2]float64 // chance of winning the game, by court.End
	Rallies float64    // expected
}

// OutlookOf is the outlook at a state. The error is an ErrChance or ErrEndless.
func OutlookOf(start game.State, c Chances) (Outlook, error) {
	if w, over := start.Winner(); over {
		var o Outlook
		o.Win[w] = 1
		return o, nil
	}
	if err := c.Check(); err != nil {
		return Outlook{}, err
	}
	s, err := newChain(start, scoreKey, c).solve()
	if err != nil {
		return Outlook{}, err
	}
	return Outlook{Win: [2]float64{s.win[court.Near][0], s.win[court.Far][0]}, Rallies: s.total()}, nil
}
