package compose

import (
	"strconv"

	"homeside/canvas"
	"homeside/canvas/look"
	"homeside/model/court"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/words"
)

// marks draws the live marks. Among figures that stand, what lies on the ground lies
// under them.
func (p Picture) marks(g *canvas.Panel, f rally.Frame, figures bool) {
	for _, i := range f.Marks {
		m := p.Rally.Play.Marks[i]
		name := "mark." + strconv.Itoa(i)
		p.mark(g, name, m, figures)
		if text := markText(m); text != "" {
			p.tag(g, name+".text", canvas.On(middleOf(m)), tagBelow(m.Kind), text)
		}
	}
}

// mark draws a mark's sign. A text has none but its tag.
func (p Picture) mark(g *canvas.Panel, name string, m lesson.Mark, figures bool) {
	ink := canvas.Style{Stroke: p.look().Ink, Width: canvas.Pts(look.RunWidth)}
	layer := canvas.Marks
	if m.Kind == lesson.ZoneMark || m.Kind == lesson.HighlightMark {
		layer = canvas.Lines // under players and ball
	} else if figures && (m.Kind == lesson.ArrowMark || m.Kind == lesson.MeasureMark) {
		layer = canvas.Runs
	}
	add := func(label string, path canvas.Path, s canvas.Style) {
		g.Add(canvas.Shape{ID: name, Layer: layer, Label: labelled(label, m.Text), Path: path, Style: s})
	}
	switch m.Kind {
	case lesson.ObstacleMark:
		g.Add(p.obstacle(name, m))
	case lesson.ArrowMark:
		way := court.StraightCurve(m.Place, m.Tip)
		add("arrow", wayPath(way), ink)
		g.Add(canvas.Shape{ID: name + ".head", Layer: layer, Path: arrowHead(way, look.ArrowHead), Style: canvas.Style{Fill: ink.Stroke}})
	case lesson.ZoneMark:
		add("zone", canvas.Box(court.RectOf(m.Place, m.Tip)), canvas.Style{Fill: pale(look.Green, 0x38), Stroke: p.look().Zone, Width: canvas.Pts(look.Outline), Dash: []canvas.Points{6, 3}})
	case lesson.ConeMark:
		add("cone", cone(canvas.On(m.Place)), canvas.Style{Fill: look.Rust, Stroke: p.look().Ink, Width: canvas.Pts(look.Outline)})
	case lesson.MeasureMark:
		add("measure", measurePath(m), canvas.Style{Stroke: p.look().Ink, Width: canvas.Pts(look.Outline)})
	case lesson.HighlightMark:
		add("highlight", canvas.Circle(canvas.On(m.Place), canvas.Ft(m.Place.Distance(m.Tip))), canvas.Style{Fill: pale(look.Yellow, 0x60), Stroke: p.look().Spot, Width: canvas.Pts(2)})
	}
}

// labelled is what a mark is to one who cannot see it.
func labelled(kind, text string) string {
	if text == "" {
		return kind
	}
	return kind + ": " + text
}

func pale(c colour, alpha uint8) colour {
	c.A = alpha
	return c
}

// markText is what a mark's tag says: a measure its length first.
func markText(m lesson.Mark) string {
	if m.Kind != lesson.MeasureMark {
		return m.Text
	}
	long := words.Length(m.Place.Distance(m.Tip))
	if m.Text != "" {
		return long + " " + m.Text
	}
	return long
}

// middleOf is where a mark's tag stands.
func middleOf(m lesson.Mark) court.Point {
	switch m.Kind {
	case lesson.ArrowMark, lesson.ZoneMark, lesson.MeasureMark:
		return m.Place.Toward(m.Tip, 0.5)
	}
	return m.Place
}

// cone is a training cone from the side: a triangle on a foot.
func cone(at canvas.Pos) canvas.Path {
	return canvas.Path{}.Move(at.Shift(0, -9)).Line(at.Shift(4.5, 3)).Line(at.Shift(7, 3)).Line(at.Shift(7, 6)).
		Line(at.Shift(-7, 6)).Line(at.Shift(-7, 3)).Line(at.Shift(-4.5, 3)).Close()
}

// measureEnd is half the stroke across each end of a measure.
const measureEnd canvas.Points = 5

// measurePath is a line with a stroke across each end.
func measurePath(m lesson.Mark) canvas.Path {
	path := canvas.Polyline(m.Place, m.Tip)
	dir, ok := m.Tip.Sub(m.Place).Unit()
	if !ok {
		return path
	}
	side := court.Pt(dir.Y, -dir.X)
	for _, end := range []court.Point{m.Place, m.Tip} {
		path = path.Move(canvas.On(end).Along(side, canvas.Pts(measureEnd))).Line(canvas.On(end).Along(side, canvas.Pts(-measureEnd)))
	}
	return path
}

// obstacleHalf is half the side of the sign of an obstacle, in points.
const obstacleHalf canvas.Points = 6

// obstacle is a crossed square where something stands in the way.
func (p Picture) obstacle(name string, m lesson.Mark) canvas.Shape {
	const h = obstacleHalf
	at := canvas.On(m.Place)
	path := boxAbout(at, -h, -h, h, h).
		Move(at.Shift(-h, -h)).Line(at.Shift(h, h)).
		Move(at.Shift(-h, h)).Line(at.Shift(h, -h))
	return canvas.Shape{ID: name, Layer: canvas.Marks, Label: labelled("obstacle", m.Text), Path: path, Style: canvas.Style{Fill: p.look().Plate, Stroke: p.look().Ink, Width: canvas.Pts(look.Outline)}}
}

// tagBelow is how far below its place a mark's text stands, clear of its sign.
func tagBelow(k lesson.MarkKind) canvas.Points {
	switch k {
	case lesson.ObstacleMark, lesson.ConeMark:
		return tagDown
	}
	return 0
}
