package rally

import (
	"homeside/model/court"
	"homeside/model/units"
)

// ShotAt is the number of the shot in play at time t: the last one struck at or
// before t, the serve for times before it.
func (r *Rally) ShotAt(t units.Seconds) int { return max(r.strokeAt(t), 0) }

// NetTop is the height of the net where the ball of a shot passes it, its
// middle's for one that does not get there.
func (r *Rally) NetTop(shot int) units.Feet {
	net := r.Strokes[shot].Planned.Net
	if !net.Reached {
		return court.NetAtCentre
	}
	return court.NetHeight(net.State.Ground().X)
}

// ContactHeight is the height of the ball's centre where a shot is struck.
func (r *Rally) ContactHeight(shot int) units.Feet {
	return units.Metres(r.Strokes[shot].From.Z).Feet()
}
