package large

import (
	"bytes"
	"image"
	"testing"
)

func TestBytesAreZeroAndOnesOwn(t *testing.T) {
	for _, n := range []int{0, 1, 1 << 20, 1<<21 - 1, 1 << 21, 1<<22 + 1, 1920 * 1080 * 4} {
		a, b := Bytes(n), Bytes(n)
		if len(a) != n || len(bytes.Trim(a, "\x00")) > 0 {
			t.Errorf("%d bytes: %d, or not all zero", n, len(a))
		}
		for i := range a {
			a[i] = 1
		}
		if len(bytes.Trim(b, "\x00")) > 0 {
			t.Errorf("%d bytes share memory", n)
		}
		if c := Clone(a); !bytes.Equal(a, c) || n > 0 && &a[0] == &c[0] {
			t.Errorf("the clone of %d bytes is no copy", n)
		}
	}
}

func TestRGBAIsLikeTheStandardOne(t *testing.T) {
	for _, side := range []image.Point{{}, {-1, 4}, {1, 1}, {7, 3}, {1920, 1080}} {
		got, want := RGBA(side.X, side.Y), image.NewRGBA(image.Rect(0, 0, side.X, side.Y))
		if got.Rect != want.Rect || got.Stride != want.Stride || !bytes.Equal(got.Pix, want.Pix) {
			t.Errorf("%v: %v with %d bytes, want %v with %d", side, got.Rect, len(got.Pix), want.Rect, len(want.Pix))
		}
	}
}
