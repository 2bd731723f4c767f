package court

import (
	"math"

	"homeside/model/units"
)

// Point is a place on the ground.
type Point struct{ X, Y units.Feet }

// Pt is short for Point{x, y}.
func Pt(x, y units.Feet) Point { return Point{X: x, Y: y} }

// Add is p moved by q.
func (p Point) Add(q Point) Point { return Point{p.X + q.X, p.Y + q.Y} }

// Sub is the way from q to p.
func (p Point) Sub(q Point) Point { return Point{p.X - q.X, p.Y - q.Y} }

// Times is p scaled about the origin.
func (p Point) Times(k float64) Point { return Point{p.X * units.Feet(k), p.Y * units.Feet(k)} }

// Length is the distance from the origin.
func (p Point) Length() units.Feet { return units.Feet(math.Hypot(float64(p.X), float64(p.Y))) }

// Distance is the distance between p and q.
func (p Point) Distance(q Point) units.Feet { return p.Sub(q).Length() }

// Toward is the point a share s of the way from p to q; s is not clamped.
func (p Point) Toward(q Point, s float64) Point { return p.Add(q.Sub(p).Times(s)) }

// Mirror is p seen by the other end: the court turned half round the net's centre.
func (p Point) Mirror() Point { return Point{-p.X, -p.Y} }

// Finite says whether both coordinates are ordinary numbers.
func (p Point) Finite() bool {
	s := float64(p.X) + float64(p.Y)
	return !math.IsNaN(s) && !math.IsInf(s, 0)
}

// Unit is the direction of p; false if p has no length.
func (p Point) Unit() (Point, bool) {
	l := p.Length()
	if l == 0 || !p.Finite() {
		return Point{}, false
	}
	return p.Times(1 / float64(l)), true
}

// Direction is the way a facing looks: 0 is +y, 90 is +x (clockwise from above).
func Direction(facing units.Degrees) Point {
	s, c := math.Sincos(facing.Radians())
	return Point{units.Feet(s), units.Feet(c)}
}

// RightOf is the direction to the right of a facing.
func RightOf(facing units.Degrees) Point { return Direction(facing + 90) }

// FacingTo is the facing of one who looks from p to q; false if they coincide.
func FacingTo(p, q Point) (units.Degrees, bool) {
	u, ok := q.Sub(p).Unit()
	if !ok {
		return 0, false
	}
	return units.FromRadians(math.Atan2(float64(u.X), float64(u.Y))).Normal(), true
}
