package flight

import (
	"math"

	"homeside/model/units"
)

// Launch is a solved shot.
type Launch struct {
	State State // off the paddle
	Path  *Path // flown over the net
}

// Up is the launch's angle above the horizon, -90 to 90.
func (l *Launch) Up() units.Degrees {
	v := l.State.Velocity
	return units.FromRadians(math.Atan2(v.Z, v.Level().Length()))
}

// Side is the launch's angle to the left of the straight line to the intent's aim,
// above -180 to 180.
func (l *Launch) Side(in Intent) units.Degrees {
	way, v := in.aim(), l.State.Velocity
	return units.FromRadians(math.Atan2(way.Cross(v).Z, dot(way, v.Level())))
}

// Toward is the unit vector that rises up above a level direction; straight up or
// down if the direction has no level part.
func Toward(level Vec, up units.Degrees) Vec {
	s, c := math.Sincos(up.Radians())
	if n := level.Level().Length(); n > 0 {
		out := level.Level().Times(c / n)
		out.Z = s
		return out
	}
	return Vec{Z: math.Copysign(1, s)}
}
