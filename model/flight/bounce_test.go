package flight

import (
	"math"
	"testing"

	"homeside/model/units"

	"pgregory.net/rapid"

	_ "homeside/internal/fixedseed"
)

// Vectors of exact algebra: e .64, mu .45, a thin shell.
func TestBounceVectors(t *testing.T) {
	m := Default()
	for _, c := range []struct {
		name                 string
		forward, down        float64
		after, up, spinAfter float64
	}{
		{"slips", 12, 4, 9.048, 2.56, 119.35310},
		{"grips", 4, 4, 2.4, 2.56, 64.69003},
	} {
		s := m.Bounce(State{At: Vec{0, 3, .0371}, Velocity: Vec{0, c.forward, -c.down}})
		near(t, c.name+" forward", s.Velocity.Y, c.after, 1e-12)
		near(t, c.name+" up", s.Velocity.Z, c.up, 1e-12)
		near(t, c.name+" topspin", -s.Spin.X, c.spinAfter, 5.01e-6)
	}
	p := mustFly(t, m, struck(18, 10, .8))
	s := m.Bounce(p.End)
	near(t, "18@10 leaves forward", s.Velocity.Y, 8.318448, half)
	near(t, "18@10 leaves up", s.Velocity.Z, 2.877186, half)
	s.Spin = Vec{} // the vector leaves it out
	q := mustFly(t, m, s)
	near(t, "apex after", float64(q.Top()), .281209, half)
	near(t, "apex x", q.Apex.State.At.Y+netAt, 13.774468, half)
	near(t, "apex z", q.Apex.State.At.Z, .435686, half)
}

// The rulebook's drop test: dropped from 78 in it rebounds 30 to 34 in, both read at
// the ball's top; e from sqrt(30/78) to sqrt(34/78) by that figure alone, and a little
// more (0.629 to 0.675) with air and the top of the ball.
func TestDropTest(t *testing.T) {
	inches := func(e float64) float64 {
		m := Default()
		m.Surface.Restitution = e
		r := m.Ball.Radius()
		p := mustFly(t, m, State{At: Vec{0, 3, float64(units.Inches(78).Metres() - r)}})
		q := mustFly(t, m, m.Bounce(p.End))
		return (q.Apex.State.Height() + r).Feet().Inches()
	}
	for _, c := range []struct{ e, want float64 }{{.629, 30}, {.653, 32}, {.675, 34}} {
		near(t, "rebound in inches", inches(c.e), c.want, .1)
	}
	if got := inches(Court.Restitution); got < 30 || got > 34 {
		t.Errorf("the default court returns %v in of 78, want 30 to 34", got)
	}
}

func anyState(t *rapid.T) State {
	v := func(name string, lo, hi float64) float64 { return rapid.Float64Range(lo, hi).Draw(t, name) }
	return State{
		At:       Vec{v("x", -3, 3), v("y", -10, 10), v("z", .05, 3)},
		Velocity: Vec{v("vx", -10, 10), v("vy", -20, 20), v("vz", -10, 15)},
		Spin:     Vec{v("wx", -200, 200), v("wy", -200, 200), v("wz", -200, 200)},
	}
}

// energy is kinetic and spinning energy for each kilogram.
func energy(s State, r float64) float64 {
	return s.Velocity.squared()/2 + shellInertia*r*r*s.Spin.squared()/2
}

func TestBounceProperties(t *testing.T) {
	m := Default()
	r := float64(m.Ball.Radius())
	rapid.Check(t, func(t *rapid.T) {
		s := anyState(t)
		s.Velocity.Z = -rapid.Float64Range(.1, 15).Draw(t, "down")
		b := m.Bounce(s)
		if got, want := energy(b, r), energy(s, r); got > want*(1+1e-12) {
			t.Fatalf("Bounce(%v): energy %v, was %v", s, got, want)
		}
		slip := func(s State) Vec { return Vec{s.Velocity.X - r*s.Spin.Y, s.Velocity.Y + r*s.Spin.X, 0} }
		if dot(slip(b), slip(s)) < -1e-9 {
			t.Fatalf("Bounce(%v): slip turned from %v to %v without tangential restitution", s, slip(s), slip(b))
		}
		if b.Spin.Z != s.Spin.Z || b.At != s.At || b.Velocity.Z <= 0 {
			t.Fatalf("Bounce(%v) = %v: want the place and the spin about the vertical as they were, and up", s, b)
		}
		if again := m.Bounce(b); again != b {
			t.Fatalf("Bounce of a rising ball = %v, want it unchanged", again)
		}
	})
}

// Backspin can turn a steep ball back; topspin shoots it on.
func TestSpinAtTheBounce(t *testing.T) {
	m := Default()
	steep := State{At: Vec{0, 1, .0371}, Velocity: Vec{0, 2, -8}}
	plain := m.Bounce(steep).Velocity.Y
	steep.Spin = TopSpin(steep.Velocity, 1500, 0)
	if got := m.Bounce(steep).Velocity.Y; got <= plain {
		t.Errorf("topspin leaves at %v m/s, no spin at %v; want it faster", got, plain)
	}
	steep.Spin = TopSpin(steep.Velocity, -3000, 0)
	if got := m.Bounce(steep).Velocity.Y; got >= 0 {
		t.Errorf("strong backspin leaves at %v m/s, want it coming back", got)
	}
	if math.Abs(m.Bounce(steep).Velocity.X) > 1e-12 {
		t.Error("backspin alone moved the ball aside")
	}
}
