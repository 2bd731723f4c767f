package rally

import (
	"fmt"
	"sort"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/movement"
	"homeside/model/units"
)

// runTrack runs what is drawn with the player's own legs.
func (r *Rally) runTrack(id game.Player, t *Track) error {
	pace := r.Player(id).Legs()
	t.Legs = make([]Leg, 0, len(t.Runs))
	for i, run := range t.Runs {
		from := r.departure(id, t, i)
		if i > 0 {
			from = max(from, t.Legs[i-1].From)
		}
		end := t.Stops[i+1]
		through := end.Keyframe.Through && (i+1 == len(t.Runs) || r.departure(id, t, i+1) == end.At)
		pose, way := t.setOut(i, from)
		leg, err := newLeg(pose, from, way, run, pace, through)
		if err != nil {
			return fmt.Errorf("%v, run %d: %w", id, i+1, err)
		}
		t.Legs = append(t.Legs, leg)
		t.Stops[i+1].Late = leg.Late()
	}
	return nil
}

// setOut is the pose in which run i starts and the way from there. The pose's
// speed is what the player brings along from the leg before.
func (t *Track) setOut(i int, from units.Seconds) (Pose, court.Curve) {
	pose, way := t.RunAt(from), t.Runs[i].Way
	if start, _ := way.Ends(); pose.Place != start {
		way = detour(pose.Place, way)
	}
	if pose.Speed == 0 {
		return pose, way
	}
	was, moving := t.Legs[i-1].direction(from)
	will, goes := heading(way, 0)
	if !moving || !goes {
		pose.Speed = 0
		return pose, way
	}
	pose.Speed = movement.Carry(pose.Speed, will-was)
	return pose, way
}

// departure is the earliest first step of run i: not before the drawn one, the
// player's own stroke recovery, or the reaction to the contact that the
// departure hangs on. One who runs on through a place is under way and does
// not wait to react.
func (r *Rally) departure(id game.Player, t *Track, i int) units.Seconds {
	a, run, pace := t.Stops[i], t.Runs[i], r.Player(id).Legs()
	from := run.From
	if !a.Keyframe.Through || run.From > a.At {
		from = max(from, r.reacted(id, t, i, pace))
	}
	for _, s := range r.Strokes {
		if s.By == id && s.At <= run.From {
			from = max(from, s.At+pace.StrokeRecovery)
		}
	}
	return from
}

// reacted is when the player has reacted to the contact that the departure
// hangs on. One who leaves before a contact does not wait for it, one who leaves
// well after has had the time.
func (r *Rally) reacted(id game.Player, t *Track, i int, pace movement.Pace) units.Seconds {
	on := r.leavesOn(t, i)
	if on.Event.Moment != lesson.Contact || on.Offset < 0 || !r.surprised(id, t.Stops[i].Keyframe, on.Event.Shot) {
		return t.Runs[i].From
	}
	return r.times[on.Event] + pace.Reaction
}

// leavesOn is the anchor of the departure: the run's own where it has one that
// is not before the stop, or else the stop's.
func (r *Rally) leavesOn(t *Track, i int) lesson.Anchor {
	if own := t.Stops[i+1].Keyframe.Leave; own != nil && r.TimeAt(*own) >= t.Stops[i].At {
		return *own
	}
	return t.Stops[i].Keyframe.At
}

// surprised says whether a player can only react to a shot: an opponent's, or
// one of the partner's that is out of view and told by its sound.
func (r *Rally) surprised(id game.Player, k lesson.Keyframe, shot int) bool {
	s := r.Strokes[shot]
	switch s.By {
	case id:
		return false
	case id.Partner():
		return !sees(k.Place, k.Facing, flightGround(s.From))
	}
	return true
}

// RunAt is where the player is at time t as run.
func (t Track) RunAt(at units.Seconds) Pose {
	i := sort.Search(len(t.Legs), func(i int) bool { return t.Legs[i].From > at }) - 1
	if i < 0 {
		return standing(t.Stops[0].Keyframe)
	}
	return t.Legs[i].at(at)
}
