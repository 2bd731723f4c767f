package flight

// A flight's first step is tried as if one of firstStep had an error of firstError.
const (
	firstStep  = 0.08 // s
	firstError = 1e-8 // m/s, of an ordinary drive
)

// Fly is the flight from a launch until the ball lands, meets the net or Longest
// has passed; how it ended is the path's Outcome. The error says that the flight
// could not start: ErrModel, ErrNotFinite, ErrBelow or ErrAbsurd.
func (m Model) Fly(from State) (*Path, error) {
	if err := m.check(); err != nil {
		return nil, err
	}
	if err := m.checkStart(from); err != nil {
		return nil, err
	}
	p := &Path{knots: make([]knot, 0, 32)}
	m.fly(p, from, m.tolerance(), true)
	return p, nil
}

// fly fills p with the flight from a checked launch. Without stop the net is
// passed through. Knots are kept if p came with room for them.
func (m Model) fly(p *Path, from State, tolerance float64, stop bool) {
	s := stride{m: m, f: m.forces(from.Spin), tolerance: tolerance, end: m.longest(), stop: stop}
	s.h = firstStep * resize(firstError*firstError, tolerance)
	r, keep := float64(m.Ball.Radius()), p.knots != nil
	k := knot{p: from.At, v: from.Velocity, a: s.f.acceleration(from.Velocity)}
	k.p.Z = max(k.p.Z, r)
	p.begin(k, from.Spin)
	o, over := Landed, k.p.Z <= r && k.v.Z <= 0 // it may lie on the court
	for !over {
		k, o, over = s.next(p, &k)
		if keep {
			p.knots = append(p.knots, k)
		}
	}
	p.finish(k, o)
}

// stride is what one flight's steps have in common.
type stride struct {
	m         Model
	f         forces
	tolerance float64
	h, end    float64 // the next step's length and when to give up, s
	stop      bool
}

// next goes one step on from k, or to the flight's end, and says whether that is it.
func (s *stride) next(p *Path, k *knot) (knot, Outcome, bool) {
	s.h = min(s.h, longestStep, max(s.end-k.t, shortestStep))
	to := s.f.advance(k, &s.h, s.tolerance)
	r := float64(s.m.Ball.Radius())
	o, share := s.m.events(p, k, &to, r, s.stop)
	if share < 1 {
		to = inside(k, &to, share)
	}
	if o == Landed {
		to.p.Z = r
	}
	return to, o, o != TimedOut || to.t >= s.end
}

// events notes in p what happens between a and b and gives the outcome and the
// share of the step at which the flight ends: 1 and TimedOut if it goes on.
func (m Model) events(p *Path, a, b *knot, r float64, stop bool) (Outcome, float64) {
	o, end := TimedOut, 1.0
	if a.v.Z > 0 != (b.v.Z > 0) || b.p.Z < r {
		z := upOf(a, b)
		if s, ok := downThrough(&z, r, a.v.Z, b.v.Z); ok {
			o, end = Landed, s
		}
		p.noteApex(a, b, &z, end)
	}
	if a.p.Y > 0 != (b.p.Y > 0) || a.v.Y > 0 != (b.v.Y > 0) {
		y := alongOf(a, b)
		if hit, s := m.passNet(p, a, b, &y, end, stop); s < end {
			o, end = hit, s
		}
	}
	return o, end
}

// downThrough is the first share of a step at which the height z falls through level.
func downThrough(z *quintic, level, v0, v1 float64) (float64, bool) {
	lo, hi := 0.0, 1.0
	switch turn, turns := z.turn(v0, v1); {
	case turns && v0 > 0: // over the top: only the second part falls
		lo = turn
	case turns: // through the bottom
		hi = turn
	}
	if z.at(lo) < level || z.at(hi) >= level {
		return 0, false
	}
	return z.root(level, lo, hi), true
}

// passNet notes the first passing of the net's plane within [0, end] of a step
// and says how the flight ends there; the share is 1 if it does not.
func (m Model) passNet(p *Path, a, b *knot, y *quintic, end float64, stop bool) (Outcome, float64) {
	for _, piece := range pieces(y, a.v.Y, b.v.Y) {
		lo, hi := piece[0], min(piece[1], end)
		from, to := y.at(lo), y.at(hi)
		if lo >= hi || from == 0 || from > 0 == (to > 0) && to != 0 {
			continue
		}
		s := y.root(0, lo, hi)
		k := inside(a, b, s)
		o, touches := m.Net.contact(k.p, float64(m.Ball.Radius()))
		p.noteNet(k, touches, float64(m.Net.Top(k.across())))
		if p.blocked = p.blocked || o != Landed; p.blocked && stop {
			return o, s
		}
	}
	return TimedOut, 1
}

// pieces are the parts of a step in which a coordinate runs one way.
func pieces(q *quintic, v0, v1 float64) [2][2]float64 {
	if s, turns := q.turn(v0, v1); turns {
		return [2][2]float64{{0, s}, {s, 1}}
	}
	return [2][2]float64{{0, 1}, {1, 1}}
}
