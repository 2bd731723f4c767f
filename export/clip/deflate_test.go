package clip

import (
	"bytes"
	"compress/zlib"
	"io"
	"testing"

	"pgregory.net/rapid"
)

// The standard library's reader, which checks the sum, unpacks what was packed.
func TestDeflaterAgainstTheStandardLibrary(t *testing.T) {
	d := newDeflater()
	rapid.Check(t, func(t *rapid.T) {
		var want []byte
		d.begin()
		for range rapid.IntRange(0, 6).Draw(t, "stretches") {
			n := rapid.SampledFrom([]int{1, 2, 258, 259, 260, 70_000, 131_072}).Draw(t, "n") + rapid.IntRange(0, 300).Draw(t, "more")
			stretch, err := make([]byte, n), error(nil)
			if rapid.Bool().Draw(t, "zeros") {
				err = d.zeros(n)
			} else {
				for i := range stretch {
					stretch[i] = byte(i*i>>3) | 0xE0
				}
				err = d.write(stretch)
			}
			if err != nil {
				t.Fatal(err)
			}
			want = append(want, stretch...)
		}
		packed, err := d.end()
		if err != nil {
			t.Fatal(err)
		}
		r, err := zlib.NewReader(bytes.NewReader(packed))
		if err != nil {
			t.Fatal(err)
		}
		if got, err := io.ReadAll(r); err != nil || !bytes.Equal(got, want) {
			t.Fatalf("%d bytes came back as %d (%v)", len(want), len(got), err)
		}
	})
}

// A million zeros take a thousand bytes: two bits for 258.
func TestZerosCostLittle(t *testing.T) {
	d := newDeflater()
	d.begin()
	if err := d.zeros(1_000_000); err != nil {
		t.Fatal(err)
	}
	packed, err := d.end()
	if err != nil || len(packed) > 1_000_000/258/4+100 {
		t.Errorf("a million zeros take %d bytes (%v)", len(packed), err)
	}
}
