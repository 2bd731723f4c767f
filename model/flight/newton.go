package flight

import "math"

// solver is one intent being solved.
type solver struct {
	m      Model
	in     Intent
	radius float64
	enough float64 // |miss| that is accepted, m
	flown  Path    // the last trial
	knots  []knot  // room for a kept trial's knots
	known  matrix  // slopes that the last search ended with
	side   float64 // sine of the turn from the bearing to the aim that bySpeed last used
}

// Tolerances of the search.
const (
	rough   = 1e-4 // of a trial flight's step, m
	settled = 3e-4 // |miss| from which trials are flown exactly and kept, m
	solved  = 1e-6 // |miss| that is accepted as a rule, m
	stuck   = 2e-5 // |miss| that is accepted where the search stops: at the lift's cap flights jump by so much, m
	nudge   = 1e-2 // m/s, for slopes by differences
)

// fly flies the launch v through the net: roughly, or exactly and kept.
func (s *solver) fly(v Vec, exact bool) {
	s.flown = Path{}
	tolerance := rough
	if exact {
		if s.knots == nil {
			s.knots = make([]knot, 0, 48)
		}
		s.flown.knots, tolerance = s.knots[:0], s.m.tolerance()
	}
	s.m.fly(&s.flown, s.in.launch(v), tolerance, false)
}

// try flies the launch v and gives the miss: metres across, metres along, and the
// intent's figure; false if it does not count as a flight.
func (s *solver) try(v Vec, exact bool) (Vec, bool) {
	s.fly(v, exact)
	if s.flown.Outcome != Landed {
		return Vec{}, false
	}
	figure, ok := s.figure(v)
	end := s.flown.End.At
	return Vec{end.X - float64(s.in.AimX), end.Y - float64(s.in.AimY), figure}, ok
}

// figure is the miss of the intent's own figure in the last trial. An apex counts
// by the rising speed that it needs without air, so that the miss stays smooth
// where a ball struck level turns into one struck down.
func (s *solver) figure(v Vec) (float64, bool) {
	p := &s.flown
	switch s.in.Kind {
	case Apex:
		rise := v.Z
		if rise > 0 {
			rise = speedOfRise(p.Apex.State.At.Z - s.in.From.Z)
		}
		return rise - speedOfRise(s.in.Value-s.in.From.Z), true
	case Time:
		return float64(p.Duration) - s.in.Value, true
	case NetClear:
		return float64(p.Net.Clearance()) - s.in.Value, p.Net.Reached
	}
	return v.Length() - s.in.Value, true
}

func speedOfRise(h float64) float64 { return math.Sqrt(2 * gravity * max(h, 0)) }

// newton searches the launch velocity from a guess: slopes by differences, kept
// up by Broyden's rule, a step halved until it helps, slopes taken again when
// they no longer serve. When it succeeds the last trial is the exact flight.
func (s *solver) newton(v Vec) (Vec, bool) {
	s.known = matrix{}
	return s.newtonFrom(v)
}

// newtonFrom is newton with the slopes of the last search to start with.
func (s *solver) newtonFrom(v Vec) (Vec, bool) {
	if !(v.Length() < MostSpeed) {
		return v, false
	}
	miss, ok := s.try(v, false)
	if !ok {
		return v, false
	}
	exact, stale, fresh := false, s.known == (matrix{}), false
	for range 40 {
		if !exact && (miss.Length() < settled || fresh && stale) {
			exact, stale = true, false
			miss, ok = s.try(v, true)
		}
		if exact && miss.Length() < s.enough {
			return v, ok
		}
		if stale {
			s.known, fresh = s.slopes(v, miss, exact), true
		}
		next, nextMiss, better := s.better(v, miss, exact)
		if !better && fresh && exact {
			break
		}
		stale = !better || nextMiss.Length() > 0.5*miss.Length()
		if better {
			s.known.update(next.Sub(v), nextMiss.Sub(miss))
			v, miss, fresh = next, nextMiss, false
		}
	}
	miss, ok = s.try(v, true)
	return v, ok && miss.Length() < stuck
}

// better is the first of Newton's step, half of it and so on that misses by less.
func (s *solver) better(v, miss Vec, exact bool) (Vec, Vec, bool) {
	step, ok := s.known.solve(miss)
	if !ok {
		return v, miss, false
	}
	if n := step.Length(); n > longestStride {
		step = step.Times(longestStride / n)
	}
	for range 8 {
		next := v.Sub(step)
		if next.Length() < MostSpeed {
			if m, ok := s.try(next, exact); ok && m.Length() < miss.Length() {
				return next, m, true
			}
		}
		step = step.Times(0.5)
	}
	return v, miss, false
}

// longestStride (m/s) is the farthest one step of the search changes a launch.
const longestStride = 10

// slopes are the changes of the miss with each part of the velocity, from rough
// flights. Where one does not count they are zero, which no step can be made from.
func (s *solver) slopes(v, miss Vec, exact bool) (out matrix) {
	ok := true
	if exact { // differences need a rough flight beside rough flights
		miss, ok = s.try(v, false)
	}
	for i, d := range [...]Vec{{nudge, 0, 0}, {0, nudge, 0}, {0, 0, nudge}} {
		m, flew := s.try(v.Add(d), false)
		if ok = ok && flew; !ok {
			return matrix{}
		}
		out[i] = m.Sub(miss).Times(1 / nudge)
	}
	return out
}

// matrix is three columns.
type matrix [3]Vec

// update is Broyden's: the least change that maps a step to what it did.
func (a *matrix) update(step, did Vec) {
	n := step.squared()
	if n == 0 {
		return
	}
	off := did.Sub(a[0].Times(step.X)).Sub(a[1].Times(step.Y)).Sub(a[2].Times(step.Z)).Times(1 / n)
	a[0], a[1], a[2] = a[0].Add(off.Times(step.X)), a[1].Add(off.Times(step.Y)), a[2].Add(off.Times(step.Z))
}

// solve gives x with a x = b by Cramer's rule; false if a is singular.
func (a matrix) solve(b Vec) (Vec, bool) {
	det := dot(a[0], a[1].Cross(a[2]))
	if det == 0 || math.IsNaN(det) {
		return Vec{}, false
	}
	x := Vec{dot(b, a[1].Cross(a[2])), dot(a[0], b.Cross(a[2])), dot(a[0], a[1].Cross(b))}.Times(1 / det)
	return x, x.Finite()
}

func dot(a, b Vec) float64 { return a.X*b.X + a.Y*b.Y + a.Z*b.Z }
