package cover

import (
	"math"
	"sync"

	"homeside/model/movement"
	"homeside/model/units"
)

// runThrough is Pace.Through by a table, within closeTo of it: fast enough for
// thousands of cells while something is dragged. Counted in units of V tau and tau, the
// curve is the same for every pace, and over the square root of the distance
// it is smooth from the first step on.
func runThrough(p *movement.Pace, d units.Metres) units.Seconds {
	if !(d > 0) {
		return p.Through(d)
	}
	x := math.Sqrt(float64(d)/(float64(p.TopSpeed)*float64(p.Tau))) / legStep
	i := int(min(x, legNodes))
	if i < 1 || i+2 >= legNodes {
		return p.Through(d)
	}
	t := legs()
	return p.Tau * units.Seconds(cubic(t[i-1], t[i], t[i+1], t[i+2], x-float64(i)))
}

// closeTo is more than runThrough is ever off for a time constant of at most 10 s.
const closeTo units.Seconds = 1e-7

const (
	legStep  = 0.01 // of the square root of distance / (V tau)
	legNodes = 600  // up to 36 V tau, far beyond a court
)

// legs is the table: the time over the time constant.
var legs = sync.OnceValue(func() []float64 {
	one := movement.Pace{TopSpeed: 1, Tau: 1}
	t := make([]float64, legNodes)
	for i := range t {
		root := float64(i) * legStep
		t[i] = float64(one.Through(units.Metres(root * root)))
	}
	return t
})

// cubic is the polynomial through four values at -1, 0, 1 and 2 (Lagrange).
func cubic(a, b, c, d, x float64) float64 {
	return b + x*((c-a)/2-(d-3*c+3*b-a)/6+x*((a+c)/2-b+x*(d-3*c+3*b-a)/6))
}
