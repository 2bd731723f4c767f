package flight

import (
	"homeside/model/court"
	"homeside/model/units"
)

// State is the ball at one moment.
type State struct {
	At       Vec // the ball's centre, m
	Velocity Vec // m/s
	Spin     Vec // rad/s, right-hand rule
}

// Ground is the point of the court below the ball.
func (s State) Ground() court.Point {
	return court.Pt(units.Metres(s.At.X).Feet(), units.Metres(s.At.Y).Feet())
}

// Height is the height of the ball's centre.
func (s State) Height() units.Metres { return units.Metres(s.At.Z) }

// Speed is the ball's speed over the ground.
func (s State) Speed() units.MetresPerSecond { return units.MetresPerSecond(s.Velocity.Length()) }

// Over is the place a height above a point of the court.
func Over(p court.Point, height units.Metres) Vec {
	return Vec{float64(p.X.Metres()), float64(p.Y.Metres()), float64(height)}
}

// TopSpin is the spin of a ball that leaves with velocity v: top about the level
// axis to the left of v (negative is backspin), side about the vertical (positive
// curves to the left). A ball hit straight up has no such axis and keeps only side.
func TopSpin(v Vec, top, side units.RPM) Vec {
	w := Vec{Z: side.RadiansPerSecond()}
	if n := v.Level().Length(); n > 0 {
		k := top.RadiansPerSecond() / n
		w.X, w.Y = -v.Y*k, v.X*k
	}
	return w
}
