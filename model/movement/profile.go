package movement

import (
	"math"

	"homeside/model/units"
)

// Outcome says how a run can be done.
type Outcome uint8

// The outcomes.
const (
	// Clean keeps to the pace from start to end.
	Clean Outcome = iota
	// StartsTooFast comes in above the cap or the top speed and slows down to it first,
	// as far as the distance lasts.
	StartsTooFast
	// BrakesTooHard comes in too fast to stop within the distance at the
	// pace's braking, and stops there all the same by braking harder than it.
	BrakesTooHard
)

var outcomeNames = [...]string{"clean", "starts too fast", "brakes too hard"}

// String is the outcome in words.
func (o Outcome) String() string {
	if int(o) < len(outcomeNames) {
		return outcomeNames[o]
	}
	return "unknown outcome"
}

// Profile is one run in time: where along the path the player is and how fast.
// It slows down to the cap if it must, accelerates, cruises at the cap if there
// is one, and brakes if it has to stop. A profile is a value; the zero Profile
// stands still and takes no time.
type Profile struct {
	Outcome Outcome

	phases   [4]phase // those not needed take no time
	distance float64  // m
	arrival  float64  // m/s, at full effort
	fast     float64  // s, duration at full effort
	span     float64  // s, duration as stretched, at least fast
}

// phase is a stretch of a profile of one kind: a ramp, or a steady change.
type phase struct {
	span float64 // s
	d, v float64 // distance and speed at its start
	rate float64 // m/s2, when steady
	ramp ramp    // when ramp.top > 0
}

func (p phase) at(t float64) (distance, speed float64) {
	if p.ramp.top > 0 {
		d, v := p.ramp.at(t)
		return p.d + d, v
	}
	return p.d + t*(p.v+p.rate*t/2), p.v + p.rate*t
}

// Duration is how long the run takes.
func (p Profile) Duration() units.Seconds { return units.Seconds(p.span) }

// Distance is the length of the run.
func (p Profile) Distance() units.Metres { return units.Metres(p.distance) }

// Arrival is the speed at the end: 0 unless the run is run through. The next run starts with
// what Carry leaves of it.
func (p Profile) Arrival() units.MetresPerSecond {
	return units.MetresPerSecond(p.arrival * p.effort())
}

// Peak is the highest speed of the run.
func (p Profile) Peak() units.MetresPerSecond {
	peak := p.arrival
	for _, ph := range p.phases {
		if ph.span > 0 {
			peak = max(peak, ph.v)
		}
	}
	return units.MetresPerSecond(peak * p.effort())
}

// effort is the speed over that of the fastest run, 1 unless stretched.
func (p Profile) effort() float64 {
	if p.span <= p.fast {
		return 1
	}
	return p.fast / p.span
}

// At is the distance covered and the speed at time t of the run. Before the
// run it is where and as fast as it starts, after it where and as fast as it
// ends. Distance never falls and never passes the run's; speed is never negative.
// A time that is not a number counts as 0.
func (p Profile) At(t units.Seconds) (units.Metres, units.MetresPerSecond) {
	k := p.effort()
	u := float64(t) * k
	if u >= p.fast || float64(t) >= p.span {
		return p.Distance(), p.Arrival()
	}
	if !(u > 0) {
		u = 0
	}
	d, v := p.atFull(u)
	return units.Metres(min(max(d, 0), p.distance)), units.MetresPerSecond(max(v, 0) * k)
}

// atFull is the moment u of the run at full effort, within [0, fast).
func (p Profile) atFull(u float64) (distance, speed float64) {
	for _, ph := range p.phases {
		if u < ph.span {
			return ph.at(u)
		}
		u -= ph.span
	}
	return p.distance, p.arrival
}

// Fill fits the run into a window of time, and says how late it is. In a longer
// window the same profile is stretched so that it arrives exactly at the
// window's end: time runs slower by the factor window/Duration and every speed
// falls by it, the starting and arriving speeds too. Position stays continuous;
// a player who came in moving eases off at once. In a shorter window the
// profile runs at full effort and arrives late by exactly the difference. What
// an earlier Fill stretched counts at full effort again. A window that is
// negative or not a number counts as 0; an endless one does not stretch.
func (p Profile) Fill(window units.Seconds) (fitted Profile, late units.Seconds) {
	w := float64(window)
	if !(w > 0) {
		w = 0
	}
	p.span = p.fast
	if w < p.fast {
		return p, units.Seconds(p.fast - w)
	}
	if !math.IsInf(w, 1) {
		p.span = w
	}
	return p, 0
}
