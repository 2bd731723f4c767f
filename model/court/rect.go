package court

import "homeside/model/units"

// Rect is an upright rectangle on the ground, edges included.
type Rect struct{ Min, Max Point }

// RectOf is the rectangle with the two corners, in any order.
func RectOf(a, b Point) Rect {
	return Rect{Point{min(a.X, b.X), min(a.Y, b.Y)}, Point{max(a.X, b.X), max(a.Y, b.Y)}}
}

// Contains says whether p is in r or on its edge.
func (r Rect) Contains(p Point) bool {
	return r.Min.X <= p.X && p.X <= r.Max.X && r.Min.Y <= p.Y && p.Y <= r.Max.Y
}

// Width is the extent along x.
func (r Rect) Width() units.Feet { return r.Max.X - r.Min.X }

// Height is the extent along y.
func (r Rect) Height() units.Feet { return r.Max.Y - r.Min.Y }

// Centre is the middle of r.
func (r Rect) Centre() Point { return r.Min.Toward(r.Max, 0.5) }

// Grow is r made larger by d on every side.
func (r Rect) Grow(d units.Feet) Rect {
	return Rect{Point{r.Min.X - d, r.Min.Y - d}, Point{r.Max.X + d, r.Max.Y + d}}
}

// Mirror is r seen by the other end.
func (r Rect) Mirror() Rect { return RectOf(r.Min.Mirror(), r.Max.Mirror()) }
