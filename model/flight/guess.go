package flight

import "math"

// guess is a first launch velocity from closed forms: quadratic drag straight up
// and down for the height, along a straight line for the way.
func (s *solver) guess() (Vec, Reason) {
	switch s.in.Kind {
	case Apex:
		return s.guessApex(), Possible
	case Time:
		return s.guessTime(), Possible
	}
	return s.guessNetClear()
}

func (s *solver) drag() float64 { return max(s.m.forces(Vec{}).drag, 1e-6) }

func (s *solver) guessApex() Vec {
	k, up := s.drag(), s.in.Value-s.in.From.Z
	down := max(s.in.Value-s.radius, 1e-6)
	rise := math.Sqrt(gravity / k * math.Expm1(2*k*up))
	rate := math.Sqrt(gravity * k) // g / vt
	t := math.Atan(rise*k/rate)/rate + math.Acosh(math.Exp(k*down))/rate
	return s.toward(t, rise, up)
}

func (s *solver) guessTime() Vec {
	t := s.in.Value
	rise := gravity*t/2 + (s.radius-s.in.From.Z)/t
	up := max(rise, 0) * max(rise, 0) / (2 * gravity)
	return s.toward(t, rise*(1+s.drag()*up/2), up)
}

// guessNetClear is the parabola through contact, net and landing; without one
// that bends downward the shot would have to be infinitely fast.
func (s *solver) guessNetClear() (Vec, Reason) {
	share, _ := s.in.acrossNet()
	d := s.in.aim().Length()
	x := s.in.From.X + share*s.in.aim().X
	top := float64(s.m.Net.Top(metres(x)))
	toNet, toEnd := (top+s.in.Value-s.in.From.Z)/share, s.radius-s.in.From.Z
	bend := (toNet - toEnd) / (1 - share) // height = (toEnd + bend) s - bend s²
	if bend <= 0 {
		return Vec{}, TooFast
	}
	t := math.Sqrt(2 * bend / gravity)
	if d/t > 3*s.m.fastest() {
		return Vec{}, TooFast
	}
	rise := (toEnd + bend) / t
	up := max(rise, 0) * max(rise, 0) / (2 * gravity)
	return s.toward(t, rise*(1+s.drag()*up/2), up), Possible
}

// toward is the velocity that rises at rise and covers the way in t seconds
// against the drag of an arc up metres high.
func (s *solver) toward(t, rise, up float64) Vec {
	way, k := s.in.aim(), s.drag()
	arc := math.Hypot(way.Length(), 2*up)
	v := way.Times(math.Expm1(k*arc) / (k * arc) / t)
	v.Z = rise
	return v
}
