package rally

import (
	"math"

	"homeside/model/court"
	"homeside/model/movement"
	"homeside/model/units"
)

// Gait is how a player moves on a run: by the angle between where the player
// looks and where the run goes.
type Gait uint8

// The gaits.
const (
	Forward  Gait = iota // within 60 degrees of the facing
	Sideways             // a shuffle, from 60 to 120 degrees
	Backward             // beyond 120 degrees
)

// The angles between the gaits: our assumption.
const (
	ForwardWithin  units.Degrees = 60
	SidewaysWithin units.Degrees = 120
)

// InView is how far from the facing a player still sees a partner strike: half
// of the field of view of two eyes, about 220 degrees [from memory].
const InView units.Degrees = 110

var gaitNames = [...]string{"forward", "sideways", "backward"}

// String is "forward", "sideways" or "backward".
func (g Gait) String() string { return gaitNames[g%3] }

// Of is the pace of a player who moves that way: slower sideways and backwards.
func (g Gait) Of(p movement.Pace) movement.Pace {
	switch g {
	case Sideways:
		p = p.Shuffling()
	case Backward:
		p = p.Backward()
	}
	p.TopSpeed = max(p.TopSpeed, crawl)
	return p
}

// crawl is the slowest top speed a pace may have.
const crawl units.MetresPerSecond = 0.1

// gaitFor is the gait of one who looks one way and goes another.
func gaitFor(facing, way units.Degrees) Gait {
	switch off := apart(facing, way); {
	case off <= ForwardWithin:
		return Forward
	case off <= SidewaysWithin:
		return Sideways
	}
	return Backward
}

// apart is the angle between two directions, 0 to 180 degrees.
func apart(a, b units.Degrees) units.Degrees {
	return units.Degrees(math.Abs(math.Remainder(float64(b-a), 360)))
}

// sees says whether one who stands somewhere has a point in view.
func sees(p court.Point, facing units.Degrees, other court.Point) bool {
	to, ok := court.FacingTo(p, other)
	return !ok || apart(facing, to) <= InView
}
