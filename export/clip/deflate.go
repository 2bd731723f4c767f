package clip

import (
	"bytes"
	"compress/flate"
	"encoding/binary"
	"fmt"
	"hash/adler32"
	"io"
)

// deflater makes a zlib stream (RFC 1950 over RFC 1951) of written bytes and of
// long stretches of zeros, which cost next to nothing.
type deflater struct {
	out    bytes.Buffer
	packer *flate.Writer
	open   bool   // the packer has bytes of its own
	sum    uint32 // Adler-32 of all so far
}

func newDeflater() *deflater {
	p, err := flate.NewWriter(io.Discard, flate.BestSpeed)
	if err != nil {
		panic(err) // there is no such level
	}
	return &deflater{packer: p}
}

func (d *deflater) begin() {
	d.out.Reset()
	d.out.Write([]byte{0x78, 0x01})
	d.open, d.sum = false, 1
}

func (d *deflater) write(b []byte) error {
	if !d.open {
		d.packer.Reset(&d.out)
		d.open = true
	}
	d.sum = joinAdler(d.sum, adler32.Checksum(b), len(b))
	if _, err := d.packer.Write(b); err != nil {
		return fmt.Errorf("pack: %w", err)
	}
	return nil
}

// zeroBlock begins a block of zeros with the first of them: three codes of its
// own, 0 for the last byte 258 times again at 1 back (another bit 0), 10 for a
// zero, 11 for the end (RFC 1951, 3.2.7). Its last byte has zeroBlockBits%8 bits.
var zeroBlock = []byte{0xEC, 0xC0, 0x81, 0, 0, 0, 0, 0x80, 0xA0, 0xFD, 0xA9, 0x17, 0xA9, 0}

const zeroBlockBits = 105

// zeros adds n of them, at least 1, as a block, and a stored block of nothing,
// which fills the last byte.
func (d *deflater) zeros(n int) error {
	if err := d.flush(); err != nil {
		return err
	}
	again, single := (n-1)/258, (n-1)%258
	at := zeroBlockBits + 2*again
	b := make([]byte, (at+2*single+2+3+7)/8)
	copy(b, zeroBlock)
	set := func(bit int) { b[bit/8] |= 1 << (bit % 8) }
	for range single {
		set(at)
		at += 2
	}
	set(at)
	set(at + 1)
	d.out.Write(append(b, 0, 0, 0xFF, 0xFF))
	d.sum = joinAdler(d.sum, uint32(n%adlerPrime)<<16|1, n)
	return nil
}

func (d *deflater) flush() error {
	if !d.open {
		return nil
	}
	d.open = false
	if err := d.packer.Flush(); err != nil {
		return fmt.Errorf("pack: %w", err)
	}
	return nil
}

// end gives the stream; it is lent until begin.
func (d *deflater) end() ([]byte, error) {
	if err := d.flush(); err != nil {
		return nil, err
	}
	d.out.Write([]byte{1, 0, 0, 0xFF, 0xFF}) // the last block, stored, of nothing
	d.out.Write(binary.BigEndian.AppendUint32(nil, d.sum))
	return d.out.Bytes(), nil
}

const adlerPrime = 65521

// joinAdler is the Adler-32 of n bytes with the sum next after bytes with the sum sum.
func joinAdler(sum, next uint32, n int) uint32 {
	const prime = adlerPrime
	a1, b1, a2, b2 := uint64(sum&0xFFFF), uint64(sum>>16), uint64(next&0xFFFF), uint64(next>>16)
	a := (a1 + a2 + prime - 1) % prime
	b := (b1 + b2 + uint64(n)%prime*(a1+prime-1)) % prime
	return uint32(b<<16 | a)
}
