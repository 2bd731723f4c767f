package finding

import "homeside/model/lesson"

// Arg is one figure or name of a finding's sentence. Its value's type says what
// it is and so how it is worded: units.Feet, units.Seconds,
// units.MetresPerSecond, game.Player, game.Call, game.Format,
// court.End, court.Side, flight.Reason, Support, Shot, int, or a string that needs no wording.
type Arg struct {
	Name  string
	Value any
}

// Args are the figures and names of one finding.
type Args []Arg

// Is names a value.
func Is(name string, value any) Arg { return Arg{name, value} }

// Get is the value with this name; false if there is none.
func (a Args) Get(name string) (any, bool) {
	for _, arg := range a {
		if arg.Name == name {
			return arg.Value, true
		}
	}
	return nil, false
}

// Support is what a player stands on: for one in a wheelchair the rear wheels
// count as feet.
type Support uint8

// The supports.
const (
	Foot Support = iota
	RearWheel
)

// SupportOf is what a player stands on.
func SupportOf(wheelchair bool) Support {
	if wheelchair {
		return RearWheel
	}
	return Foot
}

// String is "foot" or "rear wheel".
func (s Support) String() string { return [2]string{"foot", "rear wheel"}[s&1] }

// Shot is the number of a shot in a finding's sentence, 0 for the serve.
type Shot int

// String is the shot's name: "serve", "return", "third" ...
func (s Shot) String() string { return lesson.ShotName(int(s)) }
