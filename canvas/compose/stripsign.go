package compose

import (
	"strconv"

	"homeside/canvas"
	"homeside/canvas/look"
	"homeside/model/game"
	"homeside/model/units"
)

// StripSign marks a moment in a player's lane: where the play shown first
// differs from another.
type StripSign struct {
	At   units.Seconds // kept within the rally
	Who  game.Player
	Text string // a word or two
}

// Size of a sign in points.
const (
	signHalf  canvas.Points = 4.5
	signApart canvas.Points = 8 // from the sign to the middle of its word's near side
)

// signs draws a diamond in the lane of whoever shows it, with its word beside it,
// and a line up to the ball's lane.
func (s Strip) signs(g *canvas.Panel) {
	for i, sign := range s.Signs {
		if sign.At = min(max(sign.At, s.Rally.From), s.Rally.To); !s.in(sign.At, sign.At) {
			continue
		}
		name := "sign." + strconv.Itoa(i)
		at := canvas.Pos{}.Shift(s.x(sign.At), s.lane(int(sign.Who)+1))
		g.Add(
			canvas.Shape{
				ID: name + ".line", Layer: canvas.Marks, Path: canvas.Path{}.Move(at).Line(canvas.Pos{}.Shift(at.Right, s.head())),
				Style: canvas.Style{Stroke: s.look().Part, Width: canvas.Pts(look.Outline)},
			},
			canvas.Shape{
				ID: name, Layer: canvas.Marks, Label: s.Rally.NameOf(sign.Who) + ": " + sign.Text, Path: diamond(at),
				Style: canvas.Style{Fill: s.look().Part, Stroke: s.look().Rim, Width: canvas.Pts(1)},
			},
		)
		Picture{Look: s.Look}.tag(g, name+".text", at.Shift(s.beside(at, sign.Text), 0), 0, sign.Text)
	}
}

func diamond(at canvas.Pos) canvas.Path {
	const h = signHalf
	return canvas.Path{}.Move(at.Shift(0, -h)).Line(at.Shift(h, 0)).Line(at.Shift(0, h)).Line(at.Shift(-h, 0)).Close()
}

// beside is how far to the right of a sign the middle of its word stands; to the
// left where the strip ends.
func (s Strip) beside(at canvas.Pos, text string) canvas.Points {
	w, _ := tagSize(text)
	off := signApart + w/2
	if at.Right+off+w/2 > canvas.Points(float64(s.Width)/s.PxPerPoint) {
		return -off
	}
	return off
}
