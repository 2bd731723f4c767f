package cover

import (
	"fmt"
	"math"

	"homeside/model/lesson"
	"homeside/model/units"
)

// Shot is what the opponent hits: a drive or a lob, to any cell alike. The zero
// Shot is a drive of DefaultDrive.
//
// A drive goes straight and slows down by drag. A lob is timed by its apex alone:
// up to it and down to the court, each against the drag of its vertical speed,
//
//	rise = (vt/g) acos(exp(-kd h)), fall = (vt/g) acosh(exp(kd h)), vt = sqrt(g/kd)
//
// for the heights h gone up and down (closed forms of the standard texts), so that
// it lands everywhere at the same moment. The whole flight, in which the speed
// over the ground adds to the drag, differs by a few thousandths of a second.
type Shot struct {
	Drive units.MetresPerSecond // off the paddle; [1, 60]; 0 for a lob or DefaultDrive
	Lob   units.Feet            // apex of the ball's centre; above the contact, at most 100; 0 for a drive
}

// DefaultDrive is the drive of the zero Shot: the middle one of Shots.
const DefaultDrive units.MetresPerSecond = 15

// Shots are the shots to choose from: three drives within the published 20 to 40
// mph and a little faster, and a lob of an ordinary height (our assumption).
var Shots = [...]Shot{{Drive: 10}, {Drive: DefaultDrive}, {Drive: 20}, {Lob: 20}}

// leastDrive is the slowest drive, m/s: less is no drive, and times stay finite.
const leastDrive = 1

// String is "drive of 15 m/s" or "lob 20 ft high".
func (s Shot) String() string {
	if s.Lob != 0 {
		return fmt.Sprintf("lob %v ft high", float64(s.Lob))
	}
	return fmt.Sprintf("drive of %v m/s", float64(s.speed()))
}

func (s Shot) speed() units.MetresPerSecond {
	if s.Drive == 0 {
		return DefaultDrive
	}
	return s.Drive
}

// validate checks the shot struck at a height.
func (s Shot) validate(height units.Metres) error {
	switch v := s.speed(); {
	case s.Lob == 0 && !(v >= leastDrive && v <= lesson.MaxSpeed):
		return fmt.Errorf("%w: drive of %v m/s, want %v to %v", ErrStrike, float64(v), leastDrive, float64(lesson.MaxSpeed))
	case s.Lob == 0:
		return nil
	case s.Drive != 0:
		return fmt.Errorf("%w: both a drive and a lob, want one", ErrStrike)
	case !(s.Lob.Metres() >= height && s.Lob <= lesson.MaxHeight):
		return fmt.Errorf("%w: lob %v ft high, want %.2f (the contact) to %v", ErrStrike, float64(s.Lob), float64(height.Feet()), float64(lesson.MaxHeight))
	}
	return nil
}

// driveTime (s) is how long a drive of v (m/s) flies over d (m) against the drag
// kd (1/m).
func driveTime(d, v, kd float64) float64 {
	if kd == 0 {
		return d / v
	}
	return math.Expm1(kd*d) / (kd * v)
}

// lobTime (s) is how long a ball that rises up (m) and then falls down (m) is in
// the air.
func lobTime(up, down, kd float64) float64 {
	if kd == 0 {
		return math.Sqrt(2*up/units.Gravity) + math.Sqrt(2*down/units.Gravity)
	}
	// acos(exp(-x)) and acosh(exp(x)) written so that small x keeps its digits.
	rise := math.Atan(math.Sqrt(math.Expm1(2 * kd * up)))
	fall := math.Log1p(math.Expm1(kd*down) + math.Sqrt(math.Expm1(2*kd*down)))
	return (rise + fall) / math.Sqrt(units.Gravity*kd)
}
