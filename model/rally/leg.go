package rally

import (
	"homeside/model/court"
	"homeside/model/movement"
	"homeside/model/units"
)

// Leg is a run as the player's legs can do it. It starts where the player
// really is and follows the drawn path from there. It ends at its place or, if
// the next leg starts first, wherever the player then is.
type Leg struct {
	From    units.Seconds // the first move: after reaction or stroke recovery
	Turning units.Seconds // a chair turns this long before it pushes off; 0 on foot
	To      units.Seconds // gets there, if nothing comes between
	Margin  units.Seconds // time to spare at full effort; below 0 the player is late by as much
	Gait    Gait
	Run     movement.Run // what there is to do
	Way     court.Curve
	Profile movement.Profile

	Start, Stop units.Degrees // facings
}

// newLeg is the leg from a pose at a time along a way, for a drawn run.
func newLeg(pose Pose, from units.Seconds, way court.Curve, run Run, pace movement.Pace, through bool) (Leg, error) {
	l := Leg{From: from, Way: way, Start: pose.Facing, Stop: run.Stop}
	l.Run = movement.Run{Distance: way.Length().Metres(), Start: pose.Speed, Through: through}
	if way.Bent() {
		l.Run.Cap = movement.BendCap(way.LeastRadius().Metres())
	}
	if d, ok := l.heading(); ok {
		l.Gait = gaitFor(turn(l.Start, l.Stop, 0.5), d)
		if pose.Speed == 0 {
			l.Turning = pace.TurnTime(l.toPush(d))
		}
	}
	fastest, err := l.Gait.Of(pace).Fastest(l.Run)
	if err != nil {
		return Leg{}, err
	}
	l.fit(fastest, run.To)
	return l, nil
}

// detour is a drawn way begun at another place: a bent one still passes through
// its middle point.
func detour(from court.Point, way court.Curve) court.Curve {
	a, b := way.Ends()
	if !way.Bent() {
		return court.StraightCurve(from, b)
	}
	via := a.Add(b).Times(0.25).Add(way.Handle().Times(0.5))
	return court.BentCurve(from, via, b)
}

// fit stretches the fastest run so that it fills the time there is.
func (l *Leg) fit(fastest movement.Profile, arrival units.Seconds) {
	window := arrival - l.Push()
	l.Profile, _ = fastest.Fill(window)
	l.Margin = window - fastest.Duration()
	l.To = arrival
	if l.Run.Distance == 0 {
		l.Margin, l.To = max(l.Margin, 0), max(arrival, l.Push())
	} else if l.Margin < 0 {
		l.To = l.Push() + l.Profile.Duration()
	}
}

// Push is the first step, or the first push of a chair.
func (l *Leg) Push() units.Seconds { return l.From + l.Turning }

// Late is how much later than drawn the player gets there; 0 on time.
func (l Leg) Late() units.Seconds { return max(-l.Margin, 0) }

// heading is the direction from the start to the end; of a way that ends where
// it starts, the one it sets out in; false for one who stays.
func (l Leg) heading() (units.Degrees, bool) {
	if d, ok := court.FacingTo(l.Way.Ends()); ok {
		return d, true
	}
	return heading(l.Way, 0)
}

// heading is the direction of a way after a share of it; false if it has none.
func heading(way court.Curve, share float64) (units.Degrees, bool) {
	d, ok := way.DirectionAt(share)
	if !ok {
		return 0, false
	}
	return court.FacingTo(court.Point{}, d)
}

// toPush is how far a chair turns before it pushes off that way.
func (l Leg) toPush(way units.Degrees) units.Degrees {
	if l.Gait == Backward {
		way += 180
	}
	return way - l.Start
}

// share is how much of the way is done at time t and how fast; a player who
// turns on the spot does it in minimum-jerk time.
func (l *Leg) share(t units.Seconds) (float64, units.MetresPerSecond) {
	if l.Run.Distance == 0 {
		if t >= l.To {
			return 1, 0
		}
		return movement.MinimumJerk(float64((t - l.From) / (l.To - l.From))), 0
	}
	d, v := l.Profile.At(t - l.Push())
	return float64(d / l.Run.Distance), v
}

// at is where the player is at time t of the leg, who stands once it is done.
func (l *Leg) at(t units.Seconds) Pose {
	s, v := l.share(t)
	if t > l.To {
		v = 0
	}
	return Pose{l.Way.At(s), turn(l.Start, l.Stop, s), v}
}

// direction is where the player is going at time t; false for one who stays.
func (l *Leg) direction(t units.Seconds) (units.Degrees, bool) {
	s, _ := l.share(t)
	return heading(l.Way, s)
}
