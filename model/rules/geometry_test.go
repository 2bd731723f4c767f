package rules

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"homeside/model/court"
	"homeside/model/flight"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
)

func TestWithin(t *testing.T) {
	for _, c := range []struct {
		d, e   court.Point
		lo, hi float64
		ok     bool
	}{
		{pt(-2, 0), pt(2, 0), 0.25, 0.75, true},           // through the middle
		{pt(-2, 1), pt(2, 1), 0.5, 0.5, true},             // touches
		{pt(-2, 1.01), pt(2, 1.01), 0, 0, false},          // passes by
		{pt(2, 0), pt(4, 0), 0, 0, false},                 // goes away
		{pt(-4, 0), pt(-2, 0), 0, 0, false},               // stops short
		{pt(0, 0), pt(2, 0), 0, 0.5, true},                // comes out
		{pt(0.5, 0), pt(0.5, 0), 0, 1, true},              // stands inside
		{pt(1.5, 0), pt(1.5, 0), 0, 1, false},             // stands outside
		{pt(-3, 0.6), pt(3, 0.6), 2.2 / 6, 3.8 / 6, true}, // 3-4-5 triangle
	} {
		lo, hi, ok := within(c.d, c.e, 1)
		if ok != c.ok || ok && (math.Abs(lo-c.lo) > 1e-9 || math.Abs(hi-c.hi) > 1e-9) {
			t.Errorf("within(%v, %v, 1) = %v, %v, %v, want %v, %v, %v", c.d, c.e, lo, hi, ok, c.lo, c.hi, c.ok)
		}
	}
}

func TestEnters(t *testing.T) {
	kitchen := court.KitchenOf(court.Far)
	for _, c := range []struct {
		a, b court.Point
		want float64
		ok   bool
	}{
		{pt(5, 9), pt(5, 5), 0.5, true},
		{pt(5, 9), pt(5, 7), 1, true}, // the line is part of it
		{pt(5, 9), pt(5, 7.01), 0, false},
		{pt(12, 5), pt(8, 5), 0.5, true}, // from beside the court
		{pt(12, 9), pt(12, 1), 0, false}, // past its corner
		{pt(5, 3), pt(5, 3), 0, true},
	} {
		if got, ok := enters(kitchen, c.a, c.b); ok != c.ok || ok && math.Abs(got-c.want) > 1e-9 {
			t.Errorf("enters(kitchen, %v, %v) = %v, %v, want %v, %v", c.a, c.b, got, ok, c.want, c.ok)
		}
	}
}

// Where a way enters, sampling finds nothing earlier.
func TestEntersBySampling(t *testing.T) {
	kitchen := court.KitchenOf(court.Near)
	rapid.Check(t, func(t *rapid.T) {
		draw := func() court.Point {
			return pt(rapid.Float64Range(-20, 20).Draw(t, "x"), rapid.Float64Range(-20, 20).Draw(t, "y"))
		}
		a, b := draw(), draw()
		got, ok := enters(kitchen, a, b)
		for i := range 1001 {
			u := float64(i) / 1000
			if kitchen.Contains(a.Toward(b, u)) && (!ok || u < got-1e-9) {
				t.Fatalf("enters(kitchen, %v, %v) = %v, %v, but at %v it is inside", a, b, got, ok, u)
			}
		}
	})
}

// Braking from v at a steady a takes v²/2a (any mechanics text); within the
// window of a second no more than v - a/2.
func TestStoppingDistance(t *testing.T) {
	l := with(rushes(7.5, true))
	r, err := rally.Solve(l, 0)
	if err != nil {
		t.Fatal(err)
	}
	m := sheetOf(r, l).momentum(3)
	v, a := float64(m.speed), l.Player(game.Far2).Legs().Braking
	if v < 1 || v > a {
		t.Fatalf("the volleyer comes at %v m/s, want a speed that stops within the window", v)
	}
	if want := units.Metres(v * v / (2 * a)).Feet(); math.Abs(float64(m.stop-want)) > 1e-9 {
		t.Errorf("stop from %v m/s = %v ft, want v²/2a = %v ft", v, m.stop, want)
	}
	if m.way.Distance(pt(0, -1)) > 1e-6 {
		t.Errorf("the way is %v, want toward the net", m.way)
	}
	slow := l.Player(game.Far2).Legs()
	slow.Braking = 1
	l = l.WithPlayer(game.Far2, lesson.Player{Pace: &slow})
	if r, err = rally.Solve(l, 0); err != nil {
		t.Fatal(err)
	}
	m = sheetOf(r, l).momentum(3)
	if want := units.Metres(float64(m.speed) - 0.5).Feet(); m.speed < 1 || math.Abs(float64(m.stop-want)) > 1e-9 {
		t.Errorf("way within the window from %v m/s at 1 m/s² = %v ft, want %v ft", m.speed, m.stop, want)
	}
}

// A ball that falls evenly from 8 ft to 4 ft across a body is met at its height;
// one in a chair is lower, and wider.
func TestMeeting(t *testing.T) {
	frame := func(at units.Seconds, x, z units.Feet) *rally.Frame {
		return &rally.Frame{T: at, Ball: flight.State{At: flight.Over(court.Pt(x, 0), z.Metres())}}
	}
	standing, chair := body{BodyRadius, BodyHeight}, body{ChairRadius, ChairHeight}
	for _, c := range []struct {
		about      string
		from, to   *rally.Frame
		body       body
		ok         bool
		at, height float64
	}{
		{"level through the middle", frame(0, -3, 3), frame(1, 3, 3), standing, true, 2.25 / 6, 3},
		{"level over the head", frame(0, -3, 6.1), frame(1, 3, 6.1), standing, false, 0, 0},
		{"down onto the head", frame(0, -3, 9), frame(1, 3, 3), standing, true, 0.5, 6},
		{"level over a chair", frame(0, -3, 5), frame(1, 3, 5), chair, false, 0, 0},
		{"level into a chair", frame(0, -3, 4), frame(1, 3, 4), chair, true, 1.9 / 6, 4},
		{"rises out of reach behind", frame(0, -3, 3), frame(1, 3, 9), standing, true, 2.25 / 6, 5.25},
	} {
		got, ok := meeting(c.from, c.to, game.Near1, c.body)
		if ok != c.ok || ok && (math.Abs(float64(got.at)-c.at) > 1e-9 || math.Abs(float64(got.height)-c.height) > 1e-9) {
			t.Errorf("meeting(%s) = %+v, %v, want at %v s, %v ft high, %v", c.about, got, ok, c.at, c.height, c.ok)
		}
	}
}
