package formation

import (
	"math"

	"homeside/model/court"
	"homeside/model/flight"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

// Base positions, measured from the net or from the centreline. All are common
// practice of the trade; the exact figures are our choice within it.
const (
	serverBehind             = court.Baseline + 0.6 // as near to the line as feet may be
	serverAside   units.Feet = 2.5                  // from the centreline
	stackAside    units.Feet = 1.5                  // likewise when the server has to change halves
	mateBehind               = court.Baseline + 2.5 // the server's partner
	readyBehind              = court.Baseline + 1.2 // both servers at the return's bounce
	halfMiddle    units.Feet = 5                    // from the centreline to the middle of a half
	receiveBehind            = court.Baseline + 2   // the receiver: 1-4 ft behind the baseline
	atKitchen                = court.Kitchen + 0.75 // 0.5-1 ft behind the line
	offCourt      units.Feet = 12                   // a stacked partner beyond the sideline
	walkedIn                 = court.Baseline - 5   // behind the third
	besideSafe    units.Feet = 0.75                 // from the middle of a body to the edge of the room there is
	passApart     units.Feet = 3.6                  // between partners who cross behind the baseline
	clearSwing    units.Feet = 1.75                 // from a paddle's tip at full reach to the partner's middle: half a body and a foot
)

// at is a place of a team in the terms of its lead player: along from the
// centreline, positive in the half where the lead stands at the serve, and
// behind the net.
func (s Situation) at(team court.End, along, behind units.Feet) court.Point {
	return court.Pt(along*s.sign(team), behind*team.Sign())
}

// room is how far from the centreline and from the net a player may stand.
func (s Situation) room() (along, behind units.Feet) {
	r := s.Lesson.Venue.Surface()
	return r.Max.X - besideSafe, r.Max.Y - besideSafe
}

// offCourt is where a stacked partner waits beside the court, as far out as the
// room allows; false where there is none.
func (s Situation) offCourt() (units.Feet, bool) {
	along, _ := s.room()
	return min(offCourt, along), along >= court.HalfWidth+besideSafe
}

// besideServer is how far from the centreline the partner stands who is stacked
// on the serve: clear of the backswing.
func (s Situation) besideServer() units.Feet {
	legs := s.Lesson.Player(s.State.Server()).Legs()
	along, _ := s.room()
	return min(rounded(stackAside+(legs.Arm+legs.Paddle).Feet()+clearSwing), along)
}

// stand is a place at an anchor, facing the net.
func stand(at lesson.Anchor, p court.Point) lesson.Keyframe {
	return lesson.Keyframe{At: at, Place: p, Facing: endOf(p).Facing()}
}

// leaving is the keyframe with the start of its run.
func leaving(k lesson.Keyframe, from lesson.Anchor) lesson.Keyframe {
	k.Leave = &from
	return k
}

func endOf(p court.Point) court.End {
	if p.Y > 0 {
		return court.Far
	}
	return court.Near
}

func event(shot int, m lesson.Moment) lesson.Anchor {
	return lesson.At(lesson.Event{Shot: shot, Moment: m})
}

func after(a lesson.Anchor, by units.Seconds) lesson.Anchor {
	a.Offset += by
	return a
}

// grain is the fineness of computed places (ft) and times (s) in a play: a coach
// edits figures that can be read, and a mirrored play gets the same ones.
const grain = 0.05

func rounded[T ~float64](v T) T { return T(math.Round(float64(v)/grain) * grain) }

// before is a time rounded down, so that what is to be done by then is.
func before(t units.Seconds) units.Seconds {
	return units.Seconds(math.Floor(float64(t)/grain) * grain)
}

// groundOf is the point of the ground below the ball.
func groundOf(v flight.Vec) court.Point { return flight.State{At: v}.Ground() }

// forehandMiddle is the player of a pair whose forehand is in the middle, by
// who ends on which side. Where both or neither have it there, it is the one on
// the left (common practice: usually the stronger).
func (s Situation) forehandMiddle(right, left game.Player) game.Player {
	if s.Lesson.Player(left).Hand == lesson.LeftHanded && s.Lesson.Player(right).Hand == lesson.LeftHanded {
		return right
	}
	return left
}
