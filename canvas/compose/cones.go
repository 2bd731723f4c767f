package compose

import (
	"fmt"
	"math"
	"strconv"

	"homeside/canvas"
	"homeside/canvas/look"
	"homeside/model/court"
	"homeside/words"
)

// Cone is a numbered place to put a cone.
type Cone struct {
	Number int
	Place  court.Point
	Team   court.End
}

// Cones in points: an open triangle is the cone sign of federations' coaching
// manuals.
const (
	coneHalf   canvas.Points = 4.5
	coneNumber canvas.Points = 8
	coneAway                 = 10.5 // from a cone to the middle of its number
)

// Cones is the court with cones on it, without players and ball. The middle of a
// triangle is its place; the far team's are filled with its colour, so that the
// two are told apart in grey as well. Numbers stand where they hide least.
func (p Picture) Cones(l Layout, cones []Cone) *canvas.Scene {
	s := newScene(l)
	g := canvas.Panel{Name: CourtPanel, View: l.Court}
	p.court(&g)
	taken := make([]canvas.Px, 0, 2*len(cones))
	for _, c := range cones {
		taken = append(taken, l.Court.ToPx(c.Place))
	}
	for _, c := range cones {
		p.cone(&g, c)
		away := freest(l.Court.ToPx(c.Place), coneAway*l.PxPerPoint, taken)
		taken = append(taken, away)
		at := l.Court.ToPx(c.Place)
		p.coneNumber(&g, c, canvas.Points((away.X-at.X)/l.PxPerPoint), canvas.Points((away.Y-at.Y)/l.PxPerPoint))
	}
	s.Panels = append(s.Panels, g)
	return s
}

func (p Picture) cone(g *canvas.Panel, c Cone) {
	lk := p.look()
	const h = coneHalf
	at := canvas.On(c.Place)
	fill := lk.Plate
	if c.Team == court.Far {
		fill = lk.Teams[court.Far].Disc
	}
	g.Add(canvas.Shape{
		ID: fmt.Sprintf("cone.%d", c.Number), Layer: canvas.Marks, Label: words.T("cone %d", c.Number),
		Path:  canvas.Path{}.Move(at.Shift(0, -h)).Line(at.Shift(h, h)).Line(at.Shift(-h, h)).Close(),
		Style: canvas.Style{Fill: fill, Stroke: lk.Ink, Width: canvas.Pts(look.Outline), Round: true},
	})
}

func (p Picture) coneNumber(g *canvas.Panel, c Cone, right, down canvas.Points) {
	g.Add(canvas.Shape{
		ID: fmt.Sprintf("cone.%d.number", c.Number), Layer: canvas.Labels,
		Text: &canvas.Text{At: canvas.On(c.Place).Shift(right, down+coneNumber*0.36), Text: strconv.Itoa(c.Number), Size: coneNumber, Bold: true, Colour: p.look().Ink},
	})
}

// freest is the place at a distance from another, of twelve round it, that is
// farthest from all taken ones.
func freest(from canvas.Px, away float64, taken []canvas.Px) canvas.Px {
	best, most := from, -1.0
	for i := range 12 {
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / 12)
		at := canvas.Px{X: from.X + away*cos, Y: from.Y + away*sin}
		free := math.Inf(1)
		for _, t := range taken {
			if t != from {
				free = min(free, math.Hypot(at.X-t.X, at.Y-t.Y))
			}
		}
		if free > most+1e-9 { // of two alike the first
			best, most = at, free
		}
	}
	return best
}
