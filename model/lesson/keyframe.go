package lesson

import (
	"homeside/model/court"
	"homeside/model/units"
)

// Keyframe says where a player is at a time. The run to it starts at the
// previous keyframe, or at Leave where that is later.
type Keyframe struct {
	At      Anchor
	Place   court.Point
	Facing  units.Degrees // 0 looks along +y, clockwise
	Via     *court.Point  // a bent path passes here halfway; nil means straight
	Through bool          // need not stop here
	Leave   *Anchor       // when the run to this place starts; nil means at once
}
