package page

import (
	"math"

	"homeside/model/court"
	"homeside/model/units"
)

// tolerance is how far from the rally a thing between two samples may be.
const tolerance units.Feet = 0.5 / units.InchesInFoot

// facingTolerance is the same for where a player looks: less than can be seen.
const facingTolerance units.Degrees = 2

// least is the shortest time between two samples that still are split; a
// contact, where a ball turns about, lies on a sample of its own.
const least units.Seconds = 0.004

// Sample is where something is at a moment.
type Sample struct {
	T      units.Seconds
	Place  court.Point
	Height units.Feet    // of the ball
	Facing units.Degrees // of a player, not turned back to below 360
}

// way samples a motion between two moments so that straight lines between
// neighbours keep to it.
type way struct {
	at  func(units.Seconds) Sample
	out []Sample
}

// along are the samples of a motion, with one at each of the moments, which are
// in order.
func along(moments []units.Seconds, at func(units.Seconds) Sample) []Sample {
	w := way{at: at}
	for i, t := range moments {
		s := at(t)
		if i > 0 {
			w.between(w.out[len(w.out)-1], s)
		}
		w.add(s)
	}
	return w.out
}

// between adds what is needed after a and before b.
func (w *way) between(a, b Sample) {
	if b.T-a.T < least || w.straight(a, b) {
		return
	}
	m := w.at((a.T + b.T) / 2)
	w.between(a, m)
	w.add(m)
	w.between(m, b)
}

// probes are the places between two samples that are compared.
const probes = 8

func (w *way) straight(a, b Sample) bool {
	for i := 1; i < probes; i++ {
		k := float64(i) / probes
		s, line := w.at(a.T+(b.T-a.T)*units.Seconds(k)), a.toward(b, k)
		if !s.near(line) {
			return false
		}
	}
	return true
}

// add appends a sample, its facing turned on from the one before.
func (w *way) add(s Sample) {
	if n := len(w.out); n > 0 {
		s.Facing = turnedOn(w.out[n-1].Facing, s.Facing)
	}
	w.out = append(w.out, s)
}

// turnedOn is a facing as the nearest to another one, whatever full turns lie
// between.
func turnedOn(from, to units.Degrees) units.Degrees {
	return from + units.Degrees(math.Remainder(float64(to-from), 360))
}

func (a Sample) toward(b Sample, k float64) Sample {
	return Sample{
		T:      a.T + (b.T-a.T)*units.Seconds(k),
		Place:  a.Place.Toward(b.Place, k),
		Height: a.Height + (b.Height-a.Height)*units.Feet(k),
		Facing: a.Facing + (turnedOn(a.Facing, b.Facing)-a.Facing)*units.Degrees(k),
	}
}

// near says whether two samples look the same; half the tolerance is left for
// the rounding of what is written.
func (a Sample) near(b Sample) bool {
	d := a.Place.Distance(b.Place)
	return math.Hypot(float64(d), float64(a.Height-b.Height)) <= float64(tolerance)/2 &&
		math.Abs(float64(turnedOn(a.Facing, b.Facing)-a.Facing)) <= float64(facingTolerance)
}
