package compose

import (
	"homeside/canvas"
	"homeside/canvas/look"
	"homeside/model/court"
	"homeside/model/game"
	"homeside/words"
)

// Measure adds to a scene how far a player at a place is from the nearest lines:
// a thin line along the court and one across it, each with feet and inches.
func (p Picture) Measure(s *canvas.Scene, id game.Player, at court.Point) {
	for i := range s.Panels {
		if s.Panels[i].Name == CourtPanel {
			p.measure(&s.Panels[i], id, at)
		}
	}
}

func (p Picture) measure(g *canvas.Panel, id game.Player, at court.Point) {
	e := id.Team()
	across, along := court.NearestAcross(e, at), court.NearestAlong(e, at)
	p.measureLine(g, "measure.across", at, court.Pt(at.X, onLine(e, across)), words.Length(across.Distance))
	p.measureLine(g, "measure.along", at, court.Pt(besideLine(e, at, along), at.Y), words.Length(along.Distance))
}

// onLine is the y of a line that runs across the court.
func onLine(e court.End, o court.Offset) feet {
	if o.Line == court.BaselineName {
		return court.Baseline * e.Sign()
	}
	return court.Kitchen * e.Sign()
}

// besideLine is the x of a line that runs along the court, as seen from at.
func besideLine(e court.End, at court.Point, o court.Offset) feet {
	if o.Line == court.CentrelineName {
		return 0
	}
	return court.HalfWidth * court.SideX(e, court.SideOf(e, at))
}

func (p Picture) measureLine(g *canvas.Panel, name string, from, to court.Point, text string) {
	lk := p.look()
	g.Add(canvas.Shape{
		ID: name, Layer: canvas.Shadows, Label: text, Path: canvas.Polyline(from, to),
		Style: canvas.Style{Stroke: lk.Ink, Width: canvas.Pts(look.Outline), Dash: []canvas.Points{4, 3}},
	})
	p.tag(g, name+".text", besideMeasure(from, to), 0, text)
}

// A measure's figure stands in the middle of a long line; of a short one it
// would cover the player, so it stands on the player's other side.
const (
	longMeasure feet          = 8
	measureAway canvas.Points = 34
)

func besideMeasure(from, to court.Point) canvas.Pos {
	away, ok := from.Sub(to).Unit()
	if !ok || from.Distance(to) >= longMeasure {
		return canvas.On(from.Toward(to, 0.5))
	}
	return canvas.On(from).Along(away, canvas.Pts(measureAway))
}
