package flight

import (
	"math"
	"testing"

	"homeside/model/units"
)

func TestLaunchAngles(t *testing.T) {
	in := Intent{From: Vec{1, 2, 1}, AimX: 1, AimY: -5} // toward -y: left is +x
	for _, c := range []struct {
		v        Vec
		up, side units.Degrees
	}{
		{Vec{0, -10, 0}, 0, 0},
		{Vec{0, -1, 1}, 45, 0},
		{Vec{1, -1, 0}, 0, 45},
		{Vec{-1, -1, -math.Sqrt2}, -45, -45},
	} {
		l := Launch{State: State{Velocity: c.v}}
		near(t, "Up", float64(l.Up()), float64(c.up), 1e-12)
		near(t, "Side", float64(l.Side(in)), float64(c.side), 1e-12)
	}
}

func TestToward(t *testing.T) {
	for _, c := range []struct {
		level Vec
		up    units.Degrees
		want  Vec
	}{
		{Vec{0, 5, 0}, 0, Vec{0, 1, 0}},
		{Vec{-3, 0, 9}, 30, Vec{-math.Sqrt(.75), 0, .5}},
		{Vec{0, 0, 2}, -20, Vec{0, 0, -1}},
	} {
		if got := Toward(c.level, c.up); got.Sub(c.want).Length() > 1e-12 {
			t.Errorf("Toward(%v, %v) = %v, want %v", c.level, c.up, got, c.want)
		}
	}
}
