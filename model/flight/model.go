package flight

import (
	"errors"
	"fmt"
	"math"

	"homeside/model/units"
)

// Bounds of what is flown at all; beyond them a figure is taken for a slip of the pen.
const (
	MostSpeed = 200 // m/s, several times the fastest serve
	MostSpin  = 1e5 // rad/s
	MostPlace = 1e4 // m from the net's centre
)

// Errors of a flight that cannot start. They are wrapped with the figure.
var (
	ErrModel     = errors.New("ball, air or court out of range")
	ErrNotFinite = errors.New("not a number")
	ErrBelow     = errors.New("ball below the court")
	ErrAbsurd    = errors.New("beyond all that is flown")
)

// Model is everything a flight depends on but its launch. Start from Default.
type Model struct {
	Ball      Ball
	Air       Air
	Surface   Surface
	Net       Net
	Tolerance float64               // error of one step, m and m/s; 0 is DefaultTolerance
	Longest   units.Seconds         // when a flight is given up; 0 is 30 s
	Fastest   units.MetresPerSecond // the fastest launch Solve may answer; 0 is 30 m/s
}

// DefaultTolerance keeps the landing well within 1e-7 m of the exact one.
const DefaultTolerance = 1e-8

// Default is the outdoor ball in still air at sea level over the rulebook's net.
func Default() Model {
	return Model{Ball: Outdoor, Air: Air{Density: SeaLevel}, Surface: Court}
}

// Bounce is the ball just after touching the court with s. A ball that is not
// coming down is left as it is.
func (m Model) Bounce(s State) State { return m.Surface.bounce(s, float64(m.Ball.Radius())) }

func (m Model) tolerance() float64 {
	if m.Tolerance == 0 {
		return DefaultTolerance
	}
	return m.Tolerance
}

func (m Model) longest() float64 {
	if m.Longest > 0 {
		return float64(m.Longest)
	}
	return 30
}

func (m Model) fastest() float64 {
	if m.Fastest > 0 {
		return float64(m.Fastest)
	}
	return 30
}

// check says why the model cannot be flown.
func (m Model) check() error {
	for _, f := range [...]struct {
		name           string
		value, lo, top float64
	}{
		{"ball's mass in kg", m.Ball.Mass, 0.005, 0.2},
		{"ball's diameter in m", float64(m.Ball.Diameter), 0.02, 0.2},
		{"drag coefficient", m.Ball.Drag, 0, 10},
		{"lift coefficient", m.Ball.Lift, 0, 10},
		{"greatest lift coefficient", m.Ball.LiftCap, 0, 10},
		{"air density in kg/m³", m.Air.Density, 0, 10},
		{"restitution", m.Surface.Restitution, 0, 1},
		{"friction", m.Surface.Friction, 0, 10},
		{"tangential restitution", m.Surface.Tangential, -1, 1},
		{"wind in m/s", m.Air.Wind.Length(), 0, 100},
		{"tolerance in m", m.tolerance(), 1e-12, 1e-3},
		{"longest flight in s", float64(m.Longest), 0, 1000},
		{"fastest launch in m/s", float64(m.Fastest), 0, MostSpeed},
		{"net in m", float64(m.Net.Flat), 0, 100},
	} {
		if !(f.value >= f.lo && f.value <= f.top) {
			return fmt.Errorf("%w: %s %v, want %v to %v", ErrModel, f.name, f.value, f.lo, f.top)
		}
	}
	return nil
}

// checkStart says why a flight cannot start from s.
func (m Model) checkStart(s State) error {
	if !s.At.Finite() || !s.Velocity.Finite() || !s.Spin.Finite() {
		return fmt.Errorf("launch: %w", ErrNotFinite)
	}
	if s.At.Z < float64(m.Ball.Radius())-floorSlack {
		return fmt.Errorf("%w: centre at %v m, radius %v m", ErrBelow, s.At.Z, m.Ball.Radius())
	}
	for _, f := range [...]struct {
		name        string
		value, most float64
	}{
		{"launch speed in m/s", s.Velocity.Length(), MostSpeed},
		{"spin in rad/s", s.Spin.Length(), MostSpin},
		{"distance in m", s.At.Length(), MostPlace},
	} {
		if math.Abs(f.value) > f.most {
			return fmt.Errorf("%w: %s %v, at most %v", ErrAbsurd, f.name, f.value, f.most)
		}
	}
	return nil
}

// floorSlack (m) forgives the rounding of a contact height given in feet.
const floorSlack = 1e-9
