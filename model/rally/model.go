package rally

import (
	"homeside/model/flight"
	"homeside/model/lesson"
)

// ModelOf is the ball, air and court that a lesson is played with.
func ModelOf(l lesson.Lesson) flight.Model {
	c := l.Conditions
	m := flight.Default()
	if c.Indoor {
		m.Ball = flight.Indoor
	}
	switch {
	case c.Temperature != nil:
		m.Air = flight.AltitudeAt(c.Altitude, *c.Temperature)
	case c.Altitude != 0:
		m.Air = flight.Altitude(c.Altitude)
	}
	m.Air.Wind = flight.Vec{X: float64(c.WindX), Y: float64(c.WindY)}
	m.Ball.Lift = orDefault(c.Lift, m.Ball.Lift)
	m.Surface.Restitution = orDefault(c.Restitution, m.Surface.Restitution)
	m.Surface.Friction = orDefault(c.Friction, m.Surface.Friction)
	return m
}

// orDefault is v, or its default where v is 0.
func orDefault(v, def float64) float64 {
	if v == 0 {
		return def
	}
	return v
}
