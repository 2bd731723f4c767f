package clip

import "slices"

// tables are the four Huffman tables of a JPEG, in the order of usual.
type tables [4]huffman

// tally counts what a coder has written, by table and symbol.
type tally [4][256]int

// symbols are what a table must have a code for: sizes of 0 to 11 bits, and runs
// of 0 to 15 zeros before sizes of 1 to 10 bits with the two codes for zeros
// alone.
func symbols(ac bool) []byte {
	var all []byte
	if !ac {
		for size := range 12 {
			all = append(all, byte(size))
		}
		return all
	}
	all = append(all, 0x00, 0xF0)
	for run := range 16 {
		for size := 1; size <= 10; size++ {
			all = append(all, byte(run<<4|size))
		}
	}
	return all
}

// tables are those that would have written what was counted in the fewest bits.
func (t *tally) tables() tables {
	best := usual
	for i := range best {
		best[i] = fewestBits(best[i].class, symbols(i%2 == 1), &t[i])
	}
	return best
}

// reserved stands for the code of all ones, which no symbol may have.
const reserved = 256

// fewestBits is the table for some symbols that are written so often (ITU-T
// T.81, K.2). One that was never written counts as written once.
func fewestBits(class byte, symbols []byte, often *[256]int) huffman {
	trees := []tree{{1, []int{reserved}}}
	for _, s := range symbols {
		trees = append(trees, tree{often[s] + 1, []int{int(s)}})
	}
	var lengths [reserved + 1]int
	for len(trees) > 1 {
		slices.SortStableFunc(trees, func(a, b tree) int { return b.weight - a.weight })
		n := len(trees) - 2
		a, b := trees[n], trees[n+1]
		joined := tree{a.weight + b.weight, slices.Concat(a.symbols, b.symbols)}
		for _, s := range joined.symbols {
			lengths[s]++
		}
		trees = append(trees[:n], joined)
	}
	values := slices.Clone(symbols)
	slices.SortStableFunc(values, func(a, b byte) int { return lengths[a] - lengths[b] })
	return huffman{class, ofEachLength(lengths[:]), values}
}

// tree is symbols that share the beginning of their codes.
type tree struct {
	weight  int
	symbols []int
}

// ofEachLength is how many codes there are of each length from 1 bit on, none longer
// than 16 bits (Adjust_BITS), without the reserved one.
func ofEachLength(lengths []int) (counts [16]byte) {
	var n [reserved + 1]int
	for _, l := range lengths {
		n[l]++
	}
	n[0] = 0
	for l := len(n) - 1; l > 16; l-- {
		for n[l] > 0 {
			j := l - 2
			for n[j] == 0 {
				j--
			}
			n[l] -= 2 // two long codes: one takes their common beginning,
			n[l-1]++
			n[j+1] += 2 // the other shares that of a shorter one
			n[j]--
		}
	}
	longest := 16
	for n[longest] == 0 {
		longest--
	}
	n[longest]--
	for i := range counts {
		counts[i] = byte(n[i+1])
	}
	return counts
}
