package court

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	_ "homeside/internal/fixedseed"
	"homeside/model/units"
)

func TestStraightCurve(t *testing.T) {
	c := StraightCurve(Pt(0, 0), Pt(3, 4))
	if got := c.Length(); got != 5 {
		t.Errorf("Length() = %v, want 5", got)
	}
	if got := c.At(0.2); got.Distance(Pt(0.6, 0.8)) > 1e-12 {
		t.Errorf("At(0.2) = %v, want (0.6, 0.8)", got)
	}
	if got := c.LeastRadius(); !math.IsInf(float64(got), 1) {
		t.Errorf("LeastRadius() = %v, want +Inf", got)
	}
}

// The arc of y = x^2 from (-1, 1) to (1, 1) is sqrt(5) + asinh(2)/2 long and
// its tightest radius, at the vertex, is 1/2 (any calculus text).
func TestParabola(t *testing.T) {
	c := BentCurve(Pt(-1, 1), Pt(0, 0), Pt(1, 1))
	want := math.Sqrt(5) + math.Asinh(2)/2
	if got := float64(c.Length()); math.Abs(got-want) > 1e-3 {
		t.Errorf("Length() = %v, want %v", got, want)
	}
	if got := float64(c.LeastRadius()); math.Abs(got-0.5) > 1e-12 {
		t.Errorf("LeastRadius() = %v, want 0.5", got)
	}
	if got := c.At(0.5); got.Length() > 1e-9 {
		t.Errorf("At(0.5) = %v, want the vertex", got)
	}
}

func TestCurveKeepsItsPace(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := func(name string) Point {
			return Pt(units.Feet(rapid.Float64Range(-30, 30).Draw(t, name+"x")), units.Feet(rapid.Float64Range(-30, 30).Draw(t, name+"y")))
		}
		c := BentCurve(p("a"), p("via"), p("b"))
		from, to := c.Ends()
		if c.At(0).Distance(from) > 1e-9 || c.At(1).Distance(to) > 1e-9 {
			t.Fatalf("At(0), At(1) = %v, %v, want %v, %v", c.At(0), c.At(1), from, to)
		}
		for i := range 20 {
			step := c.At(float64(i+1) / 20).Distance(c.At(float64(i) / 20))
			if step > c.Length()/20*1.05+0.02 { // chords are short, not infinitely so
				t.Fatalf("a twentieth of the way is %v ft, want at most %v", step, c.Length()/20)
			}
		}
	})
}

// A bend whose middle point lies on the line of its ends is straight between
// them and turns back on itself beyond.
func TestFoldedBend(t *testing.T) {
	for _, c := range []struct {
		via  Point
		want float64
	}{{Pt(2, 0), math.Inf(1)}, {Pt(2.9, 0), math.Inf(1)}, {Pt(5, 0), 0}, {Pt(-1, 0), 0}} {
		if got := float64(BentCurve(Pt(0, 0), c.via, Pt(4, 0)).LeastRadius()); got != c.want {
			t.Errorf("BentCurve via %v: LeastRadius() = %v, want %v", c.via, got, c.want)
		}
	}
	if got := BentCurve(Pt(1, 1), Pt(1, 4), Pt(1, 1)).LeastRadius(); got != 0 {
		t.Errorf("out and back: LeastRadius() = %v, want 0", got)
	}
}
