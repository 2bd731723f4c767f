package flight

import (
	"math"

	"homeside/model/court"
	"homeside/model/units"
)

// Return is a return of serve before its depth and height are chosen. The zero
// value of all but From is a return straight down the middle without spin.
type Return struct {
	From       Vec // contact, m; the side it is on is the returner's
	AimX       units.Metres
	Spin, Side units.RPM
	Third      units.MetresPerSecond // speed of the third; 0 is 15 m/s
}

// Bought is the time that a return buys, counted from its contact.
type Bought struct {
	Reason Reason        // Possible, or why there is no such return; then the times are 0
	Third  units.Seconds // to the third contact, at the top of the return's bounce
	Line   units.Seconds // to the third reaching the returner's kitchen line
}

// ordinaryThird (m/s) is a drive rather than a drop.
const ordinaryThird = 15

// Bought is the time bought by a return that lands depth inside the opponents'
// baseline after rising to apex (of the ball's centre). The apex buys the time to
// the third contact; the depth what comes after, since the third has farther to
// go. The third is a level drive slowed by drag alone, straight along the court:
// a flown one of 15 m/s takes up to 0.05 s longer.
func (m Model) Bought(r Return, depth units.Feet, apex units.Metres) Bought {
	s := solver{m: m, in: r.intent(depth, apex), radius: float64(m.Ball.Radius()), enough: solved}
	b, _ := s.bought(r, nil)
	return b
}

// Chart is Bought for every depth (rows) and apex (columns).
func (m Model) Chart(r Return, depths []units.Feet, apexes []units.Metres) [][]Bought {
	s := solver{m: m, radius: float64(m.Ball.Radius()), enough: solved}
	out := make([][]Bought, len(depths))
	for i, depth := range depths {
		out[i] = make([]Bought, len(apexes))
		var last *Vec
		for j, apex := range apexes {
			s.in = r.intent(depth, apex)
			out[i][j], last = s.bought(r, last)
		}
	}
	return out
}

func (r Return) intent(depth units.Feet, apex units.Metres) Intent {
	y := math.Copysign(float64((court.Baseline - depth).Metres()), -r.From.Y)
	return Intent{From: r.From, AimX: r.AimX, AimY: units.Metres(y), Kind: Apex, Value: float64(apex), Spin: r.Spin, Side: r.Side}
}

// bought flies the return, its bounce and the third. It also gives the launch,
// from which the search for a neighbour may start.
func (s *solver) bought(r Return, guess *Vec) (Bought, *Vec) {
	if why := s.m.refuse(s.in); why != Possible {
		return Bought{Reason: why}, nil
	}
	v, why := s.search(guess)
	if why == Possible && s.flown.blocked {
		why = IntoNet
	}
	if why != Possible {
		return Bought{Reason: why}, nil
	}
	landed := float64(s.flown.Duration)
	var up Path
	s.m.fly(&up, s.m.Bounce(s.flown.End), s.m.tolerance(), true)
	third := landed + float64(up.Top())
	way := math.Abs(up.Apex.State.At.Y - math.Copysign(float64(court.Kitchen.Metres()), r.From.Y))
	return Bought{Third: units.Seconds(third), Line: units.Seconds(third + s.m.levelTime(way, r.third()))}, &v
}

func (r Return) third() float64 {
	if r.Third > 0 {
		return float64(r.Third)
	}
	return ordinaryThird
}

// levelTime is the time a ball struck at speed v takes for a way d (m) against
// drag alone: t = (exp(kd d) - 1) / (kd v), one-dimensional quadratic drag.
func (m Model) levelTime(d, v float64) float64 {
	k := m.Ball.pressure(m.Air) * m.Ball.Drag
	if k == 0 {
		return d / v
	}
	return math.Expm1(k*d) / (k * v)
}
