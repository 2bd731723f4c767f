package clip

import (
	"bytes"
	"compress/lzw"
	"io"
	"testing"

	"pgregory.net/rapid"
)

// The standard library's reader unpacks what was packed, with tables that fill
// up as well, and its writer does not pack it closer.
func TestPackerAgainstTheStandardLibrary(t *testing.T) {
	var p packer
	rapid.Check(t, func(t *rapid.T) {
		bits := rapid.IntRange(2, 8).Draw(t, "bits")
		var want []byte
		p.begin(bits)
		for range rapid.IntRange(0, 30).Draw(t, "stretches") {
			b := byte(rapid.IntRange(0, 1<<bits-1).Draw(t, "index"))
			n := rapid.SampledFrom([]int{1, 1, 2, 3, 17, 400, 70_000}).Draw(t, "n")
			if rapid.Bool().Draw(t, "mixed") {
				for i := range n % 9001 {
					b = byte(i*i>>3+i) & (1<<bits - 1)
					p.add(b, 1)
					want = append(want, b)
				}
				continue
			}
			p.add(b, n)
			want = append(want, bytes.Repeat([]byte{b}, n)...)
		}
		packed := p.end()
		got, err := io.ReadAll(lzw.NewReader(bytes.NewReader(packed), lzw.LSB, bits))
		if err != nil || !bytes.Equal(got, want) {
			t.Fatalf("%d indices of %d bits came back as %d (%v)", len(want), bits, len(got), err)
		}
		var theirs bytes.Buffer
		w := lzw.NewWriter(&theirs, lzw.LSB, bits)
		if _, err := w.Write(want); err != nil {
			t.Fatal(err)
		}
		if err := w.Close(); err != nil {
			t.Fatal(err)
		}
		if len(want) > 0 && len(packed) > theirs.Len() {
			t.Fatalf("%d indices are packed into %d bytes, the standard library needs %d", len(want), len(packed), theirs.Len())
		}
	})
}
