package formation

import (
	"math"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/movement"
	"homeside/model/rally"
	"homeside/model/units"
)

// allOfIt is the share of a way that is still done at ease where the whole of it
// would be too far.
const allOfIt = 0.95

// within is the place on the way from one place to another that a player, who
// looks at the net, can reach and stand at in a time from the first step: the
// whole way where the legs are quick enough. A few feet short is normal, late
// is not.
func (w *writer) within(id game.Player, from, to court.Point, window units.Seconds) court.Point {
	pace := w.s.Lesson.Player(id).Legs()
	way := from.Distance(to)
	heading, ok := court.FacingTo(from, to)
	if !ok {
		return to
	}
	off := units.Degrees(math.Abs(math.Remainder(float64(heading-id.Team().Facing()), 360)))
	window -= pace.TurnTime(off)
	gait := gaitOf(off).Of(pace)
	enough := func(share float64) bool {
		run, err := gait.Fastest(movement.Run{Distance: (way * units.Feet(share)).Metres()})
		return err == nil && run.Duration() <= window
	}
	if enough(1) {
		return to
	}
	lo, hi := 0.0, 1.0
	for range 20 { // to a millionth of the way
		if mid := (lo + hi) / 2; enough(mid) {
			lo = mid
		} else {
			hi = mid
		}
	}
	p := from.Toward(to, lo*allOfIt)
	return court.Pt(rounded(p.X), rounded(p.Y))
}

// gaitOf is how one who looks at the net goes that far off it.
func gaitOf(off units.Degrees) rally.Gait {
	switch {
	case off <= rally.ForwardWithin:
		return rally.Forward
	case off <= rally.SidewaysWithin:
		return rally.Sideways
	}
	return rally.Backward
}
