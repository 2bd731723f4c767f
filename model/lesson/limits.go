package lesson

import "homeside/model/units"

// Bounds of a lesson. They are wide enough for any court lesson and narrow
// enough that a mangled file cannot make the program run away.
const (
	MaxPlays     = 2000
	MaxKeyframes = 200  // per player and play
	MaxMarks     = 200  // per play
	MaxCues      = 200  // per play
	MaxTags      = 20   // per play
	MaxRallies   = 1000 // of a match
	MaxPoints    = 99   // points that win
	MaxCall      = 200  // a number of the score
	MaxReels     = 50
	MaxTakes     = 100 // per reel
	MaxSlows     = 50  // per take
	MaxFreezes   = 50  // per take
	MaxLoops     = 20  // of a take

	MaxTitle    = 200 // characters, also of a play's title
	MaxName     = 60
	MaxTag      = 40
	MaxInitials = 3
	MaxText     = 500 // a caption or a mark
	MaxNotes    = 10000

	MaxCoordinate units.Feet            = 200 // from the net's centre, each axis
	MaxHeight     units.Feet            = 100
	MaxRoom       units.Feet            = 200 // venue
	MaxOffset     units.Seconds         = 60  // of an anchor, either way, and of the lead
	MaxFlight     units.Seconds         = 30
	MaxSpeed      units.MetresPerSecond = 60
	MaxSpin       units.RPM             = 6000
	MaxTurn       units.Degrees         = 3600
	MaxAltitude   units.Metres          = 5000 // and 500 m below the sea
	MaxHeat                             = 60   // °C, and as many below 0
	MaxWind       units.MetresPerSecond = 30
	MaxScatter    units.MetresPerSecond = 5
	MaxAngle      units.Degrees         = 20

	MaxHold        units.Seconds = 60 // of a card or a freeze
	MinRate                      = 0.05
	MaxRate                      = 8
	MinCameraWidth units.Feet    = 8
	MaxCameraWidth units.Feet    = 100
)
