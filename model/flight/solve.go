package flight

import "math"

// Solutions are the shots that do what an Intent asks. A speed may have two, any
// other kind has one, in Low.
type Solutions struct {
	Low, High *Launch // nil where there is none
	Reason    Reason  // Possible if there is a solution; else why not
	Blocked   *Launch // the shot that would land on the aim but for the net; of a speed the low one, even where High is over it
}

// All are the solutions, the low one first.
func (s Solutions) All() []*Launch {
	var out []*Launch
	for _, l := range []*Launch{s.Low, s.High} {
		if l != nil {
			out = append(out, l)
		}
	}
	return out
}

// closest (m) is the least distance over the ground from contact to aim.
const closest = 0.01

// Solve finds the launches that land on the aim with the intent's figure: the
// landing within 1e-6 m, the figure within 1e-6 of its unit, or 2e-5 of both where
// the lift's cap is at work.
func (m Model) Solve(in Intent) Solutions {
	if r := m.refuse(in); r != Possible {
		return Solutions{Reason: r}
	}
	s := solver{m: m, in: in, radius: float64(m.Ball.Radius()), enough: solved}
	if in.Kind == Speed {
		return s.bySpeed()
	}
	v, r := s.search(nil)
	if r != Possible {
		return Solutions{Reason: r}
	}
	low, r := s.shot(v)
	return gather(low, nil, r, Possible)
}

// search finds the launch, from a guess if there is one. The last trial is then
// the exact flight.
func (s *solver) search(near *Vec) (Vec, Reason) {
	if near != nil {
		if v, ok := s.newtonFrom(*near); ok {
			return v, s.allowed(v)
		}
	}
	guess, r := s.guess()
	if r != Possible {
		return Vec{}, r
	}
	v, ok := s.newton(guess)
	if !ok && s.in.Kind == NetClear {
		v, ok = s.byTime(s.in.aim().Length() / guess.Level().Length())
	}
	if !ok {
		return Vec{}, s.failure(v)
	}
	return v, s.allowed(v)
}

// byTime finds a height over the net by way of the time of flight, with which it
// grows, starting from t: slower than Newton's method, and safe where the net is
// close to the aim. Its flights land ever so closely, since a little on the ground
// is much at a net that a steep ball passes.
func (s *solver) byTime(t float64) (v Vec, ok bool) {
	asked := s.in
	s.enough = solved / 100
	over := func(t float64) float64 {
		s.in.Kind, s.in.Value = Time, t
		if v, ok = s.newton(s.guessTime()); !ok {
			return math.NaN()
		}
		return float64(s.flown.Net.Clearance()) - asked.Value
	}
	miss := over(t)
	for range 20 {
		next := t * 1.2
		if miss > 0 {
			next = t / 1.2
		}
		at := over(next)
		if miss > 0 != (at > 0) {
			_, miss = falsePosition(over, t, next, miss, at, solved)
			break
		}
		if t, miss = next, at; v.Length() > 2*s.m.fastest() {
			break
		}
	}
	s.in, s.enough = asked, solved
	return v, ok && math.Abs(miss) < stuck
}

func (s *solver) allowed(v Vec) Reason {
	if v.Length() > s.m.fastest()*(1+1e-9) {
		return TooFast
	}
	return Possible
}

// refuse names what can be said before anything is flown.
func (m Model) refuse(in Intent) Reason {
	if !in.finite() {
		return NotFinite
	}
	if m.check() != nil || m.checkStart(in.launch(Vec{0, 1, 0})) != nil || in.aim().Length() > MostPlace || int(in.Kind) >= len(Kinds) || math.Abs(in.Value) > MostPlace {
		return OutOfRange
	}
	_, over := in.acrossNet()
	switch d := in.aim().Length(); {
	case d < closest:
		return AimAtContact
	case in.away():
		return AimBehind
	case (in.Kind == Speed || in.Kind == Time) && in.Value <= 0:
		return NotPositive
	case in.Kind == Speed && in.Value > m.fastest():
		return TooFast
	case in.Kind == Time && d/in.Value > m.fastest()+m.Air.Wind.Length():
		return TooFast
	case in.Kind == Apex && in.Value < in.From.Z:
		return ApexTooLow
	case in.Kind == NetClear && !over:
		return NoNetBetween
	case in.Kind == NetClear && in.Value < 0:
		return IntoNet
	}
	return Possible
}

// gather puts two candidates together with the reasons why one is missing.
func gather(low, high *Launch, whyLow, whyHigh Reason) Solutions {
	out := Solutions{Low: low, High: high}
	blocked := func(l *Launch, r Reason) *Launch {
		if l != nil && r == IntoNet {
			if out.Blocked == nil {
				out.Blocked = l
			}
			return nil
		}
		return l
	}
	out.Low, out.High = blocked(low, whyLow), blocked(high, whyHigh)
	switch {
	case out.Low != nil || out.High != nil: // of a speed the low one may be blocked all the same
	case whyLow != Possible:
		out.Reason = whyLow
	default:
		out.Reason = whyHigh
	}
	return out
}

// shot makes a launch of the last trial, which was exact. A flight that the net
// does not stop is the same with the net as without.
func (s *solver) shot(v Vec) (*Launch, Reason) {
	l := &Launch{State: s.in.launch(v)}
	if !s.flown.blocked {
		p := s.flown
		l.Path, s.knots = &p, nil
		return l, Possible
	}
	p, err := s.m.Fly(l.State)
	if err != nil {
		return nil, OutOfRange
	}
	l.Path = p
	return l, IntoNet
}

// failure is the reason when the search ends at v without a flight: above the
// limit it was heading for speeds beyond it.
func (s *solver) failure(v Vec) Reason {
	if v.Length() > s.m.fastest() {
		return TooFast
	}
	return NoFlight
}
