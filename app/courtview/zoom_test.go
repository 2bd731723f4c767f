package courtview

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"homeside/canvas"
	"homeside/canvas/compose"
	_ "homeside/internal/fixedseed"
	"homeside/model/court"
)

// What is under the pointer stays there while the wheel turns, as long as the
// picture covers the view; zoomed in and out again the court is as fitted.
func TestZoomKeepsThePlaceUnderThePointer(t *testing.T) {
	l := compose.ForWindow(800, 600, canvas.Upright, court.Surface, 12, 1.25)
	rapid.Check(t, func(t *rapid.T) {
		z := fitted
		for range rapid.IntRange(1, 12).Draw(t, "notches") {
			x, y := rapid.Float64Range(0, 1).Draw(t, "x"), rapid.Float64Range(0, 1).Draw(t, "y")
			px := canvas.Px{X: x * 800, Y: y * 600}
			before := z.of(l).Court.ToCourt(px)
			next := z.by(rapid.Float64Range(1, 2).Draw(t, "factor"), x, y)
			if after := next.of(l).Court.ToCourt(px); after.Distance(before) > 1e-6 {
				t.Fatalf("zoomed from %+v to %+v about %v, %v was under the pointer and now %v is", z, next, px, before, after)
			}
			z = next
		}
		if z.scale > mostZoom {
			t.Fatalf("the court is drawn %v times as large as fitted, want at most %v", z.scale, mostZoom)
		}
		if out := z.by(1e-9, 0.3, 0.7); math.Abs(out.right)+math.Abs(out.down) > 1e-9 || out.scale != 1 {
			t.Fatalf("zoomed out all the way: %+v, want %+v", out, fitted)
		}
	})
}

// However it is moved, the picture covers the view, and court and height strip
// stay together.
func TestPanStaysInside(t *testing.T) {
	l := compose.ForWindow(800, 600, canvas.Upright, court.Surface, 12, 1.25)
	gap := func(l compose.Layout) float64 { return (l.Rise.Origin.X - l.Court.Origin.X) / l.Court.PxPerFoot }
	rapid.Check(t, func(t *rapid.T) {
		z := fitted.by(rapid.Float64Range(1, 8).Draw(t, "factor"), 0.5, 0.5)
		z = z.moved(rapid.Float64Range(-9, 9).Draw(t, "right"), rapid.Float64Range(-9, 9).Draw(t, "down"))
		if z.right > 0 || z.down > 0 || z.right+z.scale < 1-1e-9 || z.down+z.scale < 1-1e-9 {
			t.Fatalf("moved to %+v the picture leaves a part of the view empty", z)
		}
		if got, want := gap(z.of(l)), gap(l); math.Abs(got-want) > 1e-9 {
			t.Fatalf("zoomed, the height strip is %v ft from the court's middle, want %v", got, want)
		}
	})
}

func TestZoomOfNothing(t *testing.T) {
	l := compose.ForWindow(800, 600, canvas.Lying, court.Surface, 12, 1.25)
	if got := fitted.of(l); got != l {
		t.Errorf("as fitted the layout is %+v, want %+v", got, l)
	}
	if got := fitted.moved(-0.5, 0.5); got != fitted {
		t.Errorf("as fitted the court can be moved to %+v", got)
	}
}
