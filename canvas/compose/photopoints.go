package compose

import (
	"cmp"
	"strconv"

	"homeside/canvas"
	"homeside/canvas/look"
)

// PhotoPoint is a point of a photo that is dragged onto its point of the court.
type PhotoPoint struct {
	At     canvas.Px
	Fitted canvas.Px // where the map has that point of the court
	Fits   bool      // there is a map
	Chosen bool
	Name   string // beside it; empty for its number
}

// Sizes of a point's sign: a ring whose middle is free, so that the point shows.
const (
	pointRing   canvas.Points = 7
	pointCross  canvas.Points = 3
	pointNumber canvas.Points = 13
)

// Points adds the points to a scene, numbered from 1 or named, and how far each is off.
func (l PhotoLayout) Points(s *canvas.Scene, lk *look.Look, points []PhotoPoint) {
	g := canvas.Panel{Name: "points", View: paper(canvas.Px{})}
	pt := l.PxPerPoint
	place := func(px canvas.Px) canvas.Pos {
		return canvas.Pos{Right: canvas.Points(px.X / pt), Down: canvas.Points(px.Y / pt)}
	}
	for i, p := range points {
		at, name := place(p.At), "point."+strconv.Itoa(i+1)
		if p.Fits {
			g.Add(canvas.Shape{ID: name + ".off", Layer: canvas.Lines, Path: canvas.Path{}.Move(at).Line(place(p.Fitted)), Style: canvas.Style{Stroke: look.Rust, Width: canvas.Pts(2)}})
		}
		ring, wide := look.Yellow, canvas.Points(2)
		if p.Chosen {
			ring, wide = look.Rust, 3
		}
		circle := paperDisc(at, pointRing)
		cross := canvas.Path{}.Move(at.Shift(-pointCross, 0)).Line(at.Shift(pointCross, 0)).Move(at.Shift(0, -pointCross)).Line(at.Shift(0, pointCross))
		g.Add(
			canvas.Shape{ID: name + ".edge", Layer: canvas.Marks, Path: circle, Style: canvas.Style{Stroke: dark, Width: canvas.Pts(wide + 2)}},
			canvas.Shape{ID: name, Layer: canvas.Marks, Label: "point " + strconv.Itoa(i+1), Path: circle, Style: canvas.Style{Stroke: ring, Width: canvas.Pts(wide)}},
			canvas.Shape{ID: name + ".cross.edge", Layer: canvas.Marks, Path: cross, Style: canvas.Style{Stroke: dark, Width: canvas.Pts(2.4)}},
			canvas.Shape{ID: name + ".cross", Layer: canvas.Marks, Path: cross, Style: canvas.Style{Stroke: ring, Width: canvas.Pts(1)}},
		)
		Picture{Look: lk}.tag(&g, name+".number", at.Shift(pointNumber, -pointNumber), 0, cmp.Or(p.Name, strconv.Itoa(i+1)))
	}
	s.Panels = append(s.Panels, g)
}

// dark is the edge round bright marks on a photo, whatever the look.
var dark = look.Daylight.Ink
