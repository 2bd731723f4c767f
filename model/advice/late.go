package advice

import (
	"homeside/model/finding"
	"homeside/model/game"
	"homeside/model/movement"
	"homeside/model/rally"
	"homeside/model/units"
)

// lateArrivals are the stated places that are not reached in time. The run to a
// ball that the lesson leaves open is the striker's check.
func lateArrivals(s *sheet) {
	for _, id := range game.Players {
		t := s.Tracks[id]
		for i, leg := range t.Legs {
			stop := t.Stops[i+1]
			if stop.Late < Shown || stop.Index == rally.Implied || !s.Reached(leg.From) {
				continue
			}
			args := []finding.Arg{
				finding.Is("late", stop.Late), finding.Is("distance", leg.Way.Length()),
				finding.Is("speed", s.Player(id).Legs().TopSpeed), finding.Is("stop", i+1),
			}
			if v, ok := SpeedNeeded(leg, s.Player(id).Legs(), stop.At); ok {
				args = append(args, finding.Is("needs", v))
			}
			s.about(id, finding.LateArrival, stop.At, stop.Keyframe.Place, args...)
		}
	}
}

// SpeedNeeded is the top speed, forward, with which a player of this pace would
// do a leg by a time; false if no speed that a pace may have is enough.
func SpeedNeeded(leg rally.Leg, pace movement.Pace, by units.Seconds) (units.MetresPerSecond, bool) {
	gait := leg.Gait.Of(pace)
	v, ok := gait.SpeedNeeded(leg.Run, by-leg.Push())
	if !ok || gait.TopSpeed <= 0 {
		return 0, false
	}
	return v * pace.TopSpeed / gait.TopSpeed, true
}
