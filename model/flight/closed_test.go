package flight

import (
	"math"
	"testing"

	"homeside/model/units"
)

// Closed forms of the mechanics textbooks, and the numbers an independent program gave for them.
const closed = 1e-8

// vacuum is a model without air, and without radius where a vector lands at z = 0.
func vacuum() Model {
	m := Default()
	m.Air.Density = 0
	return m
}

// Vector: 18 m/s at 10° from .8 m down to z = 0. The centre lands one radius up,
// so the launch is raised by a radius.
func TestVacuumParabola(t *testing.T) {
	r := float64(Outdoor.Radius())
	p := mustFly(t, vacuum(), struck(18, 10, .8+r))
	near(t, "time", float64(p.Duration), .833261172, 6e-10)
	near(t, "range", p.End.At.Y+netAt, 14.770837121, 6e-10)
	near(t, "apex", p.Apex.State.At.Z-r, 1.298120940, 6e-10)
	for i := range 20 {
		tm := float64(p.Duration) * float64(i) / 19
		want := .8 + r + 18*math.Sin(10*math.Pi/180)*tm - units.Gravity*tm*tm/2
		near(t, "height on the way", p.At(units.Seconds(tm)).At.Z, want, closed)
	}
}

func TestDragConstants(t *testing.T) {
	a := Air{Density: SeaLevel}
	near(t, "kd", Outdoor.pressure(a)*Outdoor.Drag, .0359675993, 6e-11)
	near(t, "vt", float64(Outdoor.Terminal(a)), 16.5121875, 6e-8)
	near(t, "density a mile up", Altitude(5280*units.FootInMetres).Density, 1.046619, half)
	near(t, "density at 0 m", Altitude(0).Density, 1.225, 1e-6)
	near(t, "density at 0 m, 15 °C", AltitudeAt(0, 15).Density, Altitude(0).Density, 1e-12)
	if hot, cold := AltitudeAt(0, 35).Density, AltitudeAt(0, 5).Density; hot >= cold {
		t.Errorf("air at 35 °C is %v, at 5 °C %v; want the warm one thinner", hot, cold)
	}
	if h := Altitude(1e9).Density; math.IsNaN(h) || h <= 0 {
		t.Errorf("Altitude(1e9) = %v, want it clamped", h)
	}
}

// Falling from rest: v = vt tanh(g t / vt), y = (vt²/g) ln cosh(g t / vt).
func TestFall(t *testing.T) {
	m, vt := Default(), float64(Outdoor.Terminal(Air{Density: SeaLevel}))
	p := mustFly(t, m, State{At: Vec{0, 3, 10}})
	s := p.At(1)
	near(t, "fall for 1 s, v", -s.Velocity.Z, 8.796000, half)
	near(t, "fall for 1 s, y", 10-s.At.Z, 4.639580, half)
	for i := 1; i < 20; i++ {
		tm := float64(p.Duration) * float64(i) / 20
		s := p.At(units.Seconds(tm))
		near(t, "fall, v", -s.Velocity.Z, vt*math.Tanh(units.Gravity*tm/vt), 3*closed)
		near(t, "fall, y", 10-s.At.Z, vt*vt/units.Gravity*math.Log(math.Cosh(units.Gravity*tm/vt)), closed)
	}
	p = mustFly(t, m, State{At: Vec{0, 3, 1.9812 + float64(m.Ball.Radius())}})
	near(t, "fall from 1.9812 m, t", float64(p.Duration), .643227, half)
	near(t, "fall from 1.9812 m, v", float64(p.End.Speed()), 6.017963, half)
}

// Thrown straight up: t = (vt/g) atan(v0/vt), H = (vt²/2g) ln(1 + (v0/vt)²), back
// at v0 / sqrt(1 + (v0/vt)²).
func TestThrowUp(t *testing.T) {
	m := Default()
	vt := float64(Outdoor.Terminal(m.Air))
	for _, v0 := range []float64{3, 10, 25} {
		p := mustFly(t, m, State{At: Vec{1, 2, float64(m.Ball.Radius())}, Velocity: Vec{0, 0, v0}})
		near(t, "rise time", float64(p.Top()), vt/units.Gravity*math.Atan(v0/vt), closed)
		near(t, "rise", p.Apex.State.At.Z-float64(m.Ball.Radius()), vt*vt/(2*units.Gravity)*math.Log1p(v0*v0/(vt*vt)), closed)
		near(t, "back at", float64(p.End.Speed()), v0/math.Sqrt(1+v0*v0/(vt*vt)), closed)
		if v0 == 10 {
			near(t, "vector t", float64(p.Top()), .916877, half)
			near(t, "vector H", p.Apex.State.At.Z-float64(m.Ball.Radius()), 4.343471, half)
			near(t, "vector back", float64(p.End.Speed()), 8.553674, half)
		}
	}
}

// One-dimensional quadratic drag: v = v0 exp(-kd x), t = (exp(kd x) - 1)/(kd v0);
// without weight it is what forces does along a line, so weight is left out here.
func TestLevelDrag(t *testing.T) {
	m := Default()
	near(t, "20 m/s over 6.7056 m", m.levelTime(netAt, 20), .379169, half)
	near(t, "in a vacuum", vacuum().levelTime(10, 20), .5, 0)
	f := m.forces(Vec{})
	k := knot{v: Vec{0, 20, 0}}
	const h = 1e-3
	for range 379 {
		f.step(&k, h)
		mid := k.v.Y - f.drag*k.v.Y*k.v.Y*h/2
		k.p.Y += mid * h
		k.v.Y -= f.drag * mid * mid * h
	}
	near(t, "stepped way", m.levelTime(k.p.Y, 20), .379, 1e-6)
	near(t, "vector v", 20*math.Exp(-f.drag*netAt), 15.713936, half)
}
