package compose

import (
	"homeside/canvas"
	"homeside/canvas/look"
	"homeside/model/game"
	"homeside/model/rally"
	"homeside/model/units"
	"homeside/words"
)

// ghostApart is how far the plan has to be from the player to be drawn: less
// than half a step.
const ghostApart units.Feet = 1

// ghosts draws where the plan has those players who run late.
func (p Picture) ghosts(g *canvas.Panel, f rally.Frame) {
	for _, id := range game.Players {
		at := f.Players[id]
		if !late(p.Rally.Tracks[id], f.T) || at.Drawn.Place.Distance(at.Run.Place) < ghostApart {
			continue
		}
		name := PlayerShape(id) + ".ghost"
		ink := p.look().Teams[id.Team()].Run
		place := canvas.On(at.Drawn.Place)
		g.Add(
			canvas.Shape{
				ID: name, Layer: canvas.Players, Label: words.T("where the plan has %s", p.Rally.NameOf(id)),
				Path:  canvas.Circle(place, canvas.Pts(look.DiscRadius)),
				Style: canvas.Style{Stroke: ink, Width: canvas.Pts(look.Outline), Dash: []canvas.Points{3, 2}},
			},
			canvas.Shape{
				ID: name + ".lag", Layer: canvas.Runs, Path: canvas.Polyline(at.Run.Place, at.Drawn.Place),
				Style: canvas.Style{Stroke: ink, Width: canvas.Pts(look.Outline), Dash: []canvas.Points{2, 3}},
			},
		)
	}
}

// late says whether a player is on a run that gets there late, or has only just
// got there.
func late(t rally.Track, at units.Seconds) bool {
	for _, l := range t.Legs {
		if l.Late() > 0 && l.From <= at && at <= l.To {
			return true
		}
	}
	return false
}
