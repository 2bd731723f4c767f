package large

import "image"

// Bytes are n bytes, all 0.
func Bytes(n int) []byte { return fresh(n) }

// Clone is a copy of b.
func Clone(b []byte) []byte {
	c := Bytes(len(b))
	copy(c, b)
	return c
}

// RGBA is a transparent image like that of image.NewRGBA.
func RGBA(width, height int) *image.RGBA {
	box := image.Rect(0, 0, width, height)
	return &image.RGBA{Pix: Bytes(4 * box.Dx() * box.Dy()), Stride: 4 * box.Dx(), Rect: box}
}
