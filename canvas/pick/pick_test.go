package pick

import (
	"image/color"
	"testing"

	"homeside/canvas"
	"homeside/model/court"
)

func scene() *canvas.Scene {
	ink := color.NRGBA{A: 255}
	g := canvas.Panel{Name: "court", View: canvas.View{Origin: canvas.Px{X: 100, Y: 100}, PxPerFoot: 10}}
	g.Add(
		canvas.Shape{ID: "disc", Layer: canvas.Players, Path: canvas.Circle(canvas.Pos{}, canvas.Ft(2)), Style: canvas.Style{Fill: ink}},
		canvas.Shape{ID: "run", Layer: canvas.Runs, Path: canvas.Polyline(court.Pt(-5, 0), court.Pt(5, 0)), Style: canvas.Style{Stroke: ink, Width: canvas.Pts(4)}},
	)
	return &canvas.Scene{Width: 200, Height: 200, PxPerPoint: 1, Panels: []canvas.Panel{g}}
}

func TestAt(t *testing.T) {
	for _, c := range []struct {
		at    canvas.Px
		reach float64
		want  string
	}{
		{canvas.Px{X: 100, Y: 100}, 0, "disc"}, {canvas.Px{X: 119, Y: 100}, 0, "disc"}, {canvas.Px{X: 125, Y: 101}, 0, "run"},
		{canvas.Px{X: 125, Y: 104}, 0, ""}, {canvas.Px{X: 125, Y: 104}, 3, "run"}, {canvas.Px{X: 100, Y: 121}, 0, ""}, {canvas.Px{X: 100, Y: 121}, 2, "disc"},
	} {
		got, ok := At(scene(), c.at, c.reach, func(string) bool { return true })
		if got != c.want || ok != (c.want != "") {
			t.Errorf("At(%v, reach %v) = %q, %v, want %q", c.at, c.reach, got, ok, c.want)
		}
	}
}

func TestAtAsksOnlyForWhatIsWanted(t *testing.T) {
	got, ok := At(scene(), canvas.Px{X: 100, Y: 100}, 0, func(id string) bool { return id == "run" })
	if !ok || got != "run" {
		t.Errorf("At(centre) among runs = %q, %v, want run", got, ok)
	}
}
