package compose

import (
	"fmt"

	"homeside/canvas"
	"homeside/model/advice"
	"homeside/model/game"
	"homeside/model/rally"
	"homeside/model/units"
	"homeside/words"
)

// leastMargin is the time below which a margin is not drawn: less than two
// frames of a clip.
const leastMargin units.Seconds = 0.05

// marginBar is the height of a margin's bar in points.
const marginBar canvas.Points = 3.4

// margin draws how much time a player has to spare for run i, as a hollow bar
// that ends at the arrival, or how late the player is, as a solid one that
// begins there, with the figure.
func (s Strip) margin(g *canvas.Panel, id game.Player, i int) {
	if i >= len(s.Rally.Tracks[id].Legs) {
		return
	}
	leg, due := s.Rally.Tracks[id].Legs[i], s.Rally.Tracks[id].Runs[i].To
	if leg.Margin < leastMargin && leg.Margin > -advice.Shown {
		return
	}
	if leg.Margin < 0 && s.Rally.Tracks[id].Stops[i+1].Index == rally.Implied {
		return // a striker a little short reaches for the ball: the checks say when that is not enough
	}
	from, to := max(due-leg.Margin, leg.From), due
	style := canvas.Style{Fill: s.look().Surface, Stroke: s.look().Ink, Width: canvas.Pts(0.7)}
	label := words.T("%s has %.2f s to spare", s.Rally.NameOf(id), float64(leg.Margin))
	if leg.Margin < 0 {
		from, to = due, due-leg.Margin
		style.Fill = s.look().Head
		label = words.T("%s is %.2f s late", s.Rally.NameOf(id), -float64(leg.Margin))
	}
	if !s.in(from, to) {
		return
	}
	y := s.lane(int(id)+1) + s.laneHeight()*laneFill/2
	name := fmt.Sprintf("margin.%v.%d", id, i)
	g.Add(canvas.Shape{ID: name, Layer: canvas.BallLayer, Label: label, Path: boxAbout(canvas.Pos{}.Shift(0, y), s.heldX(from), -marginBar/2, s.heldX(min(to, s.Rally.To)), marginBar/2), Style: style})
	if leg.Margin < 0 {
		text := words.T("%.2f s late", -float64(leg.Margin))
		wide, _ := tagSize(text)
		end := canvas.Points(float64(s.Width)/s.PxPerPoint) - 1
		Picture{Look: s.Look}.tag(g, name+".text", canvas.Pos{}.Shift(min(s.heldX(to)+18, end-wide/2), y-4), 0, text)
	}
}
