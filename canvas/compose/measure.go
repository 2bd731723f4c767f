package compose

import (
	"homeside/canvas"
	"homeside/canvas/look"
	"homeside/model/court"
	"homeside/words"
)

// MeasureAt adds to a scene how far a place is from the nearest lines of a
// team's half: a thin line along the court and one across it, and beside the
// place how long they are and which lines they go to.
func (p Picture) MeasureAt(s *canvas.Scene, e court.End, at court.Point) {
	onCourt(s, func(g *canvas.Panel) {
		across, along := court.NearestAcross(e, at), court.NearestAlong(e, at)
		p.measureLine(g, "measure.across", at, court.Pt(at.X, onLine(e, across)), words.Across(e, at))
		p.measureLine(g, "measure.along", at, court.Pt(besideLine(e, at, along), at.Y), words.Along(e, at))
		for row, text := range []string{words.Across(e, at), words.Along(e, at)} {
			p.tag(g, [...]string{"measure.across", "measure.along"}[row]+".text", readOut(s, g.View, at, row, text), 0, text)
		}
	})
}

// A read-out stands clear of a player's disc, one line over the other.
const (
	readAway canvas.Points = 46
	readLead canvas.Points = look.LabelSize + 7
	readRoom canvas.Points = 6 // to the picture's edge
)

// readOut is where a line of a read-out about a place stands: above it or, near
// the top of the picture, below, and within its sides.
func readOut(s *canvas.Scene, v canvas.View, at court.Point, row int, text string) canvas.Pos {
	px := v.ToPx(at)
	x, y := canvas.Points(px.X/s.PxPerPoint), canvas.Points(px.Y/s.PxPerPoint)
	down := -readAway + readLead*canvas.Points(row)
	if y < readAway+readLead {
		down = readAway - readLead + readLead*canvas.Points(row)
	}
	w, _ := tagSize(text)
	room := w/2 + readRoom
	right := max(room-x, 0) + min(canvas.Points(float64(s.Width)/s.PxPerPoint)-room-x, 0)
	return canvas.On(at).Shift(right, down)
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
}
