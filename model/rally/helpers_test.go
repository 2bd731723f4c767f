package rally

import (
	"math"
	"testing"

	"homeside/model/court"
	"homeside/model/flight"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

// vacuum is a world in which every flight is a parabola.
func vacuum() flight.Model {
	m := flight.Default()
	m.Ball.Drag, m.Ball.Lift = 0, 0
	return m
}

// teams are two pairs of invented people: the first of each right-handed, the
// second left-handed.
func teams() [2]lesson.Team {
	pair := [2]lesson.Player{{Name: "Rua"}, {Name: "Lev", Hand: lesson.LeftHanded}}
	return [2]lesson.Team{{Players: pair}, {Players: pair}}
}

// ordinary are the ordinary places at the serve of near1.
func ordinary() [4][]lesson.Keyframe {
	return [4][]lesson.Keyframe{
		{{Place: court.Pt(5, -23)}},
		{{Place: court.Pt(-5, -23)}},
		{{Place: court.Pt(-5, 24), Facing: 180}},
		{{Place: court.Pt(5, 7.5), Facing: 180}},
	}
}

// four are four shots that can all be done.
func four() []lesson.Shot {
	return []lesson.Shot{
		{By: game.Near1, Aim: court.Pt(-5, 18), Intent: lesson.Apex(8)},
		{By: game.Far1, Aim: court.Pt(4, -18), Intent: lesson.Apex(9), Meet: lesson.Meet{How: lesson.Falling, Height: 1.5}},
		{By: game.Near2, Aim: court.Pt(-3, 5), Intent: lesson.Apex(10), Meet: lesson.Meet{How: lesson.Rising, Height: 1}},
		{By: game.Far2, Aim: court.Pt(2, -6), Intent: lesson.Apex(6)},
	}
}

// play is a play of shots from the ordinary places.
func play(shots ...lesson.Shot) lesson.Play {
	return lesson.Play{Lead: lesson.DefaultLead, Shots: shots, Tracks: ordinary()}
}

func solveIn(t testing.TB, m flight.Model, p lesson.Play) *Rally {
	t.Helper()
	l := lesson.Lesson{Teams: teams(), Plays: []lesson.Play{p}}
	if bad := lesson.Validate(l); bad != nil {
		t.Fatalf("the test's own lesson: %v", bad)
	}
	r, err := SolveWith(l, 0, m)
	if err != nil {
		t.Fatalf("SolveWith: %v", err)
	}
	return r
}

func solved(t testing.TB, p lesson.Play) *Rally {
	t.Helper()
	return solveIn(t, flight.Default(), p)
}

func near(got, want, tolerance float64) bool { return math.Abs(got-want) <= tolerance }

func checkSeconds(t *testing.T, what string, got, want units.Seconds) {
	t.Helper()
	if !near(float64(got), float64(want), 1e-7) {
		t.Errorf("%s at %.9f s, want %.9f s", what, got, want)
	}
}

func checkPoint(t *testing.T, what string, got, want court.Point) {
	t.Helper()
	if !(got.Distance(want) <= 1e-5) { // flights land within 1e-6 m of their aim
		t.Errorf("%s at %v, want %v", what, got, want)
	}
}

func timeOf(t *testing.T, r *Rally, name string) units.Seconds {
	t.Helper()
	e, err := lesson.ParseEvent(name)
	if err != nil {
		t.Fatal(err)
	}
	at, ok := r.TimeOf(e)
	if !ok {
		t.Fatalf("the rally has no %s", name)
	}
	return at
}

func eventNamed(t *testing.T, r *Rally, name string) Event {
	t.Helper()
	for _, e := range r.Events {
		if e.Name.String() == name {
			return e
		}
	}
	t.Fatalf("the rally has no %s: %v", name, r.Events)
	return Event{}
}
