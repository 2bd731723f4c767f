package homography

import (
	"math"

	"homeside/model/court"
	"homeside/model/units"
)

// Px is a place in a picture in pixels, y down.
type Px struct{ X, Y float64 }

// Pair is a point of the court and where it is in the picture.
type Pair struct {
	Court court.Point
	Px    Px
}

// Map takes (x, y, 1) in feet to a picture's pixels times their depth; the depth
// is above 0 for what is in front of the camera. Make one with Fit. The zero Map
// maps nothing.
type Map [3][3]float64

// least is the smallest depth, of the fitted points' own of about 1, at which a
// point is in the picture: nearer to the horizon pixels say nothing.
const least = 1e-6

// ToPx is where a point of the ground is in the picture; false if it is not in
// front of the camera.
func (m Map) ToPx(p court.Point) (Px, bool) {
	q := m.times(float64(p.X), float64(p.Y))
	if !(q[2] > least) {
		return Px{}, false
	}
	return Px{q[0] / q[2], q[1] / q[2]}, true
}

// ToCourt is the point of the ground at a pixel; false above the horizon.
func (m Map) ToCourt(px Px) (court.Point, bool) {
	inv, ok := m.inverse()
	if !ok {
		return court.Point{}, false
	}
	q := inv.times(px.X, px.Y) // (x, y, 1) over the depth
	p := court.Pt(units.Feet(q[0]/q[2]), units.Feet(q[1]/q[2]))
	if !(q[2] > 0) || !p.Finite() {
		return court.Point{}, false
	}
	return p, true
}

// Residual is how far from a point of the court the map has what is at its place
// in the picture; false where the map has nothing there.
func (m Map) Residual(p Pair) (units.Feet, bool) {
	at, ok := m.ToCourt(p.Px)
	return at.Distance(p.Court), ok
}

// InPicture is how many pixels from its place a pair's point of the court is.
func (m Map) InPicture(p Pair) (float64, bool) {
	at, ok := m.ToPx(p.Court)
	return math.Hypot(at.X-p.Px.X, at.Y-p.Px.Y), ok
}

func (m Map) times(x, y float64) (q [3]float64) {
	for i, r := range m {
		q[i] = r[0]*x + r[1]*y + r[2]
	}
	return q
}

// inverse is by the adjugate; false if there is none. It keeps the sign of the
// depth.
func (m Map) inverse() (Map, bool) {
	var adj Map
	for i := range 3 {
		for j := range 3 {
			a, b, c, d := (j+1)%3, (j+2)%3, (i+1)%3, (i+2)%3
			adj[i][j] = m[a][c]*m[b][d] - m[a][d]*m[b][c]
		}
	}
	det := m[0][0]*adj[0][0] + m[0][1]*adj[1][0] + m[0][2]*adj[2][0]
	if det == 0 || math.IsNaN(det) || math.IsInf(det, 0) {
		return Map{}, false
	}
	return adj.scaled(1 / det), true
}

func (m Map) scaled(k float64) Map {
	for i := range m {
		for j := range m[i] {
			m[i][j] *= k
		}
	}
	return m
}

func (m Map) after(n Map) (out Map) {
	for i := range 3 {
		for j := range 3 {
			for k := range 3 {
				out[i][j] += m[i][k] * n[k][j]
			}
		}
	}
	return out
}
