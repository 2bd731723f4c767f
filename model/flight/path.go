package flight

import (
	"sort"

	"homeside/model/units"
)

// Path is one flight, from the launch to its outcome. It does not change.
type Path struct {
	Outcome    Outcome
	Duration   units.Seconds // from the launch to the outcome
	Start, End State         // End is exactly one radius above the court if it landed
	Apex       Moment        // the greatest height; the launch if struck downward
	Net        Crossing      // the first passing of the net's plane
	TouchesNet bool          // it brushed the top of the net and flew on, or hit it

	knots   []knot
	blocked bool // the net or a post was in the way
}

// Moment is the ball at a time of a flight.
type Moment struct {
	T     units.Seconds
	State State
}

// Crossing is where a flight passes the net's plane.
type Crossing struct {
	Reached bool // if not, the other fields are zero
	T       units.Seconds
	State   State
	Top     units.Metres // the net's height there
}

// Clearance is the height of the ball's centre over the net's top; negative below it.
func (c Crossing) Clearance() units.Metres { return c.State.Height() - c.Top }

// At is the ball at time t, held at the ends of [0, Duration].
func (p *Path) At(t units.Seconds) State {
	k := p.at(float64(t))
	return State{k.p, k.v, p.Start.Spin}
}

func (p *Path) at(t float64) knot {
	n := len(p.knots)
	i := sort.Search(n, func(i int) bool { return p.knots[i].t > t })
	switch {
	case !(t > 0) || n == 1:
		return p.knots[0]
	case i == n:
		return p.knots[n-1]
	}
	a, b := &p.knots[i-1], &p.knots[i]
	return inside(a, b, (t-a.t)/(b.t-a.t))
}

// Top is the time of the greatest height.
func (p *Path) Top() units.Seconds { return p.Apex.T }

// Crossing is the first time at which the ball's centre passes the height,
// rising or falling; false if it never does.
func (p *Path) Crossing(height units.Metres, rising bool) (units.Seconds, bool) {
	level := float64(height)
	return p.first(level, upOf, func(v Vec) float64 { return v.Z }, func(from, to float64) bool {
		if rising {
			return from <= level && to >= level && from < to
		}
		return from >= level && to <= level && from > to
	})
}

// Reaches is the first time at which the ball's centre is over the line y = const
// of the court, coming from either side; false if it never is.
func (p *Path) Reaches(y units.Metres) (units.Seconds, bool) {
	level := float64(y)
	return p.first(level, alongOf, func(v Vec) float64 { return v.Y }, func(from, to float64) bool {
		return from <= level && to >= level || from >= level && to <= level
	})
}

// first is the first time a coordinate passes level in the way asked for.
func (p *Path) first(level float64, of func(a, b *knot) quintic, coordinate func(Vec) float64, passes func(from, to float64) bool) (units.Seconds, bool) {
	for i := 1; i < len(p.knots); i++ {
		a, b := &p.knots[i-1], &p.knots[i]
		q := of(a, b)
		for _, s := range pieces(&q, coordinate(a.v), coordinate(b.v)) {
			from, to := q.at(s[0]), q.at(s[1])
			if s[1] == 1 { // not the polynomial's rounding
				to = coordinate(b.p)
			}
			if s[0] < s[1] && passes(from, to) {
				return units.Seconds(a.t + q.place(level, s, from, to)*(b.t-a.t)), true
			}
		}
	}
	return 0, false
}

// place is where in the piece s of a step a coordinate is level, given its values
// at the piece's ends.
func (q *quintic) place(level float64, s [2]float64, from, to float64) float64 {
	switch level {
	case from:
		return s[0]
	case to:
		return s[1]
	}
	return q.root(level, s[0], s[1])
}

func (k *knot) state(spin Vec) State { return State{k.p, k.v, spin} }

func (k *knot) across() units.Metres { return units.Metres(k.p.X) }

// begin starts p at k.
func (p *Path) begin(k knot, spin Vec) {
	p.Start = k.state(spin)
	p.Apex = Moment{State: p.Start}
	if p.knots != nil {
		p.knots = append(p.knots, k)
	}
}

func (p *Path) noteApex(a, b *knot, z *quintic, end float64) {
	s, ok := z.turn(a.v.Z, b.v.Z)
	if !ok || a.v.Z <= 0 || s > end {
		return
	}
	if k := inside(a, b, s); k.p.Z > p.Apex.State.At.Z {
		p.Apex = Moment{units.Seconds(k.t), k.state(p.Start.Spin)}
	}
}

func (p *Path) noteNet(k knot, touches bool, top float64) {
	p.TouchesNet = p.TouchesNet || touches
	if !p.Net.Reached {
		p.Net = Crossing{true, units.Seconds(k.t), k.state(p.Start.Spin), units.Metres(top)}
	}
}

func (p *Path) finish(k knot, o Outcome) {
	p.Outcome, p.Duration, p.End = o, units.Seconds(k.t), k.state(p.Start.Spin)
	if k.p.Z > p.Apex.State.At.Z { // still climbing
		p.Apex = Moment{p.Duration, p.End}
	}
}
