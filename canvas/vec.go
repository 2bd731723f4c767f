package canvas

import (
	"math"

	"homeside/model/court"
	"homeside/model/units"
)

// Vec is a place above the court, or a direction: x and y as on the court, z up.
type Vec struct{ X, Y, Z units.Feet }

// Above is the place at a height over a point of the court.
func Above(p court.Point, z units.Feet) Vec { return Vec{p.X, p.Y, z} }

// Ground is the point of the court below.
func (a Vec) Ground() court.Point { return court.Pt(a.X, a.Y) }

// Add is a + b.
func (a Vec) Add(b Vec) Vec { return Vec{a.X + b.X, a.Y + b.Y, a.Z + b.Z} }

// Sub is a - b.
func (a Vec) Sub(b Vec) Vec { return Vec{a.X - b.X, a.Y - b.Y, a.Z - b.Z} }

// Times is a scaled by k.
func (a Vec) Times(k float64) Vec {
	f := units.Feet(k)
	return Vec{a.X * f, a.Y * f, a.Z * f}
}

// Dot is the scalar product of a and b.
func (a Vec) Dot(b Vec) float64 { return float64(a.X*b.X + a.Y*b.Y + a.Z*b.Z) }

// Cross is the vector product of a and b.
func (a Vec) Cross(b Vec) Vec {
	return Vec{a.Y*b.Z - a.Z*b.Y, a.Z*b.X - a.X*b.Z, a.X*b.Y - a.Y*b.X}
}

// Unit is the direction of a; false if it has none.
func (a Vec) Unit() (Vec, bool) {
	n := math.Sqrt(a.Dot(a))
	if !(n > 0) || math.IsInf(n, 0) {
		return Vec{}, false
	}
	return a.Times(1 / n), true
}
