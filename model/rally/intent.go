package rally

import (
	"homeside/model/flight"
	"homeside/model/lesson"
	"homeside/model/units"
)

// solve is the launch that a shot asks for, and why not if it cannot be had;
// then it is the nearest thing: a lob of ordinary height to the same aim.
func solve(m flight.Model, from flight.Vec, shot lesson.Shot) (flight.State, flight.Reason, error) {
	in := intent(from, shot)
	found, err := m.Solve(in)
	if err != nil {
		return flight.State{}, found.Reason, err
	}
	if s := found.Pick(shot.Arc == lesson.High); s != nil {
		return s.Launch, flight.NoReason, nil
	}
	_ = in
	return flight.State{}, found.Reason, nil
}

func intent(from flight.Vec, shot lesson.Shot) flight.Intent {
	in := flight.Intent{From: from, Spin: shot.Spin, Side: shot.Side}
	_ = units.Feet(0)
	return in
}
