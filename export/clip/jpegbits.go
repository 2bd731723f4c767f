package clip

import (
	"encoding/binary"
	"math/bits"
)

// coder writes blocks as the bits of a JPEG's scan (ITU-T T.81, F.1.2).
type coder struct {
	out   []byte
	acc   uint64 // bits not yet in out, the oldest highest
	held  uint
	last  [3]int32     // the DC of the block before, by component
	steps [2][64]int32 // of the quantiser, in zigzag order
	recip [2][64]uint64
	codes [4][256]code
	often tally
}

func newCoder(quality int32, t *tables) *coder {
	k := &coder{steps: scaledQuant(quality)}
	for i, h := range t {
		k.codes[i] = h.codes()
	}
	for i := range k.steps {
		for z, step := range k.steps[i] {
			k.recip[i][z] = 1<<32/uint64(8*step) + 1
		}
	}
	return k
}

// begin starts a stretch between restart markers.
func (k *coder) begin() { k.out, k.last = k.out[:0], [3]int32{} }

// end fills the last byte with ones.
func (k *coder) end() {
	k.put(0x7F, 7)
	for ; k.held >= 8; k.held -= 8 {
		k.byte(byte(k.acc >> (k.held - 8)))
	}
	k.acc, k.held = 0, 0
}

// put writes n bits, 32 at most. They go out four bytes at a time.
func (k *coder) put(v uint32, n uint) {
	k.acc = k.acc<<n | uint64(v)
	if k.held += n; k.held >= 32 {
		k.held -= 32
		k.four(uint32(k.acc >> k.held))
	}
}

// four writes four bytes.
func (k *coder) four(v uint32) {
	if full := ^v; (full-0x01010101)&^full&0x80808080 == 0 { // no byte is 0xFF
		k.out = binary.BigEndian.AppendUint32(k.out, v)
		return
	}
	for shift := 24; shift >= 0; shift -= 8 {
		k.byte(byte(v >> shift))
	}
}

// byte writes a byte of the scan: 0xFF would begin a marker but for the 0 after it.
func (k *coder) byte(b byte) {
	k.out = append(k.out, b)
	if b == 0xFF {
		k.out = append(k.out, 0)
	}
}

// symbol writes a Huffman code and the bits of the value it announces: run zeros
// before a value that is not 0.
func (k *coder) symbol(table, run int, v int32) {
	size, low := uint(bits.Len32(uint32(max(v, -v)))), v
	if v < 0 {
		low--
	}
	s := run<<4 | int(size)
	k.often[table][s]++
	c := k.codes[table][s]
	k.put(c.bits<<size|uint32(low)&(1<<size-1), uint(c.n)+size)
}

// samples writes a block of samples of a component, 0 for brightness. The block
// is used up.
func (k *coder) samples(component int, b *block) {
	b.dct()
	table := min(component, 1)
	recip, steps := &k.recip[table], &k.steps[table]
	k.mean(component, b[0])
	ac, run := 2*table+1, 0
	for z := 1; z < 64; z++ {
		v := b[zigzag[z]&63]
		if half := 4 * steps[z]; -half < v && v < half { // most are nothing
			run++
			continue
		}
		for ; run > 15; run -= 16 {
			k.zeros(ac, 0xF0)
		}
		k.symbol(ac, run, quantise(v, steps[z], recip[z]))
		run = 0
	}
	if run > 0 {
		k.zeros(ac, 0)
	}
}

// zeros writes one of the two codes for zeros alone: 0xF0 for sixteen, 0 for all
// that are left.
func (k *coder) zeros(table int, s byte) {
	k.often[table][s]++
	c := k.codes[table][s]
	k.put(c.bits, uint(c.n))
}

// mean writes the first coefficient of a block, times 8.
func (k *coder) mean(component int, v int32) {
	table := min(component, 1)
	dc := quantise(v, k.steps[table][0], k.recip[table][0])
	k.symbol(2*table, 0, dc-k.last[component])
	k.last[component] = dc
}

// level writes a block that has the same sample everywhere.
func (k *coder) level(component int, sample int32) {
	k.mean(component, 64*sample)
	k.zeros(2*min(component, 1)+1, 0)
}

// quantise is v over 8 steps, rounded.
func quantise(v, step int32, recip uint64) int32 {
	n := int32(uint64(max(v, -v)+4*step) * recip >> 32)
	if v < 0 {
		return -n
	}
	return n
}
