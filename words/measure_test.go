package words

import (
	"math"
	"testing"

	"homeside/model/court"
	"homeside/model/units"
)

func TestFeetInches(t *testing.T) {
	for _, c := range []struct {
		f    units.Feet
		want string
	}{{3.5, "3 ft 6 in"}, {2, "2 ft"}, {0, "0 in"}, {0.99, "1 ft"}, {1.0 / 3, "4 in"}, {-1.25, "-1 ft 3 in"}, {5.99, "6 ft"}} {
		if got := FeetInches(c.f); got != c.want {
			t.Errorf("FeetInches(%v) = %q, want %q", float64(c.f), got, c.want)
		}
	}
}

func TestPlace(t *testing.T) {
	for _, c := range []struct {
		e    court.End
		p    court.Point
		want string
	}{
		{court.Near, court.Pt(6.5, -24), "2 ft behind the baseline, 3 ft 6 in inside the right sideline"},
		{court.Near, court.Pt(-0.5, -7.5), "6 in behind the kitchen line, 6 in left of the centreline"},
		{court.Far, court.Pt(-12, 6), "1 ft in front of the kitchen line, 2 ft outside the right sideline"},
		{court.Near, court.Pt(5, -21), "1 ft inside the baseline, 5 ft inside the right sideline"},
		{court.Near, court.Pt(5, 2), "9 ft over the net from the kitchen line, 5 ft inside the right sideline"},
	} {
		if got := Place(c.e, c.p); got != c.want {
			t.Errorf("Place(%v, %v) = %q, want %q", c.e, c.p, got, c.want)
		}
	}
}

func TestSeconds(t *testing.T) {
	for _, c := range []struct {
		t    units.Seconds
		want string
	}{{1.1, "1.10 s"}, {-0.5, "-0.50 s"}, {-0.001, "0.00 s"}, {0, "0.00 s"}, {units.Seconds(math.Copysign(0, -1)), "0.00 s"}} {
		if got := Seconds(c.t); got != c.want {
			t.Errorf("Seconds(%v) = %q, want %q", float64(c.t), got, c.want)
		}
	}
}
