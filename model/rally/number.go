package rally

import "slices"

// ImpliedAt is the number of the place that a hitter has at the contact of a
// shot without a keyframe there.
func ImpliedAt(shot int) int { return -1 - shot }

// ShotOfImplied is the shot of an implied place's number; false for the number
// of a keyframe.
func ShotOfImplied(number int) (shot int, ok bool) { return -1 - number, number < 0 }

// Number tells the stops of a track apart: the keyframe's in the play's track,
// below 0 for one that is implied (see ImpliedAt).
func (s Stop) Number() int {
	if s.Index == Implied {
		return ImpliedAt(s.Keyframe.At.Event.Shot)
	}
	return s.Index
}

// StopOf is the stop with a number, by its place in Stops; -1 if there is none.
// The run to it, and the leg, stand one place earlier in their lists.
func (t Track) StopOf(number int) int {
	return slices.IndexFunc(t.Stops, func(s Stop) bool { return s.Number() == number })
}
