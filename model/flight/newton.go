package flight

import "math"

// solver is one intent being solved.
type solver struct {
	m      Model
	in     Intent
	radius float64
	flown  Path // scratch: the last trial
}

// Tolerances of the search.
const (
	rough    = 1e-6 // of a trial flight's step, m
	settled  = 1e-4 // |miss| from which trials are flown exactly
	solved   = 1e-8 // |miss| that is accepted at once, m
	goodMiss = 1e-6 // |miss| that is accepted when rounding stops the search, m
	nudge    = 1e-3 // m/s, for slopes by differences
)

// try flies the launch v through the net and gives the miss: metres across,
// metres along, and the intent's figure; false if it does not count as a flight.
func (s *solver) try(v Vec, tolerance float64) (Vec, bool) {
	s.flown = Path{}
	s.m.fly(&s.flown, s.in.launch(v), tolerance, false)
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

// newton searches the launch velocity from a guess: slopes by differences, a step
// halved until it helps, slopes taken again when they no longer serve.
func (s *solver) newton(v Vec) (Vec, bool) {
	tolerance := rough
	miss, ok := s.try(v, tolerance)
	if !ok {
		return v, false
	}
	slopes, ok := s.slopes(v, miss, tolerance)
	fresh := true
	for range 40 {
		if !ok {
			return v, false
		}
		if n := miss.Length(); n < solved && tolerance != rough {
			return v, true
		} else if n < settled && tolerance == rough {
			tolerance = s.m.tolerance()
			miss, _ = s.try(v, tolerance)
			continue
		}
		next, nextMiss, better := s.better(v, miss, slopes, tolerance)
		switch {
		case better:
			slow := nextMiss.Length() > 0.2*miss.Length()
			v, miss, fresh = next, nextMiss, false
			if slow {
				slopes, ok = s.slopes(v, miss, tolerance)
				fresh = true
			}
		case fresh:
			return v, miss.Length() < goodMiss && tolerance != rough
		default:
			slopes, ok = s.slopes(v, miss, tolerance)
			fresh = true
		}
	}
	return v, miss.Length() < goodMiss
}

// better is the first of Newton's step, half of it and so on that misses by less.
func (s *solver) better(v, miss Vec, slopes matrix, tolerance float64) (Vec, Vec, bool) {
	step, ok := slopes.solve(miss)
	if !ok {
		return v, miss, false
	}
	if n := step.Length(); n > longestStride {
		step = step.Times(longestStride / n)
	}
	for range 8 {
		next := v.Sub(step)
		if next.Length() < MostSpeed {
			if m, ok := s.try(next, tolerance); ok && m.Length() < miss.Length() {
				return next, m, true
			}
		}
		step = step.Times(0.5)
	}
	return v, miss, false
}

// longestStride (m/s) is the farthest one step of the search changes a launch.
const longestStride = 10

// slopes are the changes of the miss with each part of the velocity.
func (s *solver) slopes(v, miss Vec, tolerance float64) (matrix, bool) {
	var out matrix
	for i, d := range [...]Vec{{nudge, 0, 0}, {0, nudge, 0}, {0, 0, nudge}} {
		m, ok := s.try(v.Add(d), tolerance)
		if !ok {
			return out, false
		}
		out[i] = m.Sub(miss).Times(1 / nudge)
	}
	return out, true
}

// matrix is three columns.
type matrix [3]Vec

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
