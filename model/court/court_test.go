package court

import (
	"math"
	"testing"

	"homeside/model/units"
)

// Serve from the near right, receivers beyond the net: the far right court.
// Source: USA Pickleball Official Rulebook 2026, 3.A.4.f and 7.E.
func TestInServiceCourt(t *testing.T) {
	for _, c := range []struct {
		p    Point
		want bool
		why  string
	}{
		{Pt(-5, 7.000), false, "on the NVZ line"},
		{Pt(-5, 7.001), true, "just past the NVZ line"},
		{Pt(-5, 22.000), true, "on the baseline"},
		{Pt(-5, 22.001), false, "past the baseline"},
		{Pt(-10, 15), true, "on the sideline"},
		{Pt(-10.001, 15), false, "past the sideline"},
		{Pt(0.083, 15), true, "outer edge of the centreline"},
		{Pt(0.10, 15), false, "wrong court"},
	} {
		if got := InServiceCourt(Far, Right, c.p); got != c.want {
			t.Errorf("InServiceCourt(Far, Right, %v) = %v, want %v: %s", c.p, got, c.want, c.why)
		}
		if got := InServiceCourt(Near, Right, c.p.Mirror()); got != c.want {
			t.Errorf("InServiceCourt(Near, Right, %v) = %v, want %v: %s", c.p.Mirror(), got, c.want, c.why)
		}
	}
}

// Rulebook 2026, 3.A.4.g and 7.A.
func TestInServingArea(t *testing.T) {
	for _, c := range []struct {
		p    Point
		want bool
	}{
		{Pt(5, -22.01), true}, {Pt(5, -22), false}, {Pt(10.1, -22.5), false},
		{Pt(10, -22.5), true}, {Pt(-0.08, -23), true}, {Pt(-0.1, -23), false},
	} {
		if got := InServingArea(Near, Right, c.p); got != c.want {
			t.Errorf("InServingArea(Near, Right, %v) = %v, want %v", c.p, got, c.want)
		}
	}
}

// Rulebook 2026, 3.B.6 and 3.B.7; 35.0 in at 5 ft is our straight line.
func TestNetHeight(t *testing.T) {
	for _, c := range []struct {
		x  units.Feet
		in float64
	}{{0, 34}, {10, 36}, {-10, 36}, {5, 35}, {-5, 35}, {11, 36}} {
		if got := NetHeight(c.x).Inches(); math.Abs(got-c.in) > 1e-9 {
			t.Errorf("NetHeight(%v) = %v in, want %v", c.x, got, c.in)
		}
	}
}

// Rulebook 2026, 3.A.1: corner to corner 48.33218 ft by Pythagoras.
func TestDiagonal(t *testing.T) {
	if got := Bounds.Min.Distance(Bounds.Max); math.Abs(float64(got)-48.33218) > 5e-6 {
		t.Errorf("corner to corner = %v ft, want 48.33218", got)
	}
}

// Rulebook 2026, 3.A.4.e: every line is two inches wide and lies on the court.
func TestLines(t *testing.T) {
	if len(Lines) != 10 {
		t.Fatalf("len(Lines) = %d, want 10", len(Lines))
	}
	for _, l := range Lines {
		if w := min(l.Area.Width(), l.Area.Height()); math.Abs(float64(w-LineWidth)) > 1e-12 {
			t.Errorf("%v %s is %v ft wide, want %v", l.End, l.Name, w, LineWidth)
		}
		if !Bounds.Contains(l.Area.Min) || !Bounds.Contains(l.Area.Max) {
			t.Errorf("%v %s leaves the court: %v", l.End, l.Name, l.Area)
		}
	}
}

func TestSides(t *testing.T) {
	for _, c := range []struct {
		e    End
		p    Point
		want Side
	}{{Near, Pt(5, -20), Right}, {Near, Pt(-5, -20), Left}, {Far, Pt(5, 20), Left}, {Far, Pt(-5, 20), Right}} {
		if got := SideOf(c.e, c.p); got != c.want {
			t.Errorf("SideOf(%v, %v) = %v, want %v", c.e, c.p, got, c.want)
		}
	}
}

func TestOffsets(t *testing.T) {
	p := Pt(6.5, -24)
	if got, want := FromBaseline(Near, p), (Offset{"baseline", 2, false}); got != want {
		t.Errorf("FromBaseline = %v, want %v", got, want)
	}
	if got, want := NearestAlong(Near, p), (Offset{"right sideline", 3.5, true}); got != want {
		t.Errorf("NearestAlong = %v, want %v", got, want)
	}
	if got, want := FromSideline(Far, p.Mirror()), (Offset{"right sideline", 3.5, true}); got != want {
		t.Errorf("FromSideline(Far) = %v, want %v", got, want)
	}
	if got, want := NearestAcross(Near, Pt(0, -8)), (Offset{"kitchen line", 1, false}); got != want {
		t.Errorf("NearestAcross = %v, want %v", got, want)
	}
}

func TestFacing(t *testing.T) {
	for _, c := range []struct {
		p, q Point
		want units.Degrees
	}{{Pt(0, 0), Pt(0, 1), 0}, {Pt(0, 0), Pt(1, 0), 90}, {Pt(0, 0), Pt(0, -1), 180}, {Pt(0, 0), Pt(-1, 0), 270}} {
		got, ok := FacingTo(c.p, c.q)
		if !ok || math.Abs(float64(got-c.want)) > 1e-9 {
			t.Errorf("FacingTo(%v, %v) = %v, %v, want %v", c.p, c.q, got, ok, c.want)
		}
	}
	if _, ok := FacingTo(Pt(1, 1), Pt(1, 1)); ok {
		t.Error("FacingTo(p, p) found a direction, want none")
	}
}
