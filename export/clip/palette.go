package clip

import (
	"cmp"
	"math"
	"slices"
)

// rgb is an opaque colour, 0xRRGGBB.
type rgb uint32

func (c rgb) channel(axis int) int { return int(c >> (16 - 8*axis) & 0xFF) }

func (c rgb) distance(d rgb) int {
	sum := 0
	for axis := range 3 {
		v := c.channel(axis) - d.channel(axis)
		sum += v * v
	}
	return sum
}

// counted is a colour and on how many pixels it stands.
type counted struct {
	c rgb
	n int
}

const (
	paletteSize = 255 // and a transparent index
	// keptExactly of the most frequent colours are in every palette: they are the
	// flat colours, on which an error would show. The others are their mixtures
	// on edges.
	keptExactly = 128
)

// newPalette is all colours if 255 are enough. Otherwise it has the most
// frequent ones and, for the rest, the means of a median cut (Heckbert, Color
// Image Quantization, SIGGRAPH 1982). It is never empty.
func newPalette(counts map[rgb]int) []rgb {
	colours := make([]counted, 0, len(counts))
	for c, n := range counts {
		colours = append(colours, counted{c, n})
	}
	slices.SortFunc(colours, func(a, b counted) int { return cmp.Or(cmp.Compare(b.n, a.n), cmp.Compare(a.c, b.c)) })
	kept := len(colours)
	if kept > paletteSize {
		kept = keptExactly
	}
	palette := make([]rgb, 0, paletteSize)
	for _, c := range colours[:kept] {
		palette = append(palette, c.c)
	}
	for _, b := range cut(colours[kept:], paletteSize-kept) {
		palette = append(palette, b.mean())
	}
	if len(palette) == 0 {
		palette = append(palette, 0)
	}
	return palette
}

// cut divides colours into at most n boxes, always halving the one that errs most.
func cut(colours []counted, n int) []box {
	if len(colours) == 0 {
		return nil
	}
	boxes := []box{newBox(colours)}
	for len(boxes) < n {
		worst := 0
		for i := range boxes {
			if boxes[i].weight > boxes[worst].weight {
				worst = i
			}
		}
		if boxes[worst].weight == 0 {
			break
		}
		low, high := boxes[worst].halves()
		boxes[worst] = low
		boxes = append(boxes, high)
	}
	return boxes
}

// box holds neighbouring colours.
type box struct {
	colours []counted
	axis    int // the longest
	weight  int // pixels times the square of the longest side; 0 for one colour
}

func newBox(colours []counted) box {
	b, longest, pixels := box{colours: colours}, 0, 0
	for axis := range 3 {
		low, high := 255, 0
		for _, c := range colours {
			v := c.c.channel(axis)
			low, high = min(low, v), max(high, v)
		}
		if high-low > longest {
			b.axis, longest = axis, high-low
		}
	}
	for _, c := range colours {
		pixels += c.n
	}
	b.weight = pixels * longest * longest
	return b
}

// halves divides a box of two colours or more at the median pixel of its
// longest axis.
func (b box) halves() (low, high box) {
	slices.SortFunc(b.colours, func(p, q counted) int {
		return cmp.Or(cmp.Compare(p.c.channel(b.axis), q.c.channel(b.axis)), cmp.Compare(p.c, q.c))
	})
	pixels := 0
	for _, c := range b.colours {
		pixels += c.n
	}
	at, below := 0, 0
	for at < len(b.colours)-1 && (at == 0 || below+b.colours[at].n <= pixels/2) {
		below += b.colours[at].n
		at++
	}
	return newBox(b.colours[:at]), newBox(b.colours[at:])
}

func (b box) mean() rgb {
	var sum [3]int
	pixels := 0
	for _, c := range b.colours {
		for axis := range sum {
			sum[axis] += c.c.channel(axis) * c.n
		}
		pixels += c.n
	}
	mean := rgb(0)
	for _, s := range sum {
		mean = mean<<8 | rgb((s+pixels/2)/pixels)
	}
	return mean
}

// indexer finds the nearest colour of a palette and remembers it. It is not
// safe for two goroutines at once.
type indexer struct {
	palette []rgb
	known   map[rgb]uint8
	recent  [1 << 12]uint64 // a colour asked for lately, its index, and that there is one
}

func newIndexer(palette []rgb) *indexer {
	x := &indexer{palette: palette, known: make(map[rgb]uint8, 4*len(palette))}
	for i, c := range palette {
		if _, ok := x.known[c]; !ok {
			x.known[c] = uint8(i)
		}
	}
	return x
}

func (x *indexer) index(c rgb) uint8 {
	slot := &x.recent[uint32(c)*0x9E3779B1>>20]
	if key := uint64(c)<<8 | 1<<63; *slot&^0xFF != key {
		*slot = key | uint64(x.find(c))
	}
	return uint8(*slot)
}

func (x *indexer) find(c rgb) uint8 {
	if i, ok := x.known[c]; ok {
		return i
	}
	best, least := 0, math.MaxInt
	for i, p := range x.palette {
		if d := c.distance(p); d < least {
			best, least = i, d
		}
	}
	x.known[c] = uint8(best)
	return uint8(best)
}
