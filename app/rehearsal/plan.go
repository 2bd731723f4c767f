package rehearsal

import "homeside/model/units"

// The speeds of rehearsing: partners walk a play first.
const (
	Walk  = 0.4
	Half  = 0.5
	Match = 1.0
)

// Speeds are the speeds to choose from, slowest first.
var Speeds = [...]float64{Walk, Half, Match}

// Plan is how a play is rehearsed. The zero value is one round at walking speed
// without counting in.
type Plan struct {
	Speed  float64       // 0 means Walk
	Count  int           // beats before the rally
	Beat   units.Seconds // from beat to beat; 0 means 0.7
	Rounds int           // how often; 0 means once, below 0 without end
	Rest   units.Seconds // between two rounds
	Warn   units.Seconds // before the first count, where paths cross: that is said then
	Cuts   bool          // show the events only: nothing moves by itself
}

// usualBeat is a calm beat: 86 a minute, our choice.
const usualBeat units.Seconds = 0.7

func (p Plan) filled() Plan {
	if p.Speed <= 0 {
		p.Speed = Walk
	}
	if p.Beat <= 0 {
		p.Beat = usualBeat
	}
	if p.Rounds == 0 {
		p.Rounds = 1
	}
	return p
}
