package raster

import (
	"image"
	"testing"

	"pgregory.net/rapid"

	"homeside/canvas"
	"homeside/canvas/look"
)

// A box is filled as the rasteriser of golang.org/x/image/vector fills it, within one
// level of a colour: the same box as a path with a corner more is no rect.
func TestRectsAreFilledAsPathsAre(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		px := func(name string) float64 {
			return rapid.OneOf(rapid.Float64Range(-20, 70), rapid.Map(rapid.IntRange(-40, 140), func(i int) float64 { return float64(i) / 2 })).Draw(t, name)
		}
		a, c := canvas.Px{X: px("x1"), Y: px("y1")}, canvas.Px{X: px("x2"), Y: px("y2")}
		b, d := canvas.Px{X: c.X, Y: a.Y}, canvas.Px{X: a.X, Y: c.Y}
		if rapid.Bool().Draw(t, "the other way round") {
			b, d = d, b
		}
		middle := canvas.Px{X: (a.X + b.X) / 2, Y: (a.Y + b.Y) / 2}
		style := canvas.PxStyle{Fill: look.Blue}
		style.Fill.A = rapid.SampledFrom([]uint8{0x60, 0xFF}).Draw(t, "alpha")
		fast, slow := filled(steps(a, b, c, d), style), filled(steps(a, middle, b, c, d), style)
		for i := range fast.Pix {
			if d := int(fast.Pix[i]) - int(slow.Pix[i]); d < -1 || d > 1 {
				t.Fatalf("pixel %d, %d: %v, as a path %v", i/4%50, i/4/50, fast.Pix[i&^3:i&^3+4], slow.Pix[i&^3:i&^3+4])
			}
		}
	})
}

func steps(points ...canvas.Px) []canvas.PxStep {
	path := make([]canvas.PxStep, 0, len(points)+1)
	for i, p := range points {
		op := canvas.Line
		if i == 0 {
			op = canvas.Move
		}
		path = append(path, canvas.PxStep{Op: op, P: [3]canvas.Px{p}})
	}
	return append(path, canvas.PxStep{Op: canvas.Close})
}

func filled(path []canvas.PxStep, s canvas.PxStyle) *image.RGBA {
	img := image.NewRGBA(image.Rect(0, 0, 50, 40))
	for i := range img.Pix {
		img.Pix[i] = 255
	}
	New(img).Path(canvas.Info{}, path, s)
	return img
}

func TestRectOf(t *testing.T) {
	p := func(x, y float64) canvas.Px { return canvas.Px{X: x, Y: y} }
	for _, c := range []struct {
		name string
		path []canvas.PxStep
		want bool
	}{
		{"box", steps(p(1, 1), p(5, 1), p(5, 3), p(1, 3)), true},
		{"box the other way round", steps(p(1, 1), p(1, 3), p(5, 3), p(5, 1)), true},
		{"trapezium", steps(p(1, 1), p(5, 1), p(4, 3), p(2, 3)), false},
		{"bow", steps(p(1, 1), p(5, 3), p(5, 1), p(1, 3)), false},
		{"triangle", steps(p(1, 1), p(5, 1), p(5, 3)), false},
		{"five corners", steps(p(1, 1), p(5, 1), p(5, 3), p(3, 4), p(1, 3)), false},
	} {
		if _, got := rectOf(c.path); got != c.want {
			t.Errorf("%s: %v", c.name, got)
		}
	}
}
