package plan

import (
	"cmp"
	"slices"

	"homeside/model/court"
	"homeside/model/game"
)

// chain is a game as a Markov chain: the states that are one by a key, from the
// one at which it begins, node 0. Only what can happen is in it.
type chain struct {
	nodes  []node
	blocks [][]int // numbers of nodes in the order of play: no move leads back to an earlier block
}

// node is a state of the chain with its moves.
type node struct {
	state game.State // the first state that was met; past deuce it stands for all alike
	moves []move
}

// move is a rally's outcome. It leads to a node or to a result.
type move struct {
	chance float64
	to     int // number of the node; -1-winner for a result
}

func resultOf(winner court.End) int { return -1 - int(winner) }

// newChain walks every game from a state that is not over.
func newChain(start game.State, keyOf func(game.State) key, c Chances) *chain {
	ch := &chain{nodes: []node{{state: start}}}
	known := map[key]int{keyOf(start): 0}
	find := func(s game.State) int {
		if w, over := s.Winner(); over {
			return resultOf(w)
		}
		k := keyOf(s)
		i, met := known[k]
		if !met {
			i = len(ch.nodes)
			known[k] = i
			ch.nodes = append(ch.nodes, node{state: s})
		}
		return i
	}
	for i := 0; i < len(ch.nodes); i++ {
		s := ch.nodes[i].state
		for _, w := range court.Ends {
			if p := c.of(s, w); p > 0 {
				m := move{p, find(s.Next(w))}
				ch.nodes[i].moves = append(ch.nodes[i].moves, m)
			}
		}
	}
	ch.blocks = ch.order()
	return ch
}

// order groups the nodes by score: without a point the score stays, and points
// only grow, but for deuce and beyond, which is one block and the last.
func (ch *chain) order() [][]int {
	at := map[[2]int][]int{}
	for i := range ch.nodes {
		s := ch.nodes[i].state
		score := s.Score()
		if deuce := s.Points() - 1; min(score[0], score[1]) >= deuce {
			score = [2]int{deuce, deuce}
		}
		at[score] = append(at[score], i)
	}
	scores := make([][2]int, 0, len(at))
	for score := range at {
		scores = append(scores, score)
	}
	slices.SortFunc(scores, func(a, b [2]int) int {
		return cmp.Or(cmp.Compare(a[0]+a[1], b[0]+b[1]), cmp.Compare(a[0], b[0]))
	})
	blocks := make([][]int, len(scores))
	for i, score := range scores {
		blocks[i] = at[score]
	}
	return blocks
}
