package present

import (
	"math"
	"strconv"

	"homeside/canvas"
	"homeside/canvas/look"
)

// stroke is a line drawn by hand, in shares of the stage's width and height, so
// that it stays where it is when the stage changes its size.
type stroke []canvas.Px

// strokeWide is the width of a stroke and of the light edge beside it.
const (
	strokeWide canvas.Points = 2.6
	strokeEdge canvas.Points = 0.9
)

// long says whether the hand has moved so far that a line was meant: more than a
// click's tremble.
func (s stroke) long(width, height, least float64) bool {
	for _, p := range s {
		if math.Hypot((p.X-s[0].X)*width, (p.Y-s[0].Y)*height) > least {
			return true
		}
	}
	return false
}

// drawn adds strokes to a scene.
func drawn(s *canvas.Scene, lk *look.Look, all []stroke) {
	g := canvas.Panel{Name: "strokes", View: canvas.View{PxPerFoot: 1}}
	for i, line := range all {
		var path canvas.Path
		for k, p := range line {
			at := canvas.Pos{Right: canvas.Points(p.X * float64(s.Width) / s.PxPerPoint), Down: canvas.Points(p.Y * float64(s.Height) / s.PxPerPoint)}
			if k == 0 {
				path = path.Move(at)
			} else {
				path = path.Line(at)
			}
		}
		id := "stroke." + strconv.Itoa(i+1)
		g.Add(
			canvas.Shape{ID: id + ".edge", Layer: canvas.Marks, Path: path, Style: canvas.Style{Stroke: lk.Plate, Width: canvas.Pts(strokeWide + 2*strokeEdge), Round: true}},
			canvas.Shape{ID: id, Label: "drawn by hand", Layer: canvas.Marks, Path: path, Style: canvas.Style{Stroke: look.Rust, Width: canvas.Pts(strokeWide), Round: true}},
		)
	}
	s.Panels = append(s.Panels, g)
}
