package rally

import (
	"homeside/model/flight"
	"homeside/model/lesson"
	"homeside/model/units"
)

// solve is the launch that a shot asks for. Where it cannot be had, the reason
// says why and the launch is the nearest thing to it.
func solve(m flight.Model, from flight.Vec, shot lesson.Shot) (flight.State, flight.Reason) {
	in := intent(from, shot)
	if in.Kind == flight.NetClear && in.Value < 0 {
		return belowTop(m, in)
	}
	found := m.Solve(in)
	if found.Low == nil && found.Blocked != nil && shot.Arc == lesson.Low {
		return found.Blocked.State, flight.IntoNet // the high one is another shot
	}
	if l := pick(found, shot.Arc); l != nil {
		return l.State, found.Reason
	}
	return instead(m, in), found.Reason
}

// belowTop is a ball that passes the net's plane below its top on the way to the
// aim, and so goes into the net.
func belowTop(m flight.Model, in flight.Intent) (flight.State, flight.Reason) {
	open := m
	open.Net = noNet
	share := in.From.Y / (in.From.Y - float64(in.AimY))
	across := units.Metres(in.From.X + share*(float64(in.AimX)-in.From.X))
	low := in
	low.Value += float64(m.Net.Top(across) - open.Net.Top(across))
	if l := pick(open.Solve(low), lesson.Low); l != nil {
		return l.State, flight.IntoNet
	}
	return instead(m, in), m.Solve(in).Reason
}

// pick is the solution on the asked arc, the only one where there is one, or
// the one that the net is in the way of.
func pick(s flight.Solutions, arc lesson.Arc) *flight.Launch {
	all := s.All()
	switch {
	case len(all) == 0:
		return s.Blocked
	case arc == lesson.High:
		return all[len(all)-1]
	default:
		return all[0]
	}
}

// ordinaryLob (m) is the apex of the flight shown instead of one that cannot be.
const ordinaryLob = 4

// instead is a ball to the same aim in a high arc or, where even that cannot be
// (an aim at the contact itself), one that is let fall.
func instead(m flight.Model, in flight.Intent) flight.State {
	in.Kind, in.Value = flight.Apex, max(ordinaryLob, in.From.Z+1)
	if l := pick(m.Solve(in), lesson.Low); l != nil {
		return l.State
	}
	return flight.State{At: in.From}
}

func intent(from flight.Vec, shot lesson.Shot) flight.Intent {
	in := flight.Intent{
		From: from, AimX: shot.Aim.X.Metres(), AimY: shot.Aim.Y.Metres(),
		Spin: shot.Spin, Side: shot.Side,
	}
	switch shot.Intent.Kind {
	case lesson.ByApex:
		in.Kind, in.Value = flight.Apex, float64(shot.Intent.Apex.Metres())
	case lesson.BySpeed:
		in.Kind, in.Value = flight.Speed, float64(shot.Intent.Speed)
	case lesson.ByTime:
		in.Kind, in.Value = flight.Time, float64(shot.Intent.Time)
	default:
		in.Kind, in.Value = flight.NetClear, float64(shot.Intent.NetClear.Metres())
	}
	return in
}
