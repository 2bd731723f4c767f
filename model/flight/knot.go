package flight

// knot is the ball at the end of one step.
type knot struct {
	t       float64 // s since the launch
	p, v, a Vec     // m, m/s, m/s²
}

// quintic is one coordinate between two knots: c[0] + c[1] s + ... + c[5] s⁵ for s in [0, 1].
type quintic [6]float64

// hermite is the quintic over h seconds with place, velocity and acceleration given at both ends.
func hermite(h, p0, v0, a0, p1, v1, a1 float64) quintic {
	c1, c2 := h*v0, h*h*a0/2
	d := p1 - (p0 + c1 + c2)
	e := h*v1 - (c1 + 2*c2)
	f := h*h*a1 - 2*c2
	return quintic{p0, c1, c2, 10*d - 4*e + f/2, -15*d + 7*e - f, 6*d - 3*e + f/2}
}

func (q *quintic) at(s float64) float64 {
	return q[0] + s*(q[1]+s*(q[2]+s*(q[3]+s*(q[4]+s*q[5]))))
}

func (q *quintic) slope(s float64) float64 {
	return q[1] + s*(2*q[2]+s*(3*q[3]+s*(4*q[4]+s*5*q[5])))
}

func (q *quintic) bend(s float64) float64 {
	return 2*q[2] + s*(6*q[3]+s*(12*q[4]+s*20*q[5]))
}

// between gives the coordinates between knots a and b.
func between(a, b *knot) (x, y, z quintic) {
	return acrossOf(a, b), alongOf(a, b), upOf(a, b)
}

func acrossOf(a, b *knot) quintic { return hermite(b.t-a.t, a.p.X, a.v.X, a.a.X, b.p.X, b.v.X, b.a.X) }
func alongOf(a, b *knot) quintic  { return hermite(b.t-a.t, a.p.Y, a.v.Y, a.a.Y, b.p.Y, b.v.Y, b.a.Y) }
func upOf(a, b *knot) quintic     { return hermite(b.t-a.t, a.p.Z, a.v.Z, a.a.Z, b.p.Z, b.v.Z, b.a.Z) }

// inside is the knot a share s of the step from a to b.
func inside(a, b *knot, s float64) knot {
	x, y, z := between(a, b)
	h := b.t - a.t
	k := knot{t: a.t + s*h, p: Vec{x.at(s), y.at(s), z.at(s)}}
	if h > 0 {
		k.v = Vec{x.slope(s), y.slope(s), z.slope(s)}.Times(1 / h)
		k.a = Vec{x.bend(s), y.bend(s), z.bend(s)}.Times(1 / (h * h))
	} else {
		k.v, k.a = a.v, a.a
	}
	return k
}

// root finds s in [lo, hi] where a coordinate passes level, given that it is on
// different sides at both: Newton's method kept inside the bracket by halving.
func (q *quintic) root(level, lo, hi float64) float64 {
	below := q.at(lo) < level
	s := lo + (hi-lo)/2
	for range 80 {
		y := q.at(s) - level
		if y == 0 {
			return s
		}
		if (y < 0) == below {
			lo = s
		} else {
			hi = s
		}
		next := s - y/q.slope(s)
		if !(next >= lo && next <= hi) {
			next = lo + (hi-lo)/2
		}
		if d := next - s; d < rootShare && d > -rootShare {
			return next
		}
		s = next
	}
	return s
}

// turn is the share of the way at which a coordinate turns back, given its
// speeds at both ends; false if it does not.
func (q *quintic) turn(v0, v1 float64) (float64, bool) {
	if v0 > 0 == (v1 > 0) {
		return 0, false
	}
	slope := quintic{q[1], 2 * q[2], 3 * q[3], 4 * q[4], 5 * q[5]}
	return slope.root(0, 0, 1), true
}

// rootShare is the share of a step to which events are found: below 1e-13 s.
const rootShare = 1e-13
