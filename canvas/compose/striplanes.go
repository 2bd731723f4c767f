package compose

import (
	"fmt"

	"homeside/canvas"
	"homeside/canvas/look"
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
	"homeside/words"
)

// names are the names of the lanes, with a ground that hides what is drawn left
// of the time shown.
func (s Strip) names() canvas.Panel {
	g := canvas.Panel{Name: "names", View: paper(canvas.Px{})}
	g.Add(canvas.Shape{ID: "ground", Layer: canvas.Ground, Path: paperBox(0, 0, namesEnd, float64(s.Height)/s.PxPerPoint), Style: canvas.Style{Fill: s.look().Surface}})
	s.name(&g, rally.BallLane, words.T("ball"))
	for _, id := range game.Players {
		s.name(&g, int(id)+1, s.Rally.NameOf(id))
	}
	s.name(&g, rally.CaptionLane, words.T("captions"))
	s.name(&g, rally.SignalLane, words.T("signals"))
	return g
}

func (s Strip) name(g *canvas.Panel, lane int, name string) {
	g.Add(canvas.Shape{
		ID: fmt.Sprintf("name.%d", lane), Layer: canvas.Labels,
		Text: &canvas.Text{
			At: canvas.Pos{}.Shift(namesEnd-4, s.lane(lane)+look.LabelSize*0.36), Text: Shorten(name, namesEnd-6, look.LabelSize, false),
			Size: look.LabelSize, Align: canvas.Finish, Colour: s.look().Ink,
		},
	})
}

// ballLane shows contacts as filled and bounces as open circles on a dotted line.
func (s Strip) ballLane(g *canvas.Panel) {
	y := s.lane(0)
	at := func(t units.Seconds) canvas.Pos { return canvas.Pos{}.Shift(s.x(t), y) }
	if s.in(0, s.Rally.To) {
		whole := canvas.Path{}.Move(canvas.Pos{}.Shift(s.heldX(0), y)).Line(canvas.Pos{}.Shift(s.heldX(s.Rally.To), y))
		g.Add(canvas.Shape{ID: "ball.lane", Layer: canvas.BallPath, Path: whole, Style: dotted(s.look().Ink)})
	}
	for _, e := range s.Rally.Events {
		style := canvas.Style{Fill: s.look().Ball, Stroke: s.look().Rim, Width: canvas.Pts(1)}
		switch {
		case !s.in(e.At, e.At) || !e.Reached || e.Name.Moment == lesson.Net || e.Name.Moment == lesson.End:
			continue
		case e.Name.Moment == lesson.Bounce:
			style.Fill, style.Stroke = s.look().Surface, s.look().Ink
		}
		g.Add(canvas.Shape{ID: "ball." + e.Name.String(), Layer: canvas.BallLayer, Path: canvas.Circle(at(e.At), canvas.Pts(look.BallRadius)), Style: style})
	}
}

// playerLane shows runs as bars and stops as small squares, hollow where implied.
func (s Strip) playerLane(g *canvas.Panel, id game.Player) {
	team := s.look().Teams[id.Team()]
	y, half := s.lane(int(id)+1), s.laneHeight()*laneFill/2
	for i, run := range s.Rally.Tracks[id].Runs {
		if !run.Shown() || !s.in(run.From, run.To) {
			continue
		}
		style := canvas.Style{Fill: team.Disc, Stroke: s.look().Ink, Width: canvas.Pts(0.8)}
		if !s.NoMargins {
			s.margin(g, id, i)
		}
		g.Add(canvas.Shape{
			ID: fmt.Sprintf("bar.%v.%d", id, i), Layer: canvas.Runs, Style: style,
			Label: words.T("%s runs from %s to %s", s.Rally.NameOf(id), words.Seconds(run.From), words.Seconds(run.To)),
			Path:  boxAbout(canvas.Pos{}.Shift(0, y), s.heldX(run.From), -half, s.heldX(run.To), half),
		})
		if run.From > s.Rally.Tracks[id].Stops[i].At {
			s.waits(g, fmt.Sprintf("leave.%v.%d", id, i), run.From, y, half)
		}
	}
	for i, stop := range s.Rally.Tracks[id].Stops {
		if !s.in(stop.At, stop.At) {
			continue
		}
		s.stop(g, fmt.Sprintf("stop.%v.%d", id, i), canvas.Pos{}.Shift(s.x(stop.At), y), stop.Index == rally.Implied, id.Team())
	}
}

func (s Strip) stop(g *canvas.Panel, name string, at canvas.Pos, implied bool, e court.End) {
	style := canvas.Style{Fill: s.look().Ink, Stroke: s.look().Ink, Width: canvas.Pts(1)}
	if implied {
		style.Fill = s.look().Surface
	}
	const half = 2.6
	g.Add(canvas.Shape{ID: name, Label: words.T("place of %s", words.End(e)), Layer: canvas.Players, Path: boxAbout(at, -half, -half, half, half), Style: style})
}

// waits marks where a run starts later than it could: a thick end to take hold of.
func (s Strip) waits(g *canvas.Panel, name string, t units.Seconds, y, half canvas.Points) {
	if !s.in(t, t) {
		return
	}
	at := canvas.Pos{}.Shift(s.x(t), y)
	g.Add(canvas.Shape{ID: name, Label: words.T("starts at %s", words.Seconds(t)), Layer: canvas.NetLayer, Path: canvas.Path{}.Move(at.Shift(1, -half-1.5)).Line(at.Shift(1, half+1.5)), Style: canvas.Style{Stroke: s.look().Ink, Width: canvas.Pts(2.4)}})
}
