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

// measuredBy says something in the measures given and goes back to feet.
func measuredBy(m Measures, say func() string) string {
	MeasureBy(m)
	defer MeasureBy(FeetAndInches)
	return say()
}

// A foot is 0.3048 m (the international foot, exact since 1959).
func TestLengthInMetres(t *testing.T) {
	for _, c := range []struct {
		f    units.Feet
		want string
	}{{3.5, "1.07 m"}, {0.5, "15 cm"}, {0, "0 cm"}, {-0.001, "0 cm"}, {-1, "-30 cm"}, {22, "6.71 m"}, {-6.5617, "-2 m"}, {3.28, "1 m"}, {44, "13.41 m"}} {
		if got := measuredBy(Metric, func() string { return Length(c.f) }); got != c.want {
			t.Errorf("in metres, Length(%v) = %q, want %q", float64(c.f), got, c.want)
		}
	}
	if got := Length(3.5); got != "3 ft 6 in" {
		t.Errorf("in feet, Length(3.5) = %q, want 3 ft 6 in", got)
	}
}

func TestSpeedAndDistanceInBothMeasures(t *testing.T) {
	for _, c := range []struct {
		m               Measures
		speed, distance string
		place           string
	}{
		{FeetAndInches, "9.8 ft/s (3.0 m/s)", "28 ft", "2 ft behind the baseline, 3 ft 6 in inside the right sideline"},
		{Metric, "3.0 m/s", "8.6 m", "61 cm behind the baseline, 1.07 m inside the right sideline"},
	} {
		for _, said := range []struct {
			call, want string
			say        func() string
		}{
			{"Speed(3)", c.speed, func() string { return Speed(3) }},
			{"Distance(28.2)", c.distance, func() string { return Distance(28.2) }},
			{"Place", c.place, func() string { return Place(court.Near, court.Pt(6.5, -24)) }},
		} {
			if got := measuredBy(c.m, said.say); got != said.want {
				t.Errorf("in %s, %s = %q, want %q", c.m.Tag(), said.call, got, said.want)
			}
		}
	}
}

func TestMeasuresOf(t *testing.T) {
	for _, m := range AllMeasures() {
		if got, ok := MeasuresOf(m.Tag()); got != m || !ok {
			t.Errorf("MeasuresOf(%q) = %v, %v, want %v", m.Tag(), got, ok, m)
		}
	}
	if got, ok := MeasuresOf("yards"); ok {
		t.Errorf("MeasuresOf(yards) = %v, want none", got)
	}
}
