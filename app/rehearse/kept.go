package rehearse

import (
	"slices"

	"fyne.io/fyne/v2"

	"homeside/app/rehearsal"
	"homeside/model/units"
)

// What is chosen for rehearsing is kept in the toolkit's preferences.
const (
	keptSpeed  = "rehearse speed"
	keptRounds = "rehearse rounds"
	keptRest   = "rehearse rest"
	keptCount  = "rehearse count"
	keptSilent = "rehearse silently"
	keptView   = "rehearse seen"
)

// What there is to choose from.
var (
	rounds = []int{1, 2, 3, 5, 10, -1} // below 0 without end
	rests  = []int{0, 5, 10, 20, 30, 60}
	counts = []int{0, 2, 3, 4, 8}
)

// What is chosen at first: our choice, for a pair that walks a play it has not
// walked before.
const (
	usualRounds = 3
	usualRest   = 10
	usualCount  = 4
)

// warn is how long it is said, before the first count, that paths will cross.
const warn units.Seconds = 4

// choices are what a pair has chosen.
type choices struct {
	speed               float64
	rounds, rest, count int
	silent              bool
	view                view
}

// keptChoices reads them; what is kept and cannot be chosen is as usual.
func keptChoices(p fyne.Preferences) choices {
	c := choices{
		speed: p.FloatWithFallback(keptSpeed, rehearsal.Walk), rounds: p.IntWithFallback(keptRounds, usualRounds),
		rest: p.IntWithFallback(keptRest, usualRest), count: p.IntWithFallback(keptCount, usualCount), silent: p.Bool(keptSilent),
	}
	c.speed = among(rehearsal.Speeds[:], c.speed, rehearsal.Walk)
	c.rounds = among(rounds, c.rounds, usualRounds)
	c.rest = among(rests, c.rest, usualRest)
	c.count = among(counts, c.count, usualCount)
	c.view = view(max(slices.Index(viewTags[:], p.String(keptView)), 0))
	return c
}

// among is a value that is one of all, or else another.
func among[T comparable](all []T, v, otherwise T) T {
	if slices.Contains(all, v) {
		return v
	}
	return otherwise
}

func (c choices) keep(p fyne.Preferences) {
	p.SetFloat(keptSpeed, c.speed)
	p.SetInt(keptRounds, c.rounds)
	p.SetInt(keptRest, c.rest)
	p.SetInt(keptCount, c.count)
	p.SetBool(keptSilent, c.silent)
	p.SetString(keptView, viewTags[c.view])
}

// plan is how a play is rehearsed by them.
func (c choices) plan(cuts bool) rehearsal.Plan {
	return rehearsal.Plan{Speed: c.speed, Count: c.count, Rounds: c.rounds, Rest: units.Seconds(c.rest), Warn: warn, Cuts: cuts}
}
