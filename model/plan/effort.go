package plan

import (
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

// Effort is what a formation costs a pair in one rally.
type Effort struct {
	Feet   [2]units.Feet  // that each runs, by number; from the serve's contact on
	Margin *units.Seconds // the worst time to spare before a deadline, negative if late; nil where nobody works it out
	Legal  *bool          // whether the rules find no fault; nil where nobody asks them
}

// Efforts tells what a pair's formation at a state costs.
type Efforts interface {
	Effort(p Pair, s game.State, f lesson.Formation) (Effort, error)
}
