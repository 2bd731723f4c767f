package canvas

import (
	"math"
	"slices"
	"testing"

	"homeside/model/court"
)

func bezier(a, b, c, d, s float64) float64 {
	r := 1 - s
	return r*r*r*a + 3*r*r*s*b + 3*r*s*s*c + s*s*s*d
}

// Four Béziers with handles of 4/3 (sqrt 2 - 1) leave a circle outward by
// 0.0273 % at most (a figure of the textbooks, from memory).
func TestCircleIsRound(t *testing.T) {
	c, r := Pos{X: 3, Y: -4}, Length{Feet: 2, Points: 1} // with 1 pt = 2 px and 10 px/ft: 22 px
	v := View{PxPerFoot: 10}
	path, centre := Circle(c, r), v.Place(c, 2)
	if got := len(path); got != 6 || path[0].Op != Move || path[5].Op != Close {
		t.Fatalf("Circle has %d steps, want a move, four curves and a close", got)
	}
	from, turned := v.Place(path[0].P[0], 2), 0.0
	for _, s := range path[1:5] {
		a, b, to := v.Place(s.P[0], 2), v.Place(s.P[1], 2), v.Place(s.P[2], 2)
		last := from
		for i := 1; i <= 100; i++ {
			share := float64(i) / 100
			p := Px{bezier(from.X, a.X, b.X, to.X, share), bezier(from.Y, a.Y, b.Y, to.Y, share)}
			if got := math.Hypot(p.X-centre.X, p.Y-centre.Y); got < 22-1e-9 || got > 22*1.000273 {
				t.Fatalf("a point of the circle is %v px from the centre, want 22 px to 0.0273 %%", got)
			}
			turned += math.Atan2((last.X-centre.X)*(p.Y-centre.Y)-(last.Y-centre.Y)*(p.X-centre.X), (last.X-centre.X)*(p.X-centre.X)+(last.Y-centre.Y)*(p.Y-centre.Y))
			last = p
		}
		from = to
	}
	if !near(math.Abs(turned), 2*math.Pi, 1e-9) {
		t.Errorf("the circle turns by %v, want once", turned)
	}
}

func TestBoxAndPolyline(t *testing.T) {
	got := Box(court.RectOf(court.Pt(3, 4), court.Pt(1, 2)))
	want := Path{}.Move(Pos{X: 1, Y: 2}).Line(Pos{X: 3, Y: 2}).Line(Pos{X: 3, Y: 4}).Line(Pos{X: 1, Y: 4}).Close()
	if !slices.Equal(got, want) {
		t.Errorf("Box = %v, want %v", got, want)
	}
	if got := Polyline(); len(got) != 0 {
		t.Errorf("Polyline() = %v, want nothing", got)
	}
}

func TestAlongAndShift(t *testing.T) {
	got := On(court.Pt(1, 2)).Along(court.Pt(0, -1), Length{Feet: 3, Points: 4}).Shift(5, 6).Shift(1, 1)
	if want := (Pos{X: 1, Y: -1, V: -4, Right: 6, Down: 7}); got != want {
		t.Errorf("got %+v, want %+v", got, want)
	}
}
