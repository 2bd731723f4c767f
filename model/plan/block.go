package plan

// block is a few nodes that lead to one another, reduced state by state without
// any subtraction (Grassmann, Taksar & Heyman 1985, Operations Research 33, from
// memory), so that small chances lose no digits.
type block struct {
	inside [][]float64 // [i][j]: the chance of moving from i to j; once j is reduced, of moving there per way out of j
	exit   []float64   // the chance of leaving the block
	out    []float64   // the chance of moving on from i to what was not reduced before it
}

// newBlock takes the moves among the nodes of a block.
func newBlock(ch *chain, members []int, place []int) *block {
	m := len(members)
	b := &block{exit: make([]float64, m), out: make([]float64, m), inside: make([][]float64, m)}
	for i := range b.inside {
		b.inside[i] = make([]float64, m)
	}
	for i, n := range members {
		place[n] = i
	}
	for i, n := range members {
		for _, mv := range ch.nodes[n].moves {
			if j, in := within(members, place, mv.to); in {
				b.inside[i][j] += mv.chance
			} else {
				b.exit[i] += mv.chance
			}
		}
	}
	return b
}

// within is a node's place among the members; false for another block's node or
// a result.
func within(members, place []int, n int) (int, bool) {
	if n < 0 || place[n] >= len(members) || members[place[n]] != n {
		return 0, false
	}
	return place[n], true
}

// reduce takes the states out one by one, the last first; false if there is no
// way out of one.
func (b *block) reduce() bool {
	for k := len(b.exit) - 1; k >= 0; k-- {
		out := b.exit[k]
		for j := range k {
			out += b.inside[k][j]
		}
		if !(out > 0) {
			return false
		}
		b.out[k] = out
		for i := range k {
			b.inside[i][k] /= out
			f := b.inside[i][k]
			for j := range k {
				b.inside[i][j] += f * b.inside[k][j]
			}
			b.exit[i] += f * b.exit[k]
		}
	}
	return true
}

// visits turns how often each state is entered from outside into how often it is
// visited, in place.
func (b *block) visits(v []float64) {
	for k := len(v) - 1; k >= 0; k-- {
		for j := range k {
			v[j] += v[k] / b.out[k] * b.inside[k][j]
		}
	}
	for k := range v {
		v[k] /= b.out[k]
		for i := range k {
			v[k] += v[i] * b.inside[i][k]
		}
	}
}

// values turns what each state gains at a visit and on the way out into what is
// gained from it on, in place.
func (b *block) values(v []float64) {
	for k := len(v) - 1; k >= 0; k-- {
		for i := range k {
			v[i] += b.inside[i][k] * v[k]
		}
	}
	for k := range v {
		for j := range k {
			v[k] += b.inside[k][j] * v[j]
		}
		v[k] /= b.out[k]
	}
}
