package raster

import (
	"image"
	"image/color"
	"testing"

	"pgregory.net/rapid"

	"homeside/canvas"
)

// drawOutline is any outline of lines and curves, a part of it far away.
func drawOutline(t *rapid.T) []canvas.PxStep {
	place := func() canvas.Px {
		far := rapid.SampledFrom([]float64{90, 90, 90, 3000}).Draw(t, "far")
		at := func(name string) float64 { return rapid.Float64Range(45-far/2, 45+far/2).Draw(t, name) }
		return canvas.Px{X: at("x"), Y: at("y")}
	}
	path := []canvas.PxStep{{Op: canvas.Move, P: [3]canvas.Px{place()}}}
	for range rapid.IntRange(1, 5).Draw(t, "steps") {
		if rapid.Bool().Draw(t, "curved") {
			path = append(path, canvas.PxStep{Op: canvas.Curve, P: [3]canvas.Px{place(), place(), place()}})
		} else {
			path = append(path, canvas.PxStep{Op: canvas.Line, P: [3]canvas.Px{place()}})
		}
	}
	return append(path, canvas.PxStep{Op: canvas.Close})
}

// What of a shape is in a small picture is as in a large one, however far the
// shape reaches: cut at the edges, lines keep their slope and what they enclose.
func TestShapesAreCutAtTheEdges(t *testing.T) {
	const tolerance = 255 / 16 // two edges in a pixel, each off by up to a 32nd: see longest
	rapid.Check(t, func(t *rapid.T) {
		path := drawOutline(t)
		style := canvas.PxStyle{Fill: color.NRGBA{A: 255}}
		if rapid.Bool().Draw(t, "stroked") {
			style = canvas.PxStyle{Stroke: color.NRGBA{A: 255}, Width: 3, Round: true}
		}
		small, large := paper(image.Rect(30, 30, 60, 60)), paper(image.Rect(0, 0, 90, 90))
		New(small).Path(canvas.Info{}, path, style)
		New(large).Path(canvas.Info{}, path, style)
		for y := 30; y < 60; y++ {
			for x := 30; x < 60; x++ {
				got, want := int(small.RGBAAt(x, y).R), int(large.RGBAAt(x, y).R)
				if got-want > tolerance || want-got > tolerance {
					t.Fatalf("pixel %d, %d of the small picture is %d, want %d as in the large one", x, y, got, want)
				}
			}
		}
	})
}

func paper(r image.Rectangle) *image.RGBA {
	img := image.NewRGBA(r)
	for i := range img.Pix {
		img.Pix[i] = 255
	}
	return img
}

// Letters that are kept are those that are drawn anew, at every place.
func TestLettersAreKept(t *testing.T) {
	used := New(paper(image.Rect(0, 0, 90, 30)))
	for i := range 40 {
		words := canvas.PxText{At: canvas.Px{X: 3 + float64(i)/9, Y: 20 + float64(i)/17}, Text: "Tobin, 0.25 s", Size: 11, Align: canvas.Start}
		words.Colour = color.NRGBA{A: 255}
		used.img = paper(used.img.Rect)
		fresh := New(paper(used.img.Rect))
		used.Text(canvas.Info{}, words)
		fresh.Text(canvas.Info{}, words)
		if !same(used.img, fresh.img) || same(used.img, paper(used.img.Rect)) {
			t.Errorf("at %v the letters differ from new ones, or there are none", words.At)
		}
	}
	bytes := used.glyphs.bytes
	used.glyphs.bytes = maxMasks + 1
	used.Text(canvas.Info{}, canvas.PxText{At: canvas.Px{X: 3, Y: 20}, Text: "W", Size: 11})
	if got := used.glyphs.bytes; got <= 0 || got >= bytes {
		t.Errorf("with too many bytes of masks, %d stay, want those of a letter", got)
	}
}
