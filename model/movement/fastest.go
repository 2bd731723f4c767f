package movement

import (
	"fmt"
	"math"

	"homeside/model/units"
)

// Fastest is the quickest way for this pace to do a run. The speed approaches
// TopSpeed and is held at the cap where there is a lower one; stopping, the
// player brakes as late as the braking allows. Who comes in above the top speed or the cap
// brakes down to it; who cannot stop within the distance brakes as hard as
// needed; the Outcome says so. Errors are ErrPace and ErrRun.
func (p Pace) Fastest(r Run) (Profile, error) {
	if err := p.Validate(); err != nil {
		return Profile{}, fmt.Errorf("plan a run: %w", err)
	}
	if err := r.Validate(); err != nil {
		return Profile{}, fmt.Errorf("plan a run: %w", err)
	}
	return p.fastest(r), nil
}

// fastest is Fastest for figures known to be in range.
func (p Pace) fastest(r Run) Profile {
	if r.Distance == 0 && r.Start == 0 {
		return Profile{}
	}
	b := newBuilder(p, r)
	if r.Through {
		b.runThrough()
	} else {
		b.runAndStop()
	}
	return b.profile()
}

// Through is the time to run through a point from rest, without a cap: the
// quick form for many points. A distance below 0 takes no time. A distance
// that is not a number, or a pace without a speed, never gets there: +Inf.
func (p Pace) Through(d units.Metres) units.Seconds {
	if d <= 0 {
		return 0
	}
	t := p.ramp(0).timeToDistance(float64(d))
	if math.IsNaN(t) || p.TopSpeed <= 0 || p.Tau <= 0 {
		return units.Seconds(math.Inf(1))
	}
	return units.Seconds(t)
}

// DistanceIn is how far a player gets from rest in a time at full effort, the
// inverse of Through. A time below 0 or not a number, or a pace without a
// speed, gives 0; endless time +Inf.
func (p Pace) DistanceIn(t units.Seconds) units.Metres {
	if !(t > 0 && p.TopSpeed > 0 && p.Tau > 0) {
		return 0
	}
	if math.IsInf(float64(t), 1) {
		return units.Metres(t)
	}
	d, _ := p.ramp(0).at(float64(t))
	return units.Metres(d)
}

// ramp is the start of a run from a speed.
func (p Pace) ramp(from float64) ramp {
	return ramp{top: float64(p.TopSpeed), tau: float64(p.Tau), from: from}
}

// builder lays the phases of one profile end to end.
type builder struct {
	Profile
	run     Run
	ramp    ramp
	brake   float64 // m/s2
	ceiling float64 // m/s, the lower of top speed and cap
	n       int
	v       float64 // speed where the last phase ends
}

func newBuilder(p Pace, r Run) *builder {
	b := &builder{run: r, ramp: p.ramp(float64(r.Start)), brake: p.Braking, ceiling: float64(p.TopSpeed), v: float64(r.Start)}
	b.distance = float64(r.Distance)
	if r.Cap > 0 {
		b.ceiling = min(b.ceiling, float64(r.Cap))
	}
	if b.v > b.ceiling {
		b.Outcome = StartsTooFast
	}
	return b
}

func (b *builder) runThrough() {
	d := b.distance
	switch up, far := b.toCeiling(); {
	case b.Outcome == StartsTooFast && b.v*b.v-2*b.brake*d >= b.ceiling*b.ceiling:
		end := math.Sqrt(b.v*b.v - 2*b.brake*d)
		b.steady(2*d/(b.v+end), end)
	case far < d:
		b.approach(up)
		b.steady((d-far)/b.ceiling, b.ceiling)
	default:
		b.accelerate(b.ramp.timeToDistance(d))
	}
}

func (b *builder) runAndStop() {
	d, stopping := b.distance, b.v*b.v/(2*b.brake)
	if stopping > d {
		b.Outcome = BrakesTooHard
		b.steady(2*d/b.v, 0)
		return
	}
	up, far := b.toCeiling()
	if cruise := d - far - b.ceiling*b.ceiling/(2*b.brake); cruise > 0 {
		b.approach(up)
		b.steady(cruise/b.ceiling, b.ceiling)
	} else if b.Outcome == Clean {
		b.accelerate(b.ramp.timeToBrake(d, b.brake))
	}
	b.steady(b.v/b.brake, 0)
}

// toCeiling is the time and distance from the starting speed to the ceiling:
// braking down to it from above, the ramp from below. The ramp never reaches
// the top speed itself.
func (b *builder) toCeiling() (t, d float64) {
	if b.Outcome == StartsTooFast {
		t := (b.v - b.ceiling) / b.brake
		return t, t * (b.v + b.ceiling) / 2
	}
	if b.ceiling >= b.ramp.top {
		return math.Inf(1), math.Inf(1)
	}
	t = b.ramp.timeToSpeed(b.ceiling)
	d, _ = b.ramp.at(t)
	return t, d
}

// approach goes to the ceiling from either side.
func (b *builder) approach(t float64) {
	if b.Outcome == StartsTooFast {
		b.steady(t, b.ceiling)
		return
	}
	b.accelerate(t)
}

// accelerate adds the ramp.
func (b *builder) accelerate(t float64) {
	_, v := b.ramp.at(t)
	b.add(phase{span: t, v: b.v, ramp: b.ramp}, v)
}

// shortest is the time, in seconds, below which a change of speed is sudden: its rate
// might be too large for a number.
const shortest = 1e-100

// steady adds a steady change to the speed v.
func (b *builder) steady(t, v float64) {
	rate := 0.0
	if t > shortest {
		rate = (v - b.v) / t
	}
	b.add(phase{span: t, v: b.v, rate: rate}, v)
}

func (b *builder) add(p phase, end float64) {
	if b.n > 0 {
		p.d, _ = b.phases[b.n-1].at(b.phases[b.n-1].span)
	}
	b.phases[b.n] = p
	b.n++
	b.fast += p.span
	b.v = end
}

func (b *builder) profile() Profile {
	b.arrival, b.span = b.v, b.fast
	return b.Profile
}
