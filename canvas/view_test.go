package canvas

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	_ "homeside/internal/fixedseed"
	"homeside/model/court"
	"homeside/model/units"
)

func near(a, b, tolerance float64) bool { return math.Abs(a-b) <= tolerance }

// The near team is at the bottom of an upright court and at the left of a lying
// one; its right is to the right, or down.
func TestViewTurns(t *testing.T) {
	for _, c := range []struct {
		turn Turn
		at   court.Point
		want Px
	}{
		{Upright, court.Pt(0, 0), Px{100, 200}},
		{Upright, court.Pt(10, 0), Px{150, 200}},
		{Upright, court.Pt(0, -22), Px{100, 310}},
		{Lying, court.Pt(0, 0), Px{100, 200}},
		{Lying, court.Pt(10, 0), Px{100, 250}},
		{Lying, court.Pt(0, -22), Px{-10, 200}},
	} {
		v := View{Origin: Px{100, 200}, PxPerFoot: 5, Turn: c.turn}
		if got := v.ToPx(c.at); got != c.want {
			t.Errorf("%v: ToPx(%v) = %v, want %v", c.turn, c.at, got, c.want)
		}
	}
}

// From the far end everything is turned by half a turn: the far team is at the
// bottom, or at the left.
func TestViewFromTheFarEnd(t *testing.T) {
	for _, turn := range []Turn{Upright, Lying} {
		v := View{Origin: Px{100, 200}, PxPerFoot: 5, Turn: turn}
		far := v
		far.End = court.Far
		if got, want := far.Place(Pos{X: 3, Y: -22, U: 2, V: 1, Right: 4, Down: 5}, 2), v.Place(Pos{X: -3, Y: 22, U: -2, V: -1, Right: 4, Down: 5}, 2); got != want {
			t.Errorf("%v from the far end: %v, want %v", turn, got, want)
		}
	}
}

// Points turn with the view along the axes, and not on the paper.
func TestViewPlacesPoints(t *testing.T) {
	p := Pos{X: 1, Y: 2, U: 3, V: 4, Right: 5, Down: 6}
	for turn, want := range map[Turn]Px{
		Upright: {100 + 10 + 3*2 + 5*2, 200 - 20 - 4*2 + 6*2},
		Lying:   {100 + 20 + 4*2 + 5*2, 200 + 10 + 3*2 + 6*2},
	} {
		v := View{Origin: Px{100, 200}, PxPerFoot: 10, Turn: turn}
		if got := v.Place(p, 2); got != want {
			t.Errorf("%v: place(%+v) = %v, want %v", turn, p, got, want)
		}
	}
	if got := (Length{Feet: 2, Points: 3}).px(10, 4); got != 32 {
		t.Errorf("length of 2 ft and 3 pt = %v px, want 32", got)
	}
}

func drawPoint(t *rapid.T, name string) court.Point {
	return court.Pt(units.Feet(rapid.Float64Range(-100, 100).Draw(t, name+".x")), units.Feet(rapid.Float64Range(-100, 100).Draw(t, name+".y")))
}

func drawTurn(t *rapid.T) Turn { return rapid.SampledFrom([]Turn{Upright, Lying}).Draw(t, "turn") }

func TestViewThereAndBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		v := View{
			Origin:    Px{rapid.Float64Range(-2000, 2000).Draw(t, "ox"), rapid.Float64Range(-2000, 2000).Draw(t, "oy")},
			PxPerFoot: rapid.Float64Range(0.5, 200).Draw(t, "scale"), Turn: drawTurn(t), End: rapid.SampledFrom(court.Ends[:]).Draw(t, "end"),
		}
		p, q := drawPoint(t, "p"), drawPoint(t, "q")
		if back := v.ToCourt(v.ToPx(p)); p.Distance(back) > 1e-9 {
			t.Fatalf("%+v: ToCourt(ToPx(%v)) = %v", v, p, back)
		}
		a, b := v.ToPx(p), v.ToPx(q)
		if got, want := math.Hypot(a.X-b.X, a.Y-b.Y), float64(p.Distance(q))*v.PxPerFoot; !near(got, want, 1e-6) {
			t.Fatalf("%+v: %v to %v is %v px, want %v", v, p, q, got, want)
		}
	})
}

// Fit shows all of the rectangle, in the middle, with no room left on one axis.
func TestFit(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		corner, wide := drawPoint(t, "corner"), rapid.Float64Range(0.1, 100)
		r := court.RectOf(corner, corner.Add(court.Pt(units.Feet(wide.Draw(t, "width")), units.Feet(wide.Draw(t, "height")))))
		low := Px{rapid.Float64Range(-500, 500).Draw(t, "x"), rapid.Float64Range(-500, 500).Draw(t, "y")}
		size := Px{rapid.Float64Range(10, 2000).Draw(t, "w"), rapid.Float64Range(10, 2000).Draw(t, "h")}
		v := Fit(r, drawTurn(t), low, Px{low.X + size.X, low.Y + size.Y})
		a, b := v.ToPx(r.Min), v.ToPx(r.Max)
		left, top := math.Min(a.X, b.X)-low.X, math.Min(a.Y, b.Y)-low.Y
		right, bottom := size.X-math.Abs(b.X-a.X)-left, size.Y-math.Abs(b.Y-a.Y)-top
		if !near(left, right, 1e-6) || !near(top, bottom, 1e-6) {
			t.Fatalf("margins %v %v %v %v are not in the middle", left, right, top, bottom)
		}
		if least := math.Min(left, top); !near(least, 0, 1e-6) {
			t.Fatalf("the least margin is %v px, want 0", least)
		}
	})
}

// Nothing to show, or no room, still gives a view that can be drawn with.
func TestFitOfNothing(t *testing.T) {
	point := court.Rect{Min: court.Pt(3, 4), Max: court.Pt(3, 4)}
	for name, v := range map[string]View{
		"a point":       Fit(point, Upright, Px{}, Px{100, 100}),
		"no room":       Fit(court.Bounds, Upright, Px{50, 50}, Px{50, 50}),
		"negative room": Fit(court.Bounds, Lying, Px{50, 50}, Px{10, 10}),
	} {
		if v.PxPerFoot != 1 || math.IsNaN(v.Origin.X+v.Origin.Y) {
			t.Errorf("Fit of %s = %+v, want a scale of 1", name, v)
		}
	}
	line := court.Rect{Min: court.Pt(0, 0), Max: court.Pt(0, 10)}
	if v := Fit(line, Upright, Px{}, Px{100, 100}); v.PxPerFoot != 10 || v.ToPx(court.Pt(0, 5)) != (Px{50, 50}) {
		t.Errorf("Fit of a line = %+v, want 10 px a foot and its middle at 50, 50", v)
	}
}

func TestTurnString(t *testing.T) {
	for turn, want := range map[Turn]string{Upright: "upright", Lying: "lying"} {
		if got := turn.String(); got != want {
			t.Errorf("Turn(%d).String() = %q, want %q", turn, got, want)
		}
	}
}
