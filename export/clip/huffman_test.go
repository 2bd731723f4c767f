package clip

import (
	"context"
	"io"
	"testing"

	"pgregory.net/rapid"

	"homeside/export"
	_ "homeside/internal/fixedseed"
)

// bitsOf is how many bits the codes of what was counted take in a table.
func bitsOf(h huffman, often *[256]int) int {
	sum, codes := 0, h.codes()
	for s, n := range often {
		sum += n * int(codes[s].n)
	}
	return sum
}

// Whatever is counted, a table has a code of 1 to 16 bits for every symbol, none
// is the beginning of another, none is all ones, and it takes no more bits than
// the usual table.
func TestFewestBits(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		i := rapid.IntRange(0, 3).Draw(t, "table")
		all, often := symbols(i%2 == 1), [256]int{}
		steep := rapid.IntRange(0, 30).Draw(t, "steep")
		for k, s := range all {
			often[s] = rapid.IntRange(0, 1<<min(steep, k)).Draw(t, "often")
		}
		h := fewestBits(usual[i].class, all, &often)
		checkCodes(t, h, all)
		if got, most := bitsOf(h, &often), bitsOf(usual[i], &often); got > most+17*len(all) { // those that never came count once
			t.Errorf("%d bits, the usual table takes %d", got, most)
		}
	})
}

func checkCodes(t *rapid.T, h huffman, all []byte) {
	t.Helper()
	room, codes := 0, h.codes()
	for _, s := range all {
		c := codes[s]
		if c.n < 1 || c.n > 16 || c.bits >= 1<<c.n || c.bits == 1<<c.n-1 {
			t.Fatalf("symbol %#x has the code %b of %d bits", s, c.bits, c.n)
		}
		room += 1 << (16 - c.n)
	}
	if room >= 1<<16 || len(h.values) != len(all) {
		t.Fatalf("the codes of %d symbols take %d 65536ths", len(h.values), room)
	}
	seen := map[uint32]bool{}
	for _, s := range all {
		for c, n := codes[s].bits<<(16-codes[s].n), 0; n < 1<<(16-codes[s].n); n++ {
			if seen[c+uint32(n)] {
				t.Fatalf("the code of %#x begins like another", s)
			}
			seen[c+uint32(n)] = true
		}
	}
}

// Weights 1, 1, 2, 4, 8 and the reserved code: a tree as deep as it can be, by
// hand.
func TestFewestBitsByHand(t *testing.T) {
	often := [256]int{0: 15, 1: 7, 2: 3, 3: 1}
	h := fewestBits(0, []byte{0, 1, 2, 3}, &often)
	if h.counts != [16]byte{1, 1, 1, 1} || string(h.values) != "\x00\x01\x02\x03" {
		t.Errorf("lengths %v of %v, want 1, 2, 3, 4 bits", h.counts, h.values)
	}
}

// A clip takes codes that suit it: smaller by 7 % at least than with the usual.
func TestAVITakesItsOwnCodes(t *testing.T) {
	o := export.Options{Width: 480, Height: 270, FPS: 2}
	f, err := newFilm(builtIn(t), &o, "an AVI", export.MaxFPS)
	if err != nil {
		t.Fatal(err)
	}
	before, now := len(newJPEGMaker(f, &usual).jpeg(nil, 3)), len(newJPEGMaker(f, &usual).suited().jpeg(nil, 3))
	if float64(now) > 0.93*float64(before) {
		t.Errorf("a frame has %d bytes with its own codes, %d with the usual", now, before)
	}
	if err := WriteAVI(context.Background(), io.Discard, builtIn(t), &o); err != nil {
		t.Error(err)
	}
}
