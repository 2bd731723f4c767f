package rally

import (
	"math"
	"testing"

	"homeside/model/flight"
	"homeside/model/lesson"
)

func TestModelOf(t *testing.T) {
	if got, want := ModelOf(lesson.Lesson{}), flight.Default(); got != want {
		t.Errorf("ModelOf(a plain lesson) = %v, want %v", got, want)
	}
	m := ModelOf(lesson.Lesson{Conditions: lesson.Conditions{
		Indoor: true, Altitude: 1609.344, WindX: 1, WindY: -2, Restitution: 0.66, Friction: 0.5, Lift: 0.1,
	}})
	// Density at 1609.344 m (a mile): ISO 2533:1975, 1.046619 kg/m3.
	if math.Abs(m.Air.Density-1.046619) > 1e-6 {
		t.Errorf("density at a mile = %v, want 1.046619", m.Air.Density)
	}
	if m.Ball.Drag != 0.45 || m.Ball.Lift != 0.1 || m.Surface.Restitution != 0.66 || m.Surface.Friction != 0.5 || m.Air.Wind != (flight.Vec{X: 1, Y: -2}) {
		t.Errorf("ModelOf = %+v, want the indoor ball and the lesson's own figures", m)
	}
	hot := 35.0
	if got := ModelOf(lesson.Lesson{Conditions: lesson.Conditions{Temperature: &hot}}).Air.Density; got >= flight.SeaLevel {
		t.Errorf("density on a hot day = %v, want below %v", got, flight.SeaLevel)
	}
}
