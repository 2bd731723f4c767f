package raster_test

import (
	"bytes"
	"image"
	"image/color"
	"testing"

	"homeside/canvas"
	"homeside/canvas/raster"
)

// halves is an image of two colours, the right one half transparent.
func halves(w, h int) *image.NRGBA {
	img := image.NewNRGBA(image.Rect(0, 0, w, h))
	for y := range h {
		for x := range w {
			img.SetNRGBA(x, y, color.NRGBA{200, 0, 0, 255})
			if x >= w/2 {
				img.SetNRGBA(x, y, color.NRGBA{0, 0, 200, 128})
			}
		}
	}
	return img
}

// withImage is a white scene with an image between two corners in pixels.
func withImage(pix *image.NRGBA, min, max canvas.Px) *canvas.Scene {
	pos := func(p canvas.Px) canvas.Pos { return canvas.Pos{Right: canvas.Points(p.X), Down: canvas.Points(p.Y)} }
	s := &canvas.Scene{Width: 40, Height: 30, PxPerPoint: 1, Background: color.NRGBA{255, 255, 255, 255}}
	s.Panels = []canvas.Panel{{Name: "logo", View: canvas.View{PxPerFoot: 1}, Shapes: []canvas.Shape{{ID: "logo", Image: &canvas.Image{Min: pos(min), Max: pos(max), Pix: pix}}}}}
	return s
}

func TestImageIsScaledAndShinesThrough(t *testing.T) {
	img := raster.Scene(withImage(halves(80, 40), canvas.Px{X: 10, Y: 5}, canvas.Px{X: 30, Y: 15}))
	for _, c := range []struct {
		x, y int
		want color.RGBA
	}{
		{9, 10, color.RGBA{255, 255, 255, 255}}, {12, 10, color.RGBA{200, 0, 0, 255}}, {17, 6, color.RGBA{200, 0, 0, 255}},
		{27, 14, color.RGBA{127, 127, 227, 255}}, {30, 10, color.RGBA{255, 255, 255, 255}}, {20, 15, color.RGBA{255, 255, 255, 255}},
	} {
		got := img.RGBAAt(c.x, c.y)
		for i, d := range []int{int(got.R) - int(c.want.R), int(got.G) - int(c.want.G), int(got.B) - int(c.want.B), int(got.A) - int(c.want.A)} {
			if d < -2 || d > 2 {
				t.Errorf("pixel %d, %d is %v, want %v (channel %d)", c.x, c.y, got, c.want, i)
			}
		}
	}
}

// What has no pixels, no extent, or is far too large draws nothing.
func TestImageThatCannotBeDrawn(t *testing.T) {
	white := raster.Scene(&canvas.Scene{Width: 40, Height: 30, Background: color.NRGBA{255, 255, 255, 255}})
	for _, c := range []struct {
		pix      *image.NRGBA
		min, max canvas.Px
	}{
		{nil, canvas.Px{}, canvas.Px{X: 10, Y: 10}},
		{image.NewNRGBA(image.Rectangle{}), canvas.Px{}, canvas.Px{X: 10, Y: 10}},
		{halves(4, 4), canvas.Px{X: 10, Y: 10}, canvas.Px{X: 10, Y: 20}},
		{halves(4, 4), canvas.Px{X: 20, Y: 10}, canvas.Px{X: 10, Y: 20}},
		{halves(4, 4), canvas.Px{}, canvas.Px{X: 100_000, Y: 10}},
		{halves(4, 4), canvas.Px{X: 100}, canvas.Px{X: 120, Y: 10}},
	} {
		if got := raster.Scene(withImage(c.pix, c.min, c.max)); !bytes.Equal(got.Pix, white.Pix) {
			t.Errorf("an image from %v to %v is drawn, want nothing", c.min, c.max)
		}
	}
}

// Frames with an image that stays, moves and goes equal full redraws.
func TestFramesWithAnImage(t *testing.T) {
	a, b := halves(9, 9), halves(9, 9)
	base := &canvas.Scene{Width: 40, Height: 30, Background: color.NRGBA{255, 255, 255, 255}}
	frames := raster.NewFrames(base)
	for i, s := range []*canvas.Scene{
		withImage(a, canvas.Px{X: 3, Y: 3}, canvas.Px{X: 20, Y: 20}), withImage(a, canvas.Px{X: 3, Y: 3}, canvas.Px{X: 20, Y: 20}),
		withImage(a, canvas.Px{X: 5, Y: 3}, canvas.Px{X: 30, Y: 20}), withImage(b, canvas.Px{X: 5, Y: 3}, canvas.Px{X: 30, Y: 20}), base,
	} {
		if got, want := frames.Draw(s), raster.Scene(s); !bytes.Equal(got.Pix, want.Pix) {
			t.Errorf("frame %d is not the full redraw", i)
		}
		if changed := frames.Changed().Has(0, 0); changed != (i != 1 && i != 3) {
			t.Errorf("frame %d changes the first tile: %v", i, changed)
		}
	}
}
