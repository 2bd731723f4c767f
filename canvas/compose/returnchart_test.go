package compose

import (
	"math"
	"strings"
	"testing"

	"homeside/canvas"
	"homeside/canvas/record"
	"homeside/model/advice"
	"homeside/model/flight"
	"homeside/model/rally"
	"homeside/model/units"
)

// ramp is a chart whose margin is a tenth of a second for every foot above 8,
// deep or short; returns below 5 ft cannot be hit.
func ramp() advice.Chart {
	c := advice.Chart{Depths: []units.Feet{0, 5, 10}}
	for apex := units.Feet(4); apex <= 14; apex++ {
		c.Apexes = append(c.Apexes, apex)
	}
	for range c.Depths {
		margin, why := make([]units.Seconds, len(c.Apexes)), make([]flight.Reason, len(c.Apexes))
		for j, apex := range c.Apexes {
			margin[j] = units.Seconds(apex-8) / 10
			if apex < 5 {
				why[j] = flight.IntoNet
			}
		}
		c.Margin, c.Reason = append(c.Margin, margin), append(c.Reason, why)
	}
	return c
}

func sized(c ReturnChart) ReturnChart {
	c.Width, c.Height, c.PxPerPoint = 500, 380, 2
	return c
}

// shape is a shape of a scene of one panel.
func shape(t *testing.T, s *canvas.Scene, id string) canvas.Shape {
	t.Helper()
	for _, sh := range s.Panels[0].Shapes {
		if sh.ID == id {
			return sh
		}
	}
	t.Fatalf("no shape %q", id)
	return canvas.Shape{}
}

func TestMarginsOf(t *testing.T) {
	c := sized(MarginsOf(ramp(), 5, 9))
	s := c.Scene()
	for _, step := range shape(t, s, "set").Path {
		if want := c.at(8, 0).Right; math.Abs(float64(step.P[0].Right-want)) > 1e-9 {
			t.Errorf("the line of just set passes at %v pt, want %v, the place of 8 ft", step.P[0].Right, want)
		}
	}
	if got, want := shape(t, s, "level.0.50").Path[0].P[0].Right, c.at(13, 0).Right; math.Abs(float64(got-want)) > 1e-9 {
		t.Errorf("half a second to spare at %v pt, want %v, the place of 13 ft", got, want)
	}
	if got := record.Scene(s); !strings.Contains(got, `"+0.50 s"`) || !strings.Contains(got, `"-0.25 s"`) {
		t.Errorf("margins are not written with their signs:\n%s", got)
	}
	if got, want := c.at(9, 5), shape(t, s, "own"); want.Path[0].P[0].Down != got.Down {
		t.Errorf("the play's return stands at %v, want %v down", want.Path[0].P[0], got.Down)
	}
}

// A line stops where there is no such return, and one that nothing passes is not drawn.
func TestReturnChartKeepsToWhatCanBeHit(t *testing.T) {
	c := sized(MarginsOf(ramp(), 5, 30))
	if path, _ := c.level(-0.35); path != nil { // at 4.5 ft, between a return that cannot be hit and one that can
		t.Errorf("level(-0.35) = %v, want none", path)
	}
	if path, _ := c.level(9); path != nil {
		t.Errorf("level(9) = %v, want none", path)
	}
	for _, sh := range c.Scene().Panels[0].Shapes {
		if sh.ID == "own" {
			t.Error("a return beyond the chart is marked on it")
		}
	}
}

func TestTimesOf(t *testing.T) {
	b := []flight.Bought{{Line: 2}, {Line: 2.5}, {Line: 3}}
	tb := rally.TimeBought{Depths: []units.Feet{0, 10}, Apexes: []units.Feet{4, 8, 12}, Bought: [][]flight.Bought{b, b}, Depth: 5, Apex: 6}
	c := sized(TimesOf(tb, 2.25))
	if got, want := shape(t, c.Scene(), "set").Path[0].P[0].Right, c.at(6, 0).Right; math.Abs(float64(got-want)) > 1e-9 {
		t.Errorf("just set with 2.25 s at %v pt, want %v, the place of 6 ft", got, want)
	}
	for _, sh := range sized(TimesOf(tb, 0)).Scene().Panels[0].Shapes {
		if sh.ID == "set" {
			t.Error("with nobody to advise a line of just set is drawn")
		}
	}
}
