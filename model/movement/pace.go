package movement

import (
	"errors"
	"fmt"
	"math"

	"homeside/model/units"
)

// ErrPace says that a pace has a figure outside its range; the message names it.
var ErrPace = errors.New("pace out of range")

// Pace is how a player moves. The zero Pace is not valid: start from
// DefaultPace or a preset.
type Pace struct {
	TopSpeed units.MetresPerSecond // forward, flat out; [0.1, 15]
	Tau      units.Seconds         // time constant of the start: 63 % of TopSpeed after Tau; [0.05, 10]
	Braking  float64               // m/s2, the steady rate of slowing down to a stop; [0.1, 20]

	Reaction       units.Seconds // from an opponent's contact to the first step; [0, 2]
	StrokeRecovery units.Seconds // from the own contact to the first step; [0, 2]
	Turn           units.Seconds // to turn half round before the first push, for a wheelchair; 0 on foot; [0, 5]

	ShuffleRatio  float64 // top speed sideways, facing the net, over TopSpeed; [0.05, 1]
	BackwardRatio float64 // top speed backwards over TopSpeed; [0.05, 1]

	Arm    units.Metres // shoulder to grip; [0, 2]
	Paddle units.Metres // paddle tip beyond the grip; [0, 2]
	Lunge  units.Metres // what a last long step adds; [0, 2]
}

// Validate says what is wrong with a pace: an ErrPace that names the figure,
// its value and its range, or nil.
func (p Pace) Validate() error {
	for _, c := range p.limits() {
		if !(c.v >= c.min && c.v <= c.max) { // catches NaN too
			return fmt.Errorf("%w: %s is %v %s, want %v to %v", ErrPace, c.name, c.v, c.unit, c.min, c.max)
		}
	}
	return nil
}

// limit is the range of one figure.
type limit struct {
	name, unit  string
	v, min, max float64
}

// The ends of the ranges that others search, in m/s and s.
const (
	leastSpeed, mostSpeed = 0.1, 15.0
	leastTau, mostTau     = 0.05, 10.0
)

// limits are the ranges: wide enough for any person, narrow enough that no
// formula overflows.
func (p Pace) limits() []limit {
	return []limit{
		{"top speed", "m/s", float64(p.TopSpeed), leastSpeed, mostSpeed},
		{"time constant", "s", float64(p.Tau), leastTau, mostTau},
		{"braking", "m/s2", p.Braking, 0.1, 20},
		{"reaction", "s", float64(p.Reaction), 0, 2},
		{"stroke recovery", "s", float64(p.StrokeRecovery), 0, 2},
		{"half turn", "s", float64(p.Turn), 0, 5},
		{"shuffle ratio", "of forward", p.ShuffleRatio, 0.05, 1},
		{"backward ratio", "of forward", p.BackwardRatio, 0.05, 1},
		{"arm", "m", float64(p.Arm), 0, 2},
		{"paddle", "m", float64(p.Paddle), 0, 2},
		{"lunge", "m", float64(p.Lunge), 0, 2},
	}
}

// Reach is how far from the feet the paddle's tip can meet a ball: arm, paddle
// and lunge.
func (p Pace) Reach() units.Metres { return p.Arm + p.Paddle + p.Lunge }

// Shuffling is the pace sideways, facing the net: the top speed times
// ShuffleRatio; the time constant and braking stay.
func (p Pace) Shuffling() Pace { return p.times(p.ShuffleRatio) }

// Backward is the pace backwards, facing the net: the top speed times
// BackwardRatio; the time constant and braking stay.
func (p Pace) Backward() Pace { return p.times(p.BackwardRatio) }

// times is the pace with its top speed scaled.
func (p Pace) times(ratio float64) Pace {
	p.TopSpeed *= units.MetresPerSecond(ratio)
	return p
}

// TurnTime is how long a wheelchair takes to turn by an angle of either sign
// before it pushes off: Turn for 180 degrees, in proportion below; 0 on foot
// and for an angle that is not a number.
func (p Pace) TurnTime(by units.Degrees) units.Seconds {
	a := math.Abs(math.Remainder(float64(by), 360))
	if math.IsNaN(a) {
		return 0
	}
	return p.Turn * units.Seconds(a/180)
}
