package flight

import (
	"math"

	"homeside/model/units"
)

// Kind says which figure of an Intent is fixed, and so the unit of its Value.
type Kind uint8

// The kinds.
const (
	Apex     Kind = iota // greatest height of the ball's centre, m
	Speed                // off the paddle, m/s
	Time                 // from contact to landing, s
	NetClear             // centre above the net's top as it passes, m
)

// Kinds lists them all.
var Kinds = [...]Kind{Apex, Speed, Time, NetClear}

var kindNames = [...]string{"apex", "speed", "time", "net clearance"}

// String is "apex", "speed", "time" or "net clearance".
func (k Kind) String() string { return kindNames[k&3] }

// Intent is a shot as a coach says it: from where, to where and one figure more.
type Intent struct {
	From       Vec          // the ball's centre at contact, m; at least one radius up
	AimX, AimY units.Metres // the point of the ground it lands on
	Kind       Kind
	Value      float64   // in Kind's unit
	Spin       units.RPM // + topspin, - backspin
	Side       units.RPM // about the vertical, + curves to the left of its flight
}

// aim is the way over the ground from contact to landing.
func (in Intent) aim() Vec { return Vec{float64(in.AimX), float64(in.AimY), in.From.Z}.Sub(in.From) }

// launch is the ball leaving the paddle with velocity v.
func (in Intent) launch(v Vec) State { return State{in.From, v, TopSpin(v, in.Spin, in.Side)} }

func (in Intent) finite() bool {
	return in.From.Finite() && in.aim().Finite() && Vec{in.Value, float64(in.Spin), float64(in.Side)}.Finite()
}

// acrossNet is the point of the net's plane on the straight way to the aim, as a
// share of the way; false if both are on one side.
func (in Intent) acrossNet() (float64, bool) {
	y0, y1 := in.From.Y, float64(in.AimY)
	if y0*y1 >= 0 {
		return 0, false
	}
	return y0 / (y0 - y1), true
}

// away says whether the aim is on the contact's side and farther from the net.
func (in Intent) away() bool {
	y0, y1 := in.From.Y, float64(in.AimY)
	return y0*y1 > 0 && math.Abs(y1) >= math.Abs(y0)
}
