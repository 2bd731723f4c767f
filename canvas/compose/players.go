package compose

import (
	"fmt"
	"strings"

	"homeside/canvas"
	"homeside/canvas/look"
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/rally"
	"homeside/model/units"
)

// playerPrefix begins the IDs of a player's shapes.
const playerPrefix = "player."

// PlayerShape is the ID of a player's disc.
func PlayerShape(id game.Player) string { return playerPrefix + id.String() }

// PlayerOfShape is the player whose disc has this ID.
func PlayerOfShape(shape string) (game.Player, bool) {
	name, ok := strings.CutPrefix(shape, playerPrefix)
	if !ok {
		return 0, false
	}
	id, err := game.ParsePlayer(name)
	return id, err == nil
}

// players draws the four players: disc with initials, notch for the facing,
// bar on the paddle hand's side.
func (p Picture) players(g *canvas.Panel, f rally.Frame) {
	for _, id := range game.Players {
		p.player(g, id, f.Players[id].Run)
	}
}

func (p Picture) player(g *canvas.Panel, id game.Player, pose rally.Pose) {
	lk := p.look()
	team := lk.Teams[id.Team()]
	who := p.Rally.Player(id)
	at := canvas.On(pose.Place)
	name := PlayerShape(id)
	ink := canvas.Style{Fill: team.Disc, Stroke: lk.Ink, Width: canvas.Pts(look.Outline)}
	if team.Ring {
		g.Add(canvas.Shape{
			ID: name + ".ring", Layer: canvas.Players,
			Path:  canvas.Circle(at, canvas.Pts(look.RingRadius)),
			Style: canvas.Style{Fill: lk.Plate, Stroke: lk.Ink, Width: canvas.Pts(1)},
		})
	}
	g.Add(
		canvas.Shape{ID: name + ".paddle", Layer: canvas.Players, Label: who.Name + "'s paddle, " + who.Hand.String() + " hand",
			Path: paddle(at, pose.Facing, who.Hand.Forehand(pose.Facing)), Style: canvas.Style{Stroke: lk.Ink, Width: canvas.Pts(look.PaddleWidth), Round: true}},
		canvas.Shape{ID: name + ".notch", Layer: canvas.Players, Path: notch(at, pose.Facing), Style: canvas.Style{Fill: lk.Ink}},
		canvas.Shape{ID: name, Layer: canvas.Players, Label: fmt.Sprintf("%s, %v", who.Name, id),
			Path: canvas.Circle(at, canvas.Pts(look.DiscRadius)), Style: ink},
		canvas.Shape{ID: name + ".initials", Layer: canvas.Players, Text: letters(at, who.Letters(), team.Letter)},
	)
}

func letters(at canvas.Pos, s string, c colour) *canvas.Text {
	size := look.LetterSize
	if len([]rune(s)) > 2 {
		size *= 0.75
	}
	return &canvas.Text{At: at.Shift(0, size*0.36), Text: s, Size: size, Bold: true, Colour: c}
}

// rim is how far from a player's place the paddle bar and the notch begin.
const rim = look.RingRadius + 1

// paddle is a short bar beside the disc, on the side of the paddle hand.
func paddle(at canvas.Pos, facing units.Degrees, forehand court.Point) canvas.Path {
	beside := at.Along(forehand, canvas.Pts(rim+look.PaddleWidth/2))
	ahead := court.Direction(facing)
	return canvas.Path{}.Move(beside.Along(ahead, canvas.Pts(-look.PaddleLength*0.25))).
		Line(beside.Along(ahead, canvas.Pts(look.PaddleLength*0.75)))
}

// notch is a small wedge on the rim that points where the player looks.
func notch(at canvas.Pos, facing units.Degrees) canvas.Path {
	ahead, right := court.Direction(facing), court.RightOf(facing)
	base := at.Along(ahead, canvas.Pts(look.DiscRadius-1))
	return canvas.Path{}.Move(at.Along(ahead, canvas.Pts(rim+look.NotchLength))).
		Line(base.Along(right, canvas.Pts(look.NotchLength))).
		Line(base.Along(right, canvas.Pts(-look.NotchLength))).Close()
}
