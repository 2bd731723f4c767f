package canvas

import (
	"math"

	"homeside/model/court"
	"homeside/model/units"
)

// Points is a length on the paper: a 360th of a picture's shorter side, as wide
// as a point on a phone. Sizes that must stay readable are in points.
type Points float64

// Length is the sum of a length to scale and one on the paper.
type Length struct {
	Feet   units.Feet
	Points Points
}

// Ft is a length to scale.
func Ft(f units.Feet) Length { return Length{Feet: f} }

// Pts is a length on the paper.
func Pts(p Points) Length { return Length{Points: p} }

// Pos is a place on a panel: feet on its axes and above the ground, moved by
// points along the same axes (U to the right, V forward), so that it turns with
// the view, and then by points on the paper (Right, Down), whatever the view.
// From straight above its height does not show.
type Pos struct {
	X, Y, Z     units.Feet
	U, V        Points
	Right, Down Points
}

// On is the place of a point of the court.
func On(p court.Point) Pos { return Pos{X: p.X, Y: p.Y} }

// At is the place of a point above the court.
func At(v Vec) Pos { return Pos{X: v.X, Y: v.Y, Z: v.Z} }

// Along is pos moved in a direction of the court by a length.
func (pos Pos) Along(dir court.Point, l Length) Pos {
	pos.X += dir.X * l.Feet
	pos.Y += dir.Y * l.Feet
	pos.U += Points(dir.X) * l.Points
	pos.V += Points(dir.Y) * l.Points
	return pos
}

// Shift is pos moved on the paper.
func (pos Pos) Shift(right, down Points) Pos {
	pos.Right += right
	pos.Down += down
	return pos
}

// Op is what a step of a path does.
type Op uint8

// The steps. Curve is a cubic Bézier.
const (
	Move Op = iota
	Line
	Curve
	Close
)

// Step is one step of a path; Line and Move use the first place only.
type Step struct {
	Op Op
	P  [3]Pos
}

// Path is an outline made of steps.
type Path []Step

// Move starts a new outline at p.
func (q Path) Move(p Pos) Path { return append(q, Step{Move, [3]Pos{p}}) }

// Line goes straight to p.
func (q Path) Line(p Pos) Path { return append(q, Step{Line, [3]Pos{p}}) }

// Curve goes to c along a cubic Bézier with the handles a and b.
func (q Path) Curve(a, b, c Pos) Path { return append(q, Step{Curve, [3]Pos{a, b, c}}) }

// Close goes back to the start of the outline.
func (q Path) Close() Path { return append(q, Step{Op: Close}) }

// Polyline is the open path through the points.
func Polyline(points ...court.Point) Path {
	q := make(Path, 0, len(points))
	for i, p := range points {
		if i == 0 {
			q = q.Move(On(p))
		} else {
			q = q.Line(On(p))
		}
	}
	return q
}

// Box is the closed path round a rectangle.
func Box(r court.Rect) Path {
	return Polyline(r.Min, court.Pt(r.Max.X, r.Min.Y), r.Max, court.Pt(r.Min.X, r.Max.Y)).Close()
}

// circleHandle is the length of the Bézier handles that draw a quarter circle
// of radius 1 with an error below 0.03 %: 4/3 (sqrt 2 - 1).
var circleHandle = 4.0 / 3 * (math.Sqrt2 - 1)

// Circle is the closed path round a centre.
func Circle(centre Pos, radius Length) Path {
	at := func(x, y float64) Pos { return centre.Along(court.Pt(units.Feet(x), units.Feet(y)), radius) }
	k := circleHandle
	return make(Path, 0, 6).Move(at(1, 0)).
		Curve(at(1, k), at(k, 1), at(0, 1)).
		Curve(at(-k, 1), at(-1, k), at(-1, 0)).
		Curve(at(-1, -k), at(-k, -1), at(0, -1)).
		Curve(at(k, -1), at(1, -k), at(1, 0)).Close()
}
