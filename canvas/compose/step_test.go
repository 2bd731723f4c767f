package compose

import (
	"math"
	"strings"
	"testing"

	"homeside/canvas"
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/units"
)

// stepLayout is the bare court at a scale, so that a point is one pixel.
func stepLayout() Layout { return Bare(360, 720, canvas.Upright, court.Surface, 1) }

// Only who runs has an arrow: it sets out where the player was and ends at the
// rim of the disc where the player is.
func TestStepShowsWhoHasRun(t *testing.T) {
	p := runPicture(t, 0, 2, nil, nil)
	l := stepLayout()
	shapes := shapesOf(p.Step(l, 0, 2))
	for _, id := range game.Players {
		_, ran := shapes["court/ran."+id.String()]
		_, length := Ran(p.Rally, id, 0, 2)
		if want := length >= shortRun; ran != want {
			t.Errorf("%v has run %v ft, arrow drawn: %v", id, length, ran)
		}
		if _, stands := shapes["court/"+PlayerShape(id)]; !stands {
			t.Errorf("%v is not drawn", id)
		}
	}
	way := shapes["court/ran.far2"].Path
	first, last := way[0].P[0], way[len(way)-1].P[0]
	if first.X != 5 || first.Y != 7.5 || last.Y != 7.5 {
		t.Errorf("the arrow goes from %v to %v, want it from (5, 7.5) along y = 7.5", first, last)
	}
	disc := units.Feet(11 / l.Court.PxPerFoot) // the outer ring of 11 points
	if gap := last.X - (-5); gap < disc || gap > disc+0.4 {
		t.Errorf("the arrow ends %.2f ft before the place, want it at the rim, %.2f ft", float64(gap), float64(disc))
	}
}

// Ten feet are ten feet, in whatever pieces they are run.
func TestRan(t *testing.T) {
	p := runPicture(t, 0, 2, nil, nil)
	sum := units.Feet(0)
	for _, span := range [][2]units.Seconds{{-1, 0.3}, {0.3, 1.1}, {1.1, 1.1}, {1.1, 3}} {
		_, part := Ran(p.Rally, game.Far2, span[0], span[1])
		sum += part
	}
	if math.Abs(float64(sum-10)) > 0.001 {
		t.Errorf("the parts of the run add up to %v ft, want 10", sum)
	}
}

// The ball's way and bounces are those of the stretch, none before the serve.
func TestStepBall(t *testing.T) {
	p := pictureOf(t, invented(), 0, canvas.Upright)
	bounce := p.Rally.Strokes[0].Planned.Duration
	for _, c := range []struct {
		from, to units.Seconds
		way      bool
		bounces  int
	}{{-1, 0, false, 0}, {0, bounce / 2, true, 0}, {0, bounce, true, 1}, {bounce, bounce + 0.1, true, 0}} {
		way, bounces := false, 0
		for id := range shapesOf(p.Step(stepLayout(), c.from, c.to)) {
			way = way || id == "court/ball.way"
			if strings.HasPrefix(id, "court/bounce.") {
				bounces++
			}
		}
		if way != c.way || bounces != c.bounces {
			t.Errorf("from %v to %v: way drawn %v, %d bounces, want %v, %d", c.from, c.to, way, bounces, c.way, c.bounces)
		}
	}
}

// A picture of places has one team.
func TestPlacesShowOneTeam(t *testing.T) {
	p := runPicture(t, 0, 2, nil, nil)
	shapes := shapesOf(p.Places(stepLayout(), court.Far, 0, 2))
	for _, id := range game.Players {
		if _, drawn := shapes["court/"+PlayerShape(id)]; drawn != (id.Team() == court.Far) {
			t.Errorf("%v is drawn: %v", id, drawn)
		}
	}
	if _, ok := shapes["court/ran.far2"]; !ok {
		t.Error("the run is not drawn")
	}
}

// A cone's triangle is about its place, and its number beside it on no other
// cone; teams differ by their ground.
func TestCones(t *testing.T) {
	p := pictureOf(t, invented(), 0, canvas.Upright)
	cones := []Cone{{1, court.Pt(0, -20), court.Near}, {2, court.Pt(0.7, -20), court.Near}, {3, court.Pt(0, -19.2), court.Near}, {4, court.Pt(3, 8), court.Far}}
	l := stepLayout()
	s := p.Cones(l, cones)
	shapes := shapesOf(s)
	for i, c := range cones {
		name := "court/cone." + string(rune('1'+i))
		for _, step := range shapes[name].Path {
			if step.Op != canvas.Close && (step.P[0].X != c.Place.X || step.P[0].Y != c.Place.Y) {
				t.Errorf("cone %d hangs on %v, want %v", c.Number, step.P[0], c.Place)
			}
		}
		text := shapes[name+".number"].Text
		at := l.Court.ToPx(c.Place)
		at.X, at.Y = at.X+float64(text.At.Right), at.Y+float64(text.At.Down-coneNumber*0.36)
		for _, o := range cones {
			far := l.Court.ToPx(o.Place)
			if d := math.Hypot(at.X-far.X, at.Y-far.Y); d < 7 {
				t.Errorf("number %d is %.1f points from cone %d", c.Number, d, o.Number)
			}
		}
	}
	if shapes["court/cone.1"].Style.Fill == shapes["court/cone.4"].Style.Fill {
		t.Error("the teams' cones look alike")
	}
	if _, player := shapes["court/"+PlayerShape(game.Near1)]; player {
		t.Error("a player stands among the cones")
	}
}
