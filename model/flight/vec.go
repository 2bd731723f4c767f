package flight

import "math"

// Vec is a vector in the court's axes: x to the right, y forward for the near
// team, z up, the origin on the ground under the net's centre. Metres, m/s or rad/s.
type Vec struct{ X, Y, Z float64 }

// Add is v + w.
func (v Vec) Add(w Vec) Vec { return Vec{v.X + w.X, v.Y + w.Y, v.Z + w.Z} }

// Sub is v - w.
func (v Vec) Sub(w Vec) Vec { return Vec{v.X - w.X, v.Y - w.Y, v.Z - w.Z} }

// Times is k v.
func (v Vec) Times(k float64) Vec { return Vec{k * v.X, k * v.Y, k * v.Z} }

// Cross is v × w.
func (v Vec) Cross(w Vec) Vec {
	return Vec{v.Y*w.Z - v.Z*w.Y, v.Z*w.X - v.X*w.Z, v.X*w.Y - v.Y*w.X}
}

// Length is |v|.
func (v Vec) Length() float64 { return math.Sqrt(v.squared()) }

// Level is v without its vertical part.
func (v Vec) Level() Vec { return Vec{v.X, v.Y, 0} }

// Finite says whether all three parts are ordinary numbers.
func (v Vec) Finite() bool {
	s := v.X*0 + v.Y*0 + v.Z*0
	return s == 0
}

func (v Vec) squared() float64 { return v.X*v.X + v.Y*v.Y + v.Z*v.Z }
