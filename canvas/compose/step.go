package compose

import (
	"fmt"

	"homeside/canvas"
	"homeside/canvas/look"
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/rally"
	"homeside/model/units"
	"homeside/words"
)

// Step is one picture of a storyboard: the play at a moment, with the ways of
// the ball and of the players since another moment. Players' ways are those of
// their legs; a small ring stands where each set out. What is found in between is
// marked.
func (p Picture) Step(l Layout, from, to units.Seconds) *canvas.Scene {
	s := newScene(l)
	s.Background = p.look().Paper
	s.Title = p.Rally.Play.Title
	f := p.Rally.At(to)
	g := canvas.Panel{Name: CourtPanel, View: l.Court}
	p.court(&g)
	p.ballSince(&g, from, to)
	disc := units.Feet(float64(look.RingRadius) * l.PxPerPoint / l.Court.PxPerFoot)
	for _, id := range game.Players {
		p.ranSince(&g, id, from, to, disc)
	}
	p.players(&g, f)
	p.ball(&g, f)
	p.marks(&g, f, false)
	p.signals(&g, f)
	p.findingsSince(&g, from, to)
	s.Panels = append(s.Panels, g)
	return s
}

// ballSince draws the way of the ball over the ground, and its bounces.
func (p Picture) ballSince(g *canvas.Panel, from, to units.Seconds) {
	r := p.Rally
	if begin, end := max(from, 0), min(to, r.Stopped()); begin < end {
		g.Add(canvas.Shape{ID: "ball.way", Layer: canvas.BallPath, Label: words.T("way of the ball"), Path: overGround(r, begin, end), Style: dotted(p.look().Ink)})
	}
	for i, s := range r.Strokes {
		if at := s.At + s.Planned.Duration; !s.Volleyed && r.Reached(at) && from < at && at <= to {
			g.Add(p.bounce(fmt.Sprintf("shot.%d", i), i, s.Planned.End.Ground()))
		}
	}
}

// Ran is a player's way from one moment to another as the legs run it, in short
// pieces, and how long it is.
func Ran(r *rally.Rally, id game.Player, from, to units.Seconds) (way []court.Point, length units.Feet) {
	const piece units.Seconds = 0.02 // at 8 m/s half a foot: bends are drawn round
	n := max(int((to-from)/piece), 1)
	track := r.Tracks[id]
	for i := range n + 1 {
		at := track.RunAt(from + (to-from)*units.Seconds(i)/units.Seconds(n)).Place
		if len(way) > 0 {
			length += way[len(way)-1].Distance(at)
		}
		way = append(way, at)
	}
	return way, length
}

// ranSince draws a player's run as an arrow that ends at the rim of the disc,
// which has the radius disc.
func (p Picture) ranSince(g *canvas.Panel, id game.Player, from, to units.Seconds, disc units.Feet) {
	way, length := Ran(p.Rally, id, from, to)
	if length < shortRun {
		return
	}
	name := "ran." + id.String()
	ink := p.look().Teams[id.Team()].Run
	g.Add(canvas.Shape{ID: name + ".start", Layer: canvas.Runs, Path: canvas.Circle(canvas.On(way[0]), canvas.Pts(look.BallRadius)), Style: canvas.Style{Fill: p.look().Plate, Stroke: ink, Width: canvas.Pts(look.Outline)}})
	end := way[len(way)-1]
	n := len(way)
	for n > 1 && way[n-1].Distance(end) < disc {
		n--
	}
	g.Add(canvas.Shape{ID: name, Layer: canvas.Runs, Label: p.Rally.NameOf(id) + "'s run", Path: canvas.Polyline(way[:n]...), Style: canvas.Style{Stroke: ink, Width: canvas.Pts(look.RunWidth)}})
	if head := arrowHead(court.StraightCurve(way[max(n-2, 0)], way[n-1]), look.ArrowHead); head != nil {
		g.Add(canvas.Shape{ID: name + ".head", Layer: canvas.Runs, Path: head, Style: canvas.Style{Fill: ink}})
	}
}

// Places is a small picture of one team: where its players are at a moment and,
// as arrows, where they are at another.
func (p Picture) Places(l Layout, team court.End, at, end units.Seconds) *canvas.Scene {
	s := newScene(l)
	g := canvas.Panel{Name: CourtPanel, View: l.Court}
	p.court(&g)
	f := p.Rally.At(at)
	for n := range 2 {
		id := game.PlayerOf(team, n+1)
		p.ranSince(&g, id, at, end, 0)
		p.player(&g, id, f.Players[id].Run)
	}
	s.Panels = append(s.Panels, g)
	return s
}
