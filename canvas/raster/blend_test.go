package raster

import (
	"image"
	"image/color"
	"math"
	"testing"

	"pgregory.net/rapid"
)

func TestPart(t *testing.T) {
	for v := range uint32(255*255 + 1) {
		if got, want := part(v), uint32(math.Round(float64(v)/255)); got != want {
			t.Fatalf("part(%d) = %d, want %d", v, got, want)
		}
	}
}

// Blending is Porter and Duff's over (Compositing Digital Images, SIGGRAPH
// 1984), to a level or two, in the box and in the picture only.
func TestBlend(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		level := func(name string) uint8 { return rapid.SampledFrom([]uint8{0, 1, 100, 254, 255}).Draw(t, name) }
		c := color.NRGBA{level("r"), level("g"), level("b"), level("a")}
		img, box := striped(40, 3), image.Rect(0, 0, rapid.IntRange(1, 40).Draw(t, "w"), 3)
		box = box.Add(image.Pt(rapid.IntRange(-20, 30).Draw(t, "x"), rapid.IntRange(-2, 2).Draw(t, "y")))
		mask := image.NewAlpha(image.Rect(0, 0, box.Dx(), 3))
		m := level("mask")
		for i := range mask.Pix {
			mask.Pix[i] = m
			if i%19 == 7 {
				mask.Pix[i] = 77
			}
		}
		blend(img, box, box.Intersect(img.Rect), mask, c)
		before := striped(40, 3)
		for i := range img.Pix {
			x, y, channel := i/4%40, i/160, i%4
			k := 0.0
			if p := image.Pt(x, y); p.In(box) {
				k = float64(mask.Pix[(y-box.Min.Y)*mask.Stride+x-box.Min.X]) / 255 * float64(c.A) / 255
			}
			want := float64(before.Pix[i])*(1-k) + float64([4]uint8{c.R, c.G, c.B, 255}[channel])*k
			if got := float64(img.Pix[i]); math.Abs(got-want) > 1.5 || k == 0 && got != want || k == 1 && got != want {
				t.Fatalf("blend of %v in %v by %.3f: pixel %d, %d channel %d is %v, want %.2f", c, box, k, x, y, channel, got, want)
			}
		}
	})
}

func striped(w, h int) *image.RGBA {
	img := image.NewRGBA(image.Rect(0, 0, w, h))
	for i := range img.Pix {
		img.Pix[i] = uint8(i * 7)
		if i%4 == 3 {
			img.Pix[i] = 255
		}
	}
	return img
}
