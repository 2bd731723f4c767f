package cover

import (
	"testing"

	"homeside/model/court"
	"homeside/model/flight"
	"homeside/model/lesson"
	"homeside/model/movement"
	"homeside/model/units"
	"pgregory.net/rapid"
)

// setPair is a drive from the far baseline at a pair set behind its kitchen line.
func setPair() Strike {
	s := Strike{From: court.Pt(3, 23), Height: 0.8, Model: flight.Default(), Shot: Shot{Drive: 15}}
	s.Players = [2]Player{
		{Place: court.Pt(-5, -8), Pace: movement.DefaultPace()},
		{Place: court.Pt(5, -8), Pace: movement.DefaultPace(), Hand: lesson.LeftHanded},
	}
	return s
}

func mustOf(t testing.TB, s Strike) Map {
	t.Helper()
	m, err := Of(s)
	if err != nil {
		t.Fatalf("Of(%+v): %v", s, err)
	}
	return m
}

// uniform is a map whose cells have the margins of f for both players, by the
// cell's column and row.
func uniform(f func(column, row int) units.Seconds) Map {
	m := Map{cells: make([]cell, Cells)}
	for i := range m.cells {
		v := f(i%Columns, i/Columns)
		m.cells[i].margin = [2]units.Seconds{v, v}
	}
	return m
}

func drawFloat(t *rapid.T, lo, hi float64, label string) float64 {
	return rapid.Float64Range(lo, hi).Draw(t, label)
}

func drawPoint(t *rapid.T, lo, hi court.Point, label string) court.Point {
	return court.Pt(units.Feet(drawFloat(t, float64(lo.X), float64(hi.X), label+" x")), units.Feet(drawFloat(t, float64(lo.Y), float64(hi.Y), label+" y")))
}

func drawPlayer(t *rapid.T, label string) Player {
	pace := rapid.SampledFrom(movement.Presets).Draw(t, label+" pace").Pace
	pace.TopSpeed = units.MetresPerSecond(drawFloat(t, 0.5, 9, label+" top"))
	return Player{
		Place:  drawPoint(t, court.Pt(-13, -27), court.Pt(13, -2), label),
		Facing: units.Degrees(drawFloat(t, -60, 60, label+" facing")),
		Hand:   rapid.SampledFrom([]lesson.Hand{lesson.RightHanded, lesson.LeftHanded}).Draw(t, label+" hand"),
		Pace:   pace,
	}
}

// drawStrike is a strike at the near team.
func drawStrike(t *rapid.T) Strike {
	s := Strike{
		From: drawPoint(t, court.Pt(-13, 2), court.Pt(13, 27), "contact"), Height: units.Metres(drawFloat(t, 0.1, 2.5, "height")),
		Model: flight.Default(), Players: [2]Player{drawPlayer(t, "first"), drawPlayer(t, "second")},
	}
	if rapid.Bool().Draw(t, "lob") {
		s.Shot.Lob = units.Feet(drawFloat(t, 9, 30, "apex"))
	} else {
		s.Shot.Drive = units.MetresPerSecond(drawFloat(t, 5, 30, "drive"))
	}
	s.Model.Ball.Drag = drawFloat(t, 0, 0.6, "drag")
	return s
}
