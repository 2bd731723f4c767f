package canvas

import (
	"math"

	"homeside/model/court"
	"homeside/model/units"
)

// Lens is how a picture is seen in perspective: three rows of a camera matrix
// (Hartley and Zisserman, Multiple View Geometry, 2nd ed. 2004, ch. 6) that take
// (x, y, z, 1) in feet to a place in the picture, X/W to the right and Y/W down,
// in feet at depth 1, and to the depth W. The zero Lens is none.
type Lens struct{ X, Y, W [4]float64 }

// nearest is the least depth, as a share of the depth at which the scale is the
// view's, that is drawn: nearer things would fill the picture.
const nearest = 0.02

// On says whether there is a lens.
func (l Lens) On() bool { return l.W != [4]float64{} }

// Depth is the depth of a place: 1 where the scale is the view's, 2 where things
// are half as large, 0 or less behind the eye.
func (l Lens) Depth(at Vec) float64 { return row(l.W, at) }

func row(r [4]float64, v Vec) float64 {
	return r[0]*float64(v.X) + r[1]*float64(v.Y) + r[2]*float64(v.Z) + r[3]
}

// least is the smallest third coordinate of a point that is still divided by: its
// point of the court is then millions of feet away.
const least = 1e-9

// ground is the point of the court seen at a place of the picture in feet at
// depth 1: the lens on the plane z = 0, inverted by its adjugate.
func (l Lens) ground(x, y float64) court.Point {
	a, b, c := flat(l.X), flat(l.Y), flat(l.W)
	p := cross(b, c)
	q := cross(c, a)
	r := cross(a, b)
	det := dot(a, p)
	if det == 0 {
		return court.Point{}
	}
	var h [3]float64
	for i := range h {
		h[i] = (p[i]*x + q[i]*y + r[i]) / det
	}
	w := max(h[2], least)
	return court.Pt(units.Feet(h[0]/w), units.Feet(h[1]/w))
}

// flat is a row for points on the ground.
func flat(r [4]float64) [3]float64 { return [3]float64{r[0], r[1], r[3]} }

func cross(a, b [3]float64) [3]float64 {
	return [3]float64{a[1]*b[2] - a[2]*b[1], a[2]*b[0] - a[0]*b[2], a[0]*b[1] - a[1]*b[0]}
}

func dot(a, b [3]float64) float64 { return a[0]*b[0] + a[1]*b[1] + a[2]*b[2] }

// Plane is the lens of a picture of the ground, h taking (x, y, 1) in feet to
// pixels, and the scale that goes with it: a view with the lens, the scale and
// its origin at 0, 0 draws in those pixels. The scale is that at a point of the
// court, across the way in which the picture is foreshortened. Heights do not
// show. False if the point is not in front of the picture.
func Plane(h [3][3]float64, at court.Point) (Lens, float64, bool) {
	x, y := float64(at.X), float64(at.Y)
	u, v, w := h[0][0]*x+h[0][1]*y+h[0][2], h[1][0]*x+h[1][1]*y+h[1][2], h[2][0]*x+h[2][1]*y+h[2][2]
	var j [2][2]float64 // of u/w, v/w by x, y
	for i := range 2 {
		j[0][i] = (h[0][i] - u/w*h[2][i]) / w
		j[1][i] = (h[1][i] - v/w*h[2][i]) / w
	}
	scale := stretch(j)
	if !(scale > 0) || math.IsInf(scale, 0) {
		return Lens{}, 0, false
	}
	return Lens{
		X: [4]float64{h[0][0] / w / scale, h[0][1] / w / scale, 0, h[0][2] / w / scale},
		Y: [4]float64{h[1][0] / w / scale, h[1][1] / w / scale, 0, h[1][2] / w / scale},
		W: [4]float64{h[2][0] / w, h[2][1] / w, 0, h[2][2] / w},
	}, scale, true
}

// stretch is the larger singular value of a matrix.
func stretch(j [2][2]float64) float64 {
	sum := j[0][0]*j[0][0] + j[0][1]*j[0][1] + j[1][0]*j[1][0] + j[1][1]*j[1][1]
	det := j[0][0]*j[1][1] - j[0][1]*j[1][0]
	return math.Sqrt((sum + math.Sqrt(max(sum*sum-4*det*det, 0))) / 2)
}
