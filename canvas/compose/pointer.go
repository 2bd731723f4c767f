package compose

import (
	"homeside/canvas"
	"homeside/model/game"
	"homeside/model/units"
	"homeside/words"
)

// pointRadius is the radius of the ring round a player who is pointed out, clear
// of disc, paddle and notch.
const pointRadius canvas.Points = 19

// PointOut adds a dashed ring round a player to a scene of a moment.
func (p Picture) PointOut(s *canvas.Scene, id game.Player, t units.Seconds) {
	onCourt(s, func(g *canvas.Panel) {
		g.Add(canvas.Shape{
			ID: PlayerShape(id) + ".pointed", Layer: canvas.Marks, Label: words.T("this concerns %s", p.Rally.NameOf(id)),
			Path:  canvas.Circle(canvas.On(p.Rally.At(t).Players[id].Run.Place), canvas.Pts(pointRadius)),
			Style: canvas.Style{Stroke: p.look().Head, Width: canvas.Pts(2.2), Dash: []canvas.Points{5, 3}},
		})
	})
}
