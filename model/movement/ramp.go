package movement

import "math"

// ramp is the start of a run at full effort: dv/dt = (top - v)/tau from the
// speed from, which is at most top. SI units.
type ramp struct {
	top, tau, from float64
}

// lack is the share of the top speed still missing at the start, 1 from rest.
func (r ramp) lack() float64 { return 1 - r.from/r.top }

// at is the distance covered and the speed after t.
func (r ramp) at(t float64) (distance, speed float64) {
	x := t / r.tau
	a := r.lack()
	return r.top * r.tau * ((1-a)*x + a*lag(x)), r.from - (r.top-r.from)*math.Expm1(-x)
}

// timeToSpeed is how long it takes to reach a speed in [from, top).
func (r ramp) timeToSpeed(v float64) float64 {
	return r.tau * math.Log1p((v-r.from)/(r.top-v))
}

// timeToDistance is how long it takes to cover d >= 0: with a the lack and
// u = d/(top tau), t/tau = a + u + W0(-a exp(-(a + u))). The closed form loses
// digits when both a is near 1 and u near 0, so Newton steps on the well
// conditioned form of at finish it.
func (r ramp) timeToDistance(d float64) float64 {
	a, u := r.lack(), d/(r.top*r.tau)
	if u <= 0 {
		return 0
	}
	x := 2 * u / (1 - a + math.Sqrt((1-a)*(1-a)+2*a*u)) // steady acceleration, never too long
	if u > 1e-3 {
		if w, ok := lambertW0(-a * math.Exp(-(a + u))); ok {
			x = max(x, a+u+w)
		}
	}
	for range 6 { // one step is the rule
		step := ((1-a)*x + a*lag(x) - u) / (1 - a - a*math.Expm1(-x))
		x -= step
		if math.Abs(step) <= 1e-14*x {
			break
		}
	}
	return r.tau * x
}

// timeToBrake is when to start braking at the rate b to stand still at d: the
// root of distance(t) + speed(t)^2/(2b) = d by Newton's method, kept within a
// bracket that shrinks. The stopping distance from the start must be at most d.
func (r ramp) timeToBrake(d, b float64) float64 {
	lo, hi := 0.0, r.timeToDistance(d)
	t := hi
	for range 100 { // five or six rounds are the rule
		s, v := r.at(t)
		miss := s + v*v/(2*b) - d
		if miss > 0 {
			hi = t
		} else {
			lo = t
		}
		next := t - miss/(v*(1+(r.top-v)/(r.tau*b)))
		if !(next >= lo && next <= hi) { // catches NaN too
			next = lo + (hi-lo)/2
		}
		if math.Abs(next-t) <= 1e-14*hi {
			return next
		}
		t = next
	}
	return t
}

// lag is x - (1 - exp(-x)), the time behind a runner who needs no start, over
// tau. It keeps its digits near 0, where it is about x^2/2.
func lag(x float64) float64 {
	if math.Abs(x) > 0.1 {
		return x + math.Expm1(-x)
	}
	sum := 1.0
	for n := 11.0; n > 2; n-- {
		sum = 1 - x/n*sum
	}
	return x * x / 2 * sum
}
