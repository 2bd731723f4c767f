package raster

import (
	"bytes"
	"fmt"
	"image"
	"image/color"
	"testing"

	"pgregory.net/rapid"

	"homeside/canvas"
	"homeside/canvas/look"
	_ "homeside/internal/fixedseed"
	"homeside/model/court"
	"homeside/model/units"
)

// fromScratch draws a frame without anything kept from another.
func fromScratch(static, moving *canvas.Scene) *image.RGBA {
	img := image.NewRGBA(image.Rect(0, 0, static.Width, static.Height))
	New(img).Draw(static)
	New(img).Draw(moving)
	return img
}

func courtScene() *canvas.Scene {
	s := &canvas.Scene{Width: 150, Height: 300, PxPerPoint: 0.8, Background: look.Daylight.Surface}
	p := canvas.Panel{Name: "court", View: canvas.Fit(court.Surface, canvas.Upright, canvas.Px{}, canvas.Px{X: 150, Y: 300})}
	p.Add(canvas.Shape{ID: "court", Path: canvas.Box(court.Bounds), Style: canvas.Style{Fill: look.Daylight.Court}})
	for _, l := range court.Lines {
		p.Add(canvas.Shape{Layer: canvas.Lines, Path: canvas.Box(l.Area), Style: canvas.Style{Fill: look.Daylight.Line}})
	}
	p.Add(canvas.Shape{Layer: canvas.Runs, Path: canvas.Polyline(court.Pt(-8, -20), court.Pt(8, 9)), Style: canvas.Style{Stroke: look.Daylight.Ink, Width: canvas.Pts(2), Dash: []canvas.Points{3, 5}}})
	s.Panels = append(s.Panels, p)
	return s
}

// drawMoving is any mixture of discs, bars, dots and letters anywhere.
func drawMoving(t *rapid.T, view canvas.View) *canvas.Scene {
	s := &canvas.Scene{Width: 150, Height: 300, PxPerPoint: 0.8}
	p := canvas.Panel{Name: "court", View: view}
	for i := range rapid.IntRange(0, 4).Draw(t, "shapes") {
		p.Add(drawShape(t, i))
	}
	s.Panels = append(s.Panels, p)
	return s
}

func drawShape(t *rapid.T, i int) canvas.Shape {
	feet := func(name string, limit float64) units.Feet {
		return units.Feet(rapid.Float64Range(-limit, limit).Draw(t, name))
	}
	from := court.Pt(feet("x", 18), feet("y", 35))
	ink := color.NRGBA{0x10, 0x60, 0xA0, rapid.SampledFrom([]uint8{0x50, 0xFF}).Draw(t, "alpha")}
	s := canvas.Shape{ID: fmt.Sprint(i), Layer: canvas.Layer(rapid.IntRange(0, int(canvas.Labels)).Draw(t, "layer"))}
	style := canvas.Style{Stroke: ink, Width: canvas.Pts(3), Round: rapid.Bool().Draw(t, "round")}
	switch rapid.IntRange(0, 3).Draw(t, "kind") {
	case 0:
		s.Path, s.Style = canvas.Circle(canvas.On(from), canvas.Ft(2)), canvas.Style{Fill: ink, Stroke: look.Daylight.Ink, Width: canvas.Pts(1.4)}
	case 1:
		s.Path, s.Style = canvas.Polyline(from, from.Add(court.Pt(feet("dx", 9), feet("dy", 9)))), style
	case 2:
		style.Dash = []canvas.Points{2, 4}
		s.Path, s.Style = canvas.Box(court.RectOf(from, from.Add(court.Pt(3, 4)))), style
	default:
		s.Text = &canvas.Text{At: canvas.On(from), Text: "A1", Size: canvas.Points(rapid.IntRange(8, 20).Draw(t, "size")), Bold: style.Round, Colour: ink}
	}
	return s
}

// A frame over the cached static layer equals a full redraw byte for byte,
// whatever was drawn before it.
func TestFramesEqualAFullRedraw(t *testing.T) {
	static := courtScene()
	view := static.Panels[0].View
	rapid.Check(t, func(t *rapid.T) {
		frames := NewFrames(static)
		for range rapid.IntRange(1, 4).Draw(t, "frames") {
			moving := drawMoving(t, view)
			got, want := frames.Draw(moving), fromScratch(static, moving)
			if !same(got, want) {
				t.Fatalf("a frame differs from a full redraw at %v", firstDifference(got, want))
			}
		}
	})
}

// Shapes that stay, come, go, move and change places leave a full redraw, also
// where they are transparent and lie over each other.
func TestFramesOfShapesThatStay(t *testing.T) {
	static := courtScene()
	rapid.Check(t, func(t *rapid.T) {
		pool := drawMoving(t, static.Panels[0].View)
		for i := range rapid.IntRange(2, 6).Draw(t, "more") {
			pool.Panels[0].Add(drawShape(t, 10+i/2)) // some have the same ID
		}
		frames := NewFrames(static)
		for range rapid.IntRange(2, 5).Draw(t, "frames") {
			shapes := rapid.Permutation(pool.Panels[0].Shapes).Draw(t, "order")
			if rapid.Bool().Draw(t, "in order") {
				shapes = pool.Panels[0].Shapes
			}
			moving := &canvas.Scene{Width: 150, Height: 300, PxPerPoint: 0.8, Panels: []canvas.Panel{{Name: "court", View: static.Panels[0].View}}}
			for _, s := range shapes {
				if rapid.IntRange(0, 3).Draw(t, "there") > 0 {
					moving.Panels[0].Add(s)
				}
			}
			if got, want := frames.Draw(moving), fromScratch(static, moving); !same(got, want) {
				t.Fatalf("a frame differs from a full redraw at %v", firstDifference(got, want))
			}
		}
	})
}

func firstDifference(a, b *image.RGBA) image.Point {
	for i := range a.Pix {
		if a.Pix[i] != b.Pix[i] {
			return image.Pt(i%a.Stride/4, i/a.Stride)
		}
	}
	return image.Pt(-1, -1)
}

// The image is lent until the next call, and nothing stays of the last frame.
func TestFramesLeaveNoTrace(t *testing.T) {
	static := courtScene()
	frames := NewFrames(static)
	nothing := &canvas.Scene{Width: 150, Height: 300, PxPerPoint: 0.8}
	disc := *nothing
	disc.Panels = []canvas.Panel{{View: static.Panels[0].View, Shapes: []canvas.Shape{
		{Path: canvas.Circle(canvas.Pos{}, canvas.Ft(5)), Style: canvas.Style{Fill: look.Blue}},
	}}}
	first := frames.Draw(&disc)
	if got := at(first, 75, 150); got != look.Blue {
		t.Errorf("the disc's middle is %v, want %v", got, look.Blue)
	}
	if second := frames.Draw(nothing); second != first || !same(second, Scene(static)) {
		t.Error("the empty frame is not the static layer on the same image")
	}
}

func BenchmarkFrame(b *testing.B) {
	static := courtScene()
	frames := NewFrames(static)
	for b.Loop() {
		frames.Draw(static)
	}
}

// With another static layer the frames that follow equal a full redraw too, and
// what is told to have changed is just what did.
func TestRestartedFramesEqualAFullRedraw(t *testing.T) {
	view := courtScene().Panels[0].View
	rapid.Check(t, func(t *rapid.T) {
		static := courtScene()
		frames := NewFrames(static)
		shown := clone(frames.Draw(drawMoving(t, view)))
		for range rapid.IntRange(1, 3).Draw(t, "layers") {
			static = courtScene()
			static.Background = rapid.SampledFrom([]color.NRGBA{look.Daylight.Surface, look.Daylight.Court, {}}).Draw(t, "background")
			static.Panels[0].Add(drawShape(t, 99))
			frames.Restart(static)
			for range rapid.IntRange(0, 2).Draw(t, "frames") {
				moving := drawMoving(t, view)
				got, want := frames.Draw(moving), fromScratch(static, moving)
				if !equalBox(got, want, got.Rect) {
					t.Fatalf("a frame over another static layer differs from a full redraw")
				}
				for i := range frames.changed.set {
					if box := frames.changed.box(i); frames.changed.set[i] == equalBox(got, shown, box) {
						t.Fatalf("the tile %v is said to have changed: %v, but its pixels say otherwise", box, frames.changed.set[i])
					}
				}
				shown = clone(got)
			}
		}
	})
}

// A layer that was lent stays as it is, and another size starts anew.
func TestRestartLeavesALentLayer(t *testing.T) {
	base := Scene(courtScene())
	kept := clone(base)
	frames := Over(base)
	other := courtScene()
	other.Background = color.NRGBA{R: 0xFF, A: 0xFF}
	frames.Restart(other)
	if !equalBox(base, kept, base.Rect) {
		t.Error("Restart has drawn on a layer that was lent")
	}
	other.Width = 99
	frames.Restart(other)
	if got := frames.Draw(&canvas.Scene{Width: 99, Height: 300, PxPerPoint: 1}); got.Rect.Dx() != 99 || !equalBox(got, fromScratch(other, &canvas.Scene{}), got.Rect) {
		t.Errorf("a layer of another size gives a picture %v", got.Rect)
	}
}

func clone(img *image.RGBA) *image.RGBA {
	return &image.RGBA{Pix: bytes.Clone(img.Pix), Stride: img.Stride, Rect: img.Rect}
}

func equalBox(a, b *image.RGBA, box image.Rectangle) bool {
	for y := box.Min.Y; y < box.Max.Y; y++ {
		i, j := a.PixOffset(box.Min.X, y), a.PixOffset(box.Max.X, y)
		if !bytes.Equal(a.Pix[i:j], b.Pix[i:j]) {
			return false
		}
	}
	return true
}
