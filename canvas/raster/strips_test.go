package raster_test

import (
	"image"
	"image/color"
	"testing"

	"pgregory.net/rapid"

	"homeside/canvas"
	"homeside/canvas/raster"
	_ "homeside/internal/fixedseed"
)

// A long stroke is drawn strip by strip; nothing of it is lost: it is the
// picture put together from small windows, in which it is drawn in one piece, but
// for what the rasteriser rounds.
func TestStripsLoseNothing(t *testing.T) {
	const side, window = 480, 60
	rapid.Check(t, func(t *rapid.T) {
		at := rapid.Float64Range(-100, side+100)
		draw := func(name string) canvas.Px { return canvas.Px{X: at.Draw(t, name), Y: at.Draw(t, name)} }
		path := []canvas.PxStep{{Op: canvas.Move, P: [3]canvas.Px{draw("start")}}}
		for range rapid.IntRange(1, 4).Draw(t, "steps") {
			if rapid.Bool().Draw(t, "curve") {
				path = append(path, canvas.PxStep{Op: canvas.Curve, P: [3]canvas.Px{draw("c"), draw("c"), draw("end")}})
			} else {
				path = append(path, canvas.PxStep{Op: canvas.Line, P: [3]canvas.Px{draw("end")}})
			}
		}
		if rapid.Bool().Draw(t, "closed") {
			path = append(path, canvas.PxStep{Op: canvas.Close})
		}
		style := canvas.PxStyle{Stroke: color.NRGBA{200, 40, 20, 255}, Width: rapid.Float64Range(0.5, 30).Draw(t, "width"), Round: rapid.Bool().Draw(t, "round")}
		if rapid.Bool().Draw(t, "dashed") {
			style.Dash = []float64{12, 9}
		}
		whole := image.NewRGBA(image.Rect(0, 0, side, side))
		raster.New(whole).Path(canvas.Info{}, path, style)
		for y := 0; y < side; y += window {
			for x := 0; x < side; x += window {
				part := image.NewRGBA(image.Rect(0, 0, window, window))
				raster.New(part).Path(canvas.Info{}, moved(path, -float64(x), -float64(y)), style)
				if d := unlike(whole, part, image.Pt(x, y)); d > 8 {
					t.Fatalf("the window at %d, %d differs by %d of 255", x, y, d)
				}
			}
		}
	})
}

func moved(path []canvas.PxStep, dx, dy float64) []canvas.PxStep {
	out := make([]canvas.PxStep, len(path))
	for i, s := range path {
		for k := range s.P {
			s.P[k].X += dx
			s.P[k].Y += dy
		}
		out[i] = s
	}
	return out
}

// unlike is the largest difference of a channel between a part and the whole
// at a place.
func unlike(whole, part *image.RGBA, at image.Point) (most int) {
	for y := range part.Rect.Dy() {
		for x := range part.Rect.Dx() {
			a, b := whole.RGBAAt(at.X+x, at.Y+y), part.RGBAAt(x, y)
			for _, d := range []int{int(a.R) - int(b.R), int(a.G) - int(b.G), int(a.B) - int(b.B), int(a.A) - int(b.A)} {
				most = max(most, d, -d)
			}
		}
	}
	return most
}
