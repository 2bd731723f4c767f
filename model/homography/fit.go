package homography

import (
	"fmt"
	"math"
)

// Least is how many pairs a map needs.
const Least = 4

// Reason is why pairs say no map.
type Reason uint8

// The reasons.
const (
	TooFew      Reason = iota // fewer than Least
	NoNumber                  // a place is not a number
	InLine                    // three of four lie on a line, in the picture or on the court, or too many of more
	NotOneCourt               // no camera in front of the court sees them so: two have changed places
	Mirrored                  // left and right have changed places
)

var reasons = [...]string{"fewer than four points", "a place is not a number", "points on a line", "points that no picture of a court has", "left and right exchanged"}

// Error says why pairs say no map.
type Error struct {
	Reason Reason
	Points []int // of InLine, those three if it is three, from 0
}

// Error says it.
func (e Error) Error() string {
	text := "fit a court to a picture: " + reasons[int(e.Reason)%len(reasons)]
	if len(e.Points) > 0 {
		text += fmt.Sprintf(" %v", e.Points)
	}
	return text
}

// Fit is the map that fits the pairs best: exactly if there are four, otherwise
// with the least algebraic error of the normalised equations. The error is an
// Error.
func Fit(pairs []Pair) (Map, error) {
	if err := check(pairs); err != nil {
		return Map{}, err
	}
	ground, picture := normals(pairs)
	h, ok := solve(pairs, ground, picture)
	if !ok {
		return Map{}, Error{Reason: InLine}
	}
	back, ok := picture.inverse()
	if !ok {
		return Map{}, Error{Reason: InLine}
	}
	return settled(back.after(h).after(ground), pairs)
}

func check(pairs []Pair) error {
	if len(pairs) < Least {
		return Error{Reason: TooFew}
	}
	for _, p := range pairs {
		if !p.Court.Finite() || math.IsNaN(p.Px.X-p.Px.X) || math.IsNaN(p.Px.Y-p.Px.Y) {
			return Error{Reason: NoNumber}
		}
	}
	if len(pairs) > Least {
		return nil // what lies on a line shows when they are solved
	}
	for _, three := range [...][3]int{{0, 1, 2}, {0, 1, 3}, {0, 2, 3}, {1, 2, 3}} {
		a, b, c := pairs[three[0]], pairs[three[1]], pairs[three[2]]
		if flat(onGround(a), onGround(b), onGround(c)) || flat(a.Px, b.Px, c.Px) {
			return Error{Reason: InLine, Points: three[:]}
		}
	}
	return nil
}

func onGround(p Pair) Px { return Px{float64(p.Court.X), float64(p.Court.Y)} }

// flattest is the height of a triangle over its longest side, as a share of it,
// below which its corners count as on a line: a hundredth, the sharpness of a hand.
const flattest = 0.01

func flat(a, b, c Px) bool {
	double := math.Abs((b.X-a.X)*(c.Y-a.Y) - (c.X-a.X)*(b.Y-a.Y))
	long := max(math.Hypot(b.X-a.X, b.Y-a.Y), math.Hypot(c.X-a.X, c.Y-a.Y), math.Hypot(c.X-b.X, c.Y-b.Y))
	return !(double > flattest*long*long)
}

// normals are the similarities that move the points to the origin, at a mean
// distance of sqrt 2 from it (alg. 4.2, steps i and ii), on the ground and in the
// picture.
func normals(pairs []Pair) (ground, picture Map) {
	return normal(pairs, onGround), normal(pairs, func(p Pair) Px { return p.Px })
}

func normal(pairs []Pair, of func(Pair) Px) Map {
	var mid Px
	n := float64(len(pairs))
	for _, p := range pairs {
		mid.X += of(p).X / n
		mid.Y += of(p).Y / n
	}
	mean := 0.0
	for _, p := range pairs {
		mean += math.Hypot(of(p).X-mid.X, of(p).Y-mid.Y) / n
	}
	k := math.Sqrt2 / max(mean, 1e-12) // points all in one place are found flat
	return Map{{k, 0, -k * mid.X}, {0, k, -k * mid.Y}, {0, 0, 1}}
}

// solve is the null vector of the equations of normalised pairs, two each
// (eq. 4.3); false if it is not the only one.
func solve(pairs []Pair, ground, picture Map) (Map, bool) {
	var ata [9][9]float64
	for _, p := range pairs {
		g := onGround(p)
		x, y := ground.times(g.X, g.Y), picture.times(p.Px.X, p.Px.Y)
		addSquare(&ata, [9]float64{0, 0, 0, -x[0], -x[1], -x[2], y[1] * x[0], y[1] * x[1], y[1] * x[2]})
		addSquare(&ata, [9]float64{x[0], x[1], x[2], 0, 0, 0, -y[0] * x[0], -y[0] * x[1], -y[0] * x[2]})
	}
	values, vectors := eigen(ata)
	small, next, most := order(values)
	if !(values[next] > leastRank*values[most]) {
		return Map{}, false
	}
	var h Map
	for i := range 9 {
		h[i/3][i%3] = vectors[i][small]
	}
	return h, true
}

// leastRank is the square of the second smallest singular value, as a share of
// the largest's, below which there is more than one solution.
const leastRank = 1e-8

func addSquare(m *[9][9]float64, row [9]float64) {
	for i := range row {
		for j := range row {
			m[i][j] += row[i] * row[j]
		}
	}
}

// order finds the smallest, the second smallest and the largest value.
func order(v [9]float64) (small, next, most int) {
	next = 1
	if v[1] < v[0] {
		small, next = 1, 0
	}
	for i := 2; i < len(v); i++ {
		switch {
		case v[i] < v[small]:
			small, next = i, small
		case v[i] < v[next]:
			next = i
		}
	}
	for i := range v {
		if v[i] > v[most] {
			most = i
		}
	}
	return small, next, most
}

// settled scales a map so that the mean depth of the pairs is 1; an error if some
// are behind the camera, or if it looks at the court from below.
func settled(m Map, pairs []Pair) (Map, error) {
	sum := 0.0
	for _, p := range pairs {
		sum += m.times(float64(p.Court.X), float64(p.Court.Y))[2] / float64(len(pairs))
	}
	m = m.scaled(1 / sum)
	for _, p := range pairs {
		if px, ok := m.ToPx(p.Court); !ok || math.IsNaN(px.X+px.Y) {
			return Map{}, Error{Reason: NotOneCourt}
		}
	}
	// x to the right and y away from the eye turn to the left on the ground and,
	// y being down, to the right in the picture: the determinant is below 0.
	if _, ok := m.inverse(); !ok {
		return Map{}, Error{Reason: InLine}
	}
	if m.det() > 0 {
		return Map{}, Error{Reason: Mirrored}
	}
	return m, nil
}

func (m Map) det() float64 {
	return m[0][0]*(m[1][1]*m[2][2]-m[1][2]*m[2][1]) - m[0][1]*(m[1][0]*m[2][2]-m[1][2]*m[2][0]) + m[0][2]*(m[1][0]*m[2][1]-m[1][1]*m[2][0])
}
