package game

import (
	"math"
	"testing"

	"homeside/model/court"
)

// The whole side-out game as a Markov chain whose moves are this package's own:
// DeFord & Ethier 2023, arXiv:2303.02942. States that differ in the players but
// not in score, serving team and server number are one; n-all is (n-1)-all
// again. With the two results that makes 4n^2+10 states.

// node is a state of the chain.
type node struct {
	score   [2]int
	serving court.End // or the winner
	server  int       // 0 when the game is over
}

func nodeOf(s State) node {
	if w, won := s.Winner(); won {
		return node{serving: w}
	}
	score := s.Score()
	past := max(0, min(score[0], score[1])-(s.Points()-1))
	return node{[2]int{score[0] - past, score[1] - past}, s.Serving(), s.Call().Server}
}

// chain is each node's followers: after a point for the serving team, and after
// a lost rally.
type chain map[node][2]node

// chainOf takes the moves from a walk through every game some way past deuce.
// States that are one in the chain must move alike.
func chainOf(t *testing.T, n int) chain {
	t.Helper()
	c := chain{}
	for s := range reachable(t, Settings{To: n}, n+4) {
		moves := [2]node{nodeOf(s.Next(s.Serving())), nodeOf(s.Next(s.Serving().Other()))}
		if known, ok := c[nodeOf(s)]; ok && known != moves {
			t.Fatalf("%v in a game to %d moves to %v, another state of its node to %v", s.Call(), n, moves, known)
		}
		c[nodeOf(s)] = moves
	}
	return c
}

// solve gives each node's expected sum of `step` a rally and `won` if the near
// team wins, where the serving team wins a rally with probability p. The points
// played only grow, so it goes from the last block of equal points to the first.
func (c chain) solve(n int, p, step, won float64) map[node]float64 {
	blocks := make([][]node, 2*n-1)
	for id := range c {
		points := min(id.score[0]+id.score[1], 2*n-2) // (n-1)-all and one ahead of it lead to each other
		blocks[points] = append(blocks[points], id)
	}
	value := map[node]float64{{serving: court.Near}: won, {serving: court.Far}: 0}
	for i := len(blocks) - 1; i >= 0; i-- {
		c.solveBlock(blocks[i], p, step, value)
	}
	return value
}

func (c chain) solveBlock(block []node, p, step float64, value map[node]float64) {
	index := map[node]int{}
	for i, id := range block {
		index[id] = i
	}
	rows := make([][]float64, len(block))
	for i, id := range block {
		row := make([]float64, len(block)+1)
		row[i], row[len(block)] = 1, step
		for k, prob := range [2]float64{p, 1 - p} {
			to := c[id][k]
			if j, inside := index[to]; inside {
				row[j] -= prob
			} else {
				row[len(block)] += prob * value[to]
			}
		}
		rows[i] = row
	}
	for i, v := range eliminate(rows) {
		value[block[i]] = v
	}
}

// eliminate solves a linear system by Gauss-Jordan with row pivots; each row ends
// with its right-hand side.
func eliminate(rows [][]float64) []float64 {
	n := len(rows)
	out := make([]float64, n)
	for i := range n {
		best := i
		for j := i + 1; j < n; j++ {
			if math.Abs(rows[j][i]) > math.Abs(rows[best][i]) {
				best = j
			}
		}
		rows[i], rows[best] = rows[best], rows[i]
		for j := range n {
			if k := rows[j][i] / rows[i][i]; j != i && k != 0 {
				for m := i; m <= n; m++ {
					rows[j][m] -= k * rows[i][m]
				}
			}
		}
	}
	for i := range n {
		out[i] = rows[i][n] / rows[i][i]
	}
	return out
}

// The number of states is the paper's 4n^2+10.
func TestChainSize(t *testing.T) {
	for n, want := range map[int]int{11: 494, 15: 910, 21: 1774} {
		if got := len(chainOf(t, n)) + 2; got != want || want != 4*n*n+10 {
			t.Errorf("game to %d has %d states, want %d", n, got, want)
		}
	}
}

var firstServe = node{serving: court.Near, server: 2}

// The first-serving team is very slightly worse off at 11 and very slightly
// better off at 15: the signs are the paper's. The figures were computed once
// apart from this program, by exact algebra, for p = 0.5.
func TestChainEdge(t *testing.T) {
	for _, c := range []struct {
		n                  int
		sign, edge, within float64 // P(first-serving team wins) - 0.5
	}{
		{11, -1, 0.49999999752211 - 0.5, 1e-14},
		{15, +1, 5.0297e-12, 1e-15},
	} {
		got := chainOf(t, c.n).solve(c.n, 0.5, 0, 1)[firstServe] - 0.5
		if got*c.sign <= 0 || math.Abs(got-c.edge) > c.within {
			t.Errorf("game to %d: edge %.5g, want %.5g", c.n, got, c.edge)
		}
	}
}

// The expected number of rallies, computed once apart from this program, by
// exact algebra.
func TestChainRallies(t *testing.T) {
	for _, c := range []struct {
		n          int
		p, rallies float64
	}{
		{11, 0.5, 34.9606697127},
		{15, 0.5, 49.1038268204},
		{11, 0.44, 40.2253669866},
	} {
		if got := chainOf(t, c.n).solve(c.n, c.p, 1, 0)[firstServe]; math.Abs(got-c.rallies) > 1e-9 {
			t.Errorf("game to %d, p %v: %.10f rallies expected, want %.10f", c.n, c.p, got, c.rallies)
		}
	}
}
