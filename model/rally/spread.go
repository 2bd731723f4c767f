package rally

import (
	"math"
	"math/rand/v2"

	"homeside/model/court"
	"homeside/model/flight"
	"homeside/model/lesson"
	"homeside/model/units"
)

// Spread is where a shot lands that scatters: the ellipse that holds 95 % of
// the landings of a two-dimensional normal distribution.
type Spread struct {
	Centre       court.Point
	Long, Short  units.Feet    // half axes
	Direction    units.Degrees // of the long axis, 0 along +y, clockwise
	InNet, Total int           // simulated flights, and those that do not pass the net
}

// spreadFlights is how many flights are simulated.
const spreadFlights = 2000

// chiSquare95 is the 95 % quantile of the chi-square distribution with two
// degrees of freedom, -2 ln 0.05 exactly.
var chiSquare95 = -2 * math.Log(0.05)

// SpreadOf simulates a shot that scatters by e from its launch, always with the
// same draws, so that the same shot gives the same ellipse. False if fewer than
// three flights land.
func (r *Rally) SpreadOf(shot int, e lesson.AimError) (Spread, bool) {
	launch := r.Strokes[shot].Planned.At(0)
	draw := rand.New(rand.NewPCG(uint64(shot)+1, spreadFlights))
	s := Spread{Total: spreadFlights}
	var m moments
	for range spreadFlights {
		path, err := r.Model.Fly(disturb(launch, e, draw))
		switch {
		case err != nil:
		case path.Outcome == flight.Landed:
			m.add(path.End.Ground())
		default:
			s.InNet++
		}
	}
	return m.ellipse(s)
}

// disturb is a launch with its speed and both angles off by normal errors.
func disturb(s flight.State, e lesson.AimError, draw *rand.Rand) flight.State {
	speed := s.Velocity.Length() + float64(e.Speed)*draw.NormFloat64()
	level := math.Hypot(s.Velocity.X, s.Velocity.Y)
	up := math.Atan2(s.Velocity.Z, level) + e.Angle.Radians()*draw.NormFloat64()
	aside := math.Atan2(s.Velocity.Y, s.Velocity.X) + e.Angle.Radians()*draw.NormFloat64()
	sinUp, cosUp := math.Sincos(up)
	sin, cos := math.Sincos(aside)
	s.Velocity = flight.Vec{X: speed * cosUp * cos, Y: speed * cosUp * sin, Z: speed * sinUp}
	return s
}

// moments are the sums of landing places.
type moments struct{ n, x, y, xx, xy, yy float64 }

func (m *moments) add(p court.Point) {
	x, y := float64(p.X), float64(p.Y)
	m.n++
	m.x, m.y = m.x+x, m.y+y
	m.xx, m.xy, m.yy = m.xx+x*x, m.xy+x*y, m.yy+y*y
}

// ellipse fits the normal distribution: its axes are the eigenvectors of the
// covariance, as long as the square roots of its eigenvalues times the quantile.
func (m moments) ellipse(s Spread) (Spread, bool) {
	if m.n < 3 {
		return s, false
	}
	cx, cy := m.x/m.n, m.y/m.n
	xx, xy, yy := m.xx/m.n-cx*cx, m.xy/m.n-cx*cy, m.yy/m.n-cy*cy
	half := math.Hypot((xx-yy)/2, xy)
	mean := (xx + yy) / 2
	axis := func(v float64) units.Feet { return units.Feet(math.Sqrt(max(v, 0) * chiSquare95)) }
	s.Centre = court.Pt(units.Feet(cx), units.Feet(cy))
	s.Long, s.Short = axis(mean+half), axis(mean-half)
	s.Direction = units.FromRadians(math.Atan2(2*xy, yy-xx) / 2).Normal()
	return s, true
}
