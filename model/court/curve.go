package court

import (
	"math"
	"sort"

	"homeside/model/units"
)

// chords is the number of chords a bend is measured with: a run of 20 ft with a
// deep bend is then long by less than 0.05 in.
const chords = 64

// Curve is the path of a run: straight, or a parabola through a third point
// halfway. The zero value stays at the origin.
type Curve struct {
	from, handle, to Point
	bent             bool
	lengths          []units.Feet // of a bend, from its start to the end of each chord
	straight         units.Feet
}

// StraightCurve is the straight path from a to b.
func StraightCurve(a, b Point) Curve {
	return Curve{from: a, handle: a.Toward(b, 0.5), to: b, straight: a.Distance(b)}
}

// BentCurve is the path from a to b that passes through via halfway of its
// parameter: a quadratic Bézier with the handle 2 via - (a+b)/2.
func BentCurve(a, via, b Point) Curve {
	c := StraightCurve(a, b)
	c.handle = via.Times(2).Sub(a.Add(b).Times(0.5))
	c.bent = true
	c.lengths = make([]units.Feet, chords)
	sum, last := units.Feet(0), a
	for i := range chords {
		p := c.at(float64(i+1) / chords)
		sum += last.Distance(p)
		c.lengths[i], last = sum, p
	}
	return c
}

// Ends are the first and the last point.
func (c Curve) Ends() (from, to Point) { return c.from, c.to }

// Handle is the quadratic Bézier's middle control point; of a straight curve, its middle.
func (c Curve) Handle() Point { return c.handle }

// Bent says whether the curve is not straight.
func (c Curve) Bent() bool { return c.bent }

// Length is the length of the way.
func (c Curve) Length() units.Feet {
	if c.bent {
		return c.lengths[chords-1]
	}
	return c.straight
}

// At is the point after a share of the way, clamped to 0 and 1.
func (c Curve) At(share float64) Point { return c.at(c.parameter(share)) }

// DirectionAt is the direction of the way there; false where it has none.
func (c Curve) DirectionAt(share float64) (Point, bool) {
	u := c.parameter(share)
	return c.handle.Sub(c.from).Times(1 - u).Add(c.to.Sub(c.handle).Times(u)).Unit()
}

func (c Curve) at(u float64) Point {
	return c.from.Toward(c.handle, u).Toward(c.handle.Toward(c.to, u), u)
}

// parameter is the Bézier's parameter after a share of the length.
func (c Curve) parameter(share float64) float64 {
	share = min(max(share, 0), 1)
	if !c.bent {
		return share
	}
	want := c.Length() * units.Feet(share)
	i := sort.Search(chords-1, func(i int) bool { return c.lengths[i] >= want })
	before := units.Feet(0)
	if i > 0 {
		before = c.lengths[i-1]
	}
	if part := c.lengths[i] - before; part > 0 {
		return (float64(i) + float64((want-before)/part)) / chords
	}
	return float64(i) / chords
}

// LeastRadius is the radius of the tightest turn; +Inf for a straight way, 0 for
// one that turns back on itself.
// For a quadratic Bézier with second difference d and cross product area A of
// its two legs the radius is |B'|^3 / 4A; |B'|, the speed along it, is least
// where it is square to d (standard differential geometry).
func (c Curve) LeastRadius() units.Feet {
	a, b := c.handle.Sub(c.from), c.to.Sub(c.handle)
	d := b.Sub(a)
	cross := math.Abs(float64(a.X*b.Y - a.Y*b.X))
	dd := float64(d.X*d.X + d.Y*d.Y)
	switch {
	case c.bent && cross == 0 && a.X*b.X+a.Y*b.Y < 0:
		return 0
	case !c.bent || cross == 0 || dd == 0:
		return units.Feet(math.Inf(1))
	}
	u := min(max(-float64(a.X*d.X+a.Y*d.Y)/dd, 0), 1)
	speed := 2 * float64(a.Add(d.Times(u)).Length())
	return units.Feet(speed * speed * speed / (4 * cross))
}
