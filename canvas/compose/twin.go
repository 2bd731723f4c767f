package compose

import (
	"homeside/canvas"
	"homeside/canvas/look"
	"homeside/model/game"
	"homeside/model/rally"
	"homeside/model/units"
	"homeside/words"
)

// twinApart is how far a player of the play beside has to be from the same
// player of the play shown to be drawn: less than the discs cover each other.
const twinApart units.Feet = 0.5

// twin draws the play beside on the same clock: a hollow disc with a dashed
// outline and the initials where a player of it stands elsewhere, and its ball,
// hollow too, where that is elsewhere. After its end it stays as it ended.
func (p Picture) twin(g *canvas.Panel, f rally.Frame) {
	if p.Twin == nil {
		return
	}
	other := p.Twin.At(f.T)
	for _, id := range game.Players {
		if at := other.Players[id].Run; at.Place.Distance(f.Players[id].Run.Place) > twinApart {
			p.twinPlayer(g, id, at)
		}
	}
	p.twinBall(g, f, other)
}

func (p Picture) twinPlayer(g *canvas.Panel, id game.Player, at rally.Pose) {
	ink := p.look().Teams[id.Team()].Run
	place, who := canvas.On(at.Place), p.Twin.Player(id)
	line := canvas.Style{Stroke: ink, Width: canvas.Pts(look.Outline), Dash: []canvas.Points{3, 2}}
	name := "twin." + id.String()
	if p.look().Teams[id.Team()].Ring {
		g.Add(canvas.Shape{ID: name + ".ring", Layer: canvas.Runs, Path: canvas.Circle(place, canvas.Pts(look.RingRadius+1)), Style: line})
	}
	line.Fill = p.look().Plate
	g.Add(
		canvas.Shape{ID: name + ".notch", Layer: canvas.Runs, Path: notch(place, at.Facing), Style: canvas.Style{Stroke: ink, Width: canvas.Pts(1)}},
		canvas.Shape{
			ID: name, Layer: canvas.Runs, Label: words.T("%s in the play beside", who.Name),
			Path: canvas.Circle(place, canvas.Pts(look.DiscRadius)), Style: line,
		},
		canvas.Shape{ID: name + ".initials", Layer: canvas.Runs, Text: letters(place, who.Letters(), ink)},
	)
}

// twinBall draws the other ball where it does not hide behind the one shown.
func (p Picture) twinBall(g *canvas.Panel, f, other rally.Frame) {
	if other.Ball.Ground().Distance(f.Ball.Ground()) <= twinApart {
		return
	}
	g.Add(canvas.Shape{
		ID: "twin.ball", Layer: canvas.Runs, Label: words.T("the ball of the play beside"),
		Path:  canvas.Circle(canvas.On(other.Ball.Ground()), canvas.Pts(look.BallRadius)),
		Style: canvas.Style{Stroke: p.look().Ink, Width: canvas.Pts(1), Dash: []canvas.Points{1.5, 1.5}},
	})
}
