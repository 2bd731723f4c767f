package record

import (
	"image/color"
	"testing"

	"homeside/canvas"
	"homeside/model/court"
)

var ink = color.NRGBA{0x16, 0x23, 0x2A, 0xFF}

func scene(shapes ...canvas.Shape) *canvas.Scene {
	return &canvas.Scene{Width: 100, Height: 100, PxPerPoint: 2, Panels: []canvas.Panel{
		{Name: "court", View: canvas.View{Origin: canvas.Px{X: 50, Y: 50}, PxPerFoot: 10}, Shapes: shapes},
	}}
}

func TestScene(t *testing.T) {
	for _, c := range []struct {
		shape canvas.Shape
		want  string
	}{
		{canvas.Shape{ID: "box", Path: canvas.Box(court.RectOf(court.Pt(0, 0), court.Pt(1, 2))), Style: canvas.Style{Fill: ink}},
			"court box fill #16232a M 50.0,50.0 L 60.0,50.0 L 60.0,30.0 L 50.0,30.0 Z\n"},
		{canvas.Shape{ID: "run", Path: canvas.Polyline(court.Pt(0, 0), court.Pt(1, 0)), Style: canvas.Style{Stroke: ink, Width: canvas.Pts(1.5), Dash: []canvas.Points{1, 2}}},
			"court run stroke #16232a 3.0 dash 2.0 dash 4.0 M 50.0,50.0 L 60.0,50.0\n"},
		{canvas.Shape{ID: "bend", Path: canvas.Path{}.Move(canvas.Pos{}).Curve(canvas.Pos{X: 1}, canvas.Pos{X: 2}, canvas.Pos{X: 3, V: 1}), Style: canvas.Style{Fill: color.NRGBA{1, 2, 3, 0x80}}},
			"court bend fill #01020380 M 50.0,50.0 C 60.0,50.0 70.0,50.0 80.0,48.0\n"},
		{canvas.Shape{ID: "nothing", Path: canvas.Polyline(court.Pt(0, 0))},
			"court nothing M 50.0,50.0\n"},
		{canvas.Shape{ID: "name", Text: &canvas.Text{At: canvas.On(court.Pt(1, 1)).Shift(1, 0), Text: "a \"b\"\n", Size: 9, Colour: ink}},
			"court name text 62.0,40.0 size 18.0 \"a \\\"b\\\"\\n\" #16232a\n"},
	} {
		if got := Scene(scene(c.shape)); got != c.want {
			t.Errorf("Scene with %s:\n got %q\nwant %q", c.shape.ID, got, c.want)
		}
	}
}

func TestRecorderAddsUp(t *testing.T) {
	var r Recorder
	one := scene(canvas.Shape{ID: "dot", Path: canvas.Polyline(court.Pt(0, 0))})
	canvas.Draw(&r, one)
	canvas.Draw(&r, one)
	if got, want := r.String(), Scene(one)+Scene(one); got != want {
		t.Errorf("two scenes on one recorder: got %q, want %q", got, want)
	}
}
