package finding

// Arg is one figure or name of a finding's sentence. Its value's type says what
// it is and so how it is worded: units.Feet, units.Seconds,
// units.MetresPerSecond, units.Degrees, game.Player, game.Call, game.Format,
// court.End, court.Side, flight.Reason, int, or a string that needs no wording.
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
