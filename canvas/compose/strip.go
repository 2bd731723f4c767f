package compose

import (
	"fmt"
	"math"

	"homeside/canvas"
	"homeside/canvas/look"
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
	"homeside/words"
)

// Strip is the rally strip: a lane of time for the ball and one for each
// player, with lines for the events running up through all of them.
type Strip struct {
	Rally         *rally.Rally
	Look          *look.Look // nil means look.Daylight
	Width, Height int        // pixels
	PxPerPoint    float64
	NoMargins     bool // leaves out the time to spare
	Signs         []StripSign
}

// Parts of the strip in points.
const (
	stripGutter = 62  // names of the lanes
	stripRight  = 12  // free room after the end
	stripHead   = 30  // two rows of event labels
	stripFoot   = 4   // free room below the lanes
	labelRow    = 12  // from one row of labels to the next
	lanes       = 5   // the ball and four players
	laneFill    = 0.5 // share of a lane that a run's bar fills
)

// TimeAt is the time under a pixel, kept within the rally.
func (s Strip) TimeAt(x float64) units.Seconds {
	pt := x / s.PxPerPoint
	share := (pt - stripGutter) / s.span()
	r := s.Rally
	return min(max(r.From+units.Seconds(share)*(r.To-r.From), r.From), r.To)
}

// snapReach is how near to an event's line, in points, the pointer means the event.
const snapReach = 4

// Snapped is the time under a pixel, or of the nearest event if its line is within reach.
func (s Strip) Snapped(x float64) units.Seconds {
	t, best := s.TimeAt(x), snapReach*s.PxPerPoint
	for _, e := range s.Rally.Events {
		if d := math.Abs(float64(s.x(e.At))*s.PxPerPoint - x); d < best {
			t, best = e.At, d
		}
	}
	return t
}

// span is the width of the time axis in points.
func (s Strip) span() float64 {
	return max(float64(s.Width)/s.PxPerPoint-stripGutter-stripRight, 1)
}

func (s Strip) x(t units.Seconds) canvas.Points {
	return stripGutter + canvas.Points(float64((t-s.Rally.From)/(s.Rally.To-s.Rally.From))*s.span())
}

func (s Strip) foot() canvas.Points {
	return canvas.Points(float64(s.Height)/s.PxPerPoint) - stripFoot
}

// lane is the middle of lane i from the top, the ball's being 0.
func (s Strip) lane(i int) canvas.Points {
	return stripHead + s.laneHeight()*(canvas.Points(i)+0.5)
}

func (s Strip) laneHeight() canvas.Points { return (s.foot() - stripHead) / lanes }

func (s Strip) look() *look.Look {
	if s.Look != nil {
		return s.Look
	}
	return &look.Daylight
}

func (s Strip) scene(p canvas.Panel) *canvas.Scene {
	return &canvas.Scene{Width: s.Width, Height: s.Height, PxPerPoint: s.PxPerPoint, Panels: []canvas.Panel{p}}
}

// Static is everything but the play head.
func (s Strip) Static() *canvas.Scene {
	g := canvas.Panel{Name: "strip", View: paper(canvas.Px{})}
	s.names(&g)
	s.events(&g)
	s.ballLane(&g)
	for _, id := range game.Players {
		s.playerLane(&g, id)
	}
	s.signs(&g)
	scene := s.scene(g)
	scene.Background = s.look().Surface
	return scene
}

// Moving is the play head at time t.
func (s Strip) Moving(t units.Seconds) *canvas.Scene {
	g := canvas.Panel{Name: "strip", View: paper(canvas.Px{})}
	at := canvas.Pos{}.Shift(s.x(t), 0)
	g.Add(canvas.Shape{
		ID: "head", Label: "moment shown", Layer: canvas.Marks,
		Path:  canvas.Path{}.Move(at.Shift(0, stripHead-4)).Line(at.Shift(0, s.foot())),
		Style: canvas.Style{Stroke: look.Rust, Width: canvas.Pts(2)},
	})
	Picture{Look: s.Look}.tag(&g, "head.time", at.Shift(s.inward(t), s.foot()-6), 0, words.Seconds(t))
	return s.scene(g)
}

// inward is how far the play head's time moves to the left to stay in the strip.
func (s Strip) inward(t units.Seconds) canvas.Points {
	const half = 24
	end := canvas.Points(float64(s.Width) / s.PxPerPoint)
	return min(end-half-s.x(t), 0)
}

func (s Strip) names(g *canvas.Panel) {
	s.name(g, 0, "ball")
	for _, id := range game.Players {
		s.name(g, int(id)+1, s.Rally.NameOf(id))
	}
}

func (s Strip) name(g *canvas.Panel, lane int, name string) {
	g.Add(canvas.Shape{
		ID: fmt.Sprintf("name.%d", lane), Layer: canvas.Labels,
		Text: &canvas.Text{
			At: canvas.Pos{}.Shift(stripGutter-6, s.lane(lane)+look.LabelSize*0.36), Text: shorten(name, stripGutter-10, look.LabelSize, false),
			Size: look.LabelSize, Align: canvas.Finish, Colour: s.look().Ink,
		},
	})
}

// events draws a line for every event: contacts solid and labelled with their
// times, nets and bounces thin.
func (s Strip) events(g *canvas.Panel) {
	var ends [2]canvas.Points // where the last label of each row ends
	for _, e := range s.Rally.Events {
		strong := e.Name.Moment == lesson.Contact || e.Name.Moment == lesson.End
		s.eventLine(g, e, strong)
		if strong {
			s.eventLabel(g, e, &ends)
		}
	}
}

func (s Strip) eventLine(g *canvas.Panel, e rally.Event, strong bool) {
	style := canvas.Style{Stroke: s.look().Quiet, Width: canvas.Pts(0.6), Dash: []canvas.Points{2, 2}}
	top := s.lane(0)
	if strong {
		style, top = canvas.Style{Stroke: s.look().Quiet, Width: canvas.Pts(1)}, stripHead-3
	}
	at := canvas.Pos{}.Shift(s.x(e.At), 0)
	g.Add(canvas.Shape{
		ID: "event." + e.Name.String(), Label: e.Name.String() + " at " + words.Seconds(e.At), Layer: canvas.Lines,
		Path: canvas.Path{}.Move(at.Shift(0, top)).Line(at.Shift(0, s.foot())), Style: style,
	})
}

// eventLabel puts a label into the first row with room; one without room in
// either is left out, its line stays.
func (s Strip) eventLabel(g *canvas.Panel, e rally.Event, ends *[2]canvas.Points) {
	name := "end"
	if e.Name.Moment != lesson.End {
		name = lesson.ShotName(e.Name.Shot)
	}
	text := fmt.Sprintf("%s %.2f", name, float64(e.At))
	half := canvas.Points(look.Width(text, false)) * look.LabelSize / 2
	x := min(s.x(e.At), stripGutter+canvas.Points(s.span())+stripRight-half-2)
	for row := range ends {
		if x-half < ends[row] {
			continue
		}
		ends[row] = x + half + 5
		g.Add(canvas.Shape{
			ID: "label." + e.Name.String(), Label: text, Layer: canvas.Labels,
			Text: &canvas.Text{At: canvas.Pos{}.Shift(x, labelRow*canvas.Points(row+1)-1), Text: text, Size: look.LabelSize, Colour: s.look().Ink},
		})
		return
	}
}

// ballLane shows contacts as filled and bounces as open circles on a dotted line.
func (s Strip) ballLane(g *canvas.Panel) {
	y := s.lane(0)
	at := func(t units.Seconds) canvas.Pos { return canvas.Pos{}.Shift(s.x(t), y) }
	g.Add(canvas.Shape{ID: "ball.lane", Layer: canvas.BallPath, Path: canvas.Path{}.Move(at(0)).Line(at(s.Rally.To)), Style: dotted(s.look().Ink)})
	for _, e := range s.Rally.Events {
		style := canvas.Style{Fill: s.look().Ball, Stroke: s.look().Ink, Width: canvas.Pts(1)}
		switch {
		case !e.Reached || e.Name.Moment == lesson.Net || e.Name.Moment == lesson.End:
			continue
		case e.Name.Moment == lesson.Bounce:
			style.Fill = s.look().Surface
		}
		g.Add(canvas.Shape{ID: "ball." + e.Name.String(), Layer: canvas.BallLayer, Path: canvas.Circle(at(e.At), canvas.Pts(look.BallRadius)), Style: style})
	}
}

// playerLane shows runs as bars and stops as small squares, hollow where implied.
func (s Strip) playerLane(g *canvas.Panel, id game.Player) {
	team := s.look().Teams[id.Team()]
	y, half := s.lane(int(id)+1), s.laneHeight()*laneFill/2
	for i, run := range s.Rally.Tracks[id].Runs {
		if run.Way.Length() < shortRun || run.To <= run.From {
			continue
		}
		style := canvas.Style{Fill: team.Disc, Stroke: s.look().Ink, Width: canvas.Pts(0.8)}
		if !s.NoMargins {
			s.margin(g, id, i)
		}
		g.Add(canvas.Shape{
			ID: fmt.Sprintf("bar.%v.%d", id, i), Layer: canvas.Runs, Style: style,
			Label: fmt.Sprintf("%s runs from %s to %s", s.Rally.NameOf(id), words.Seconds(run.From), words.Seconds(run.To)),
			Path:  boxAbout(canvas.Pos{}.Shift(0, y), s.x(run.From), -half, s.x(run.To), half),
		})
	}
	for i, stop := range s.Rally.Tracks[id].Stops {
		s.stop(g, fmt.Sprintf("stop.%v.%d", id, i), canvas.Pos{}.Shift(s.x(stop.At), y), stop.Index == rally.Implied, id.Team())
	}
}

func (s Strip) stop(g *canvas.Panel, name string, at canvas.Pos, implied bool, e court.End) {
	style := canvas.Style{Fill: s.look().Ink, Stroke: s.look().Ink, Width: canvas.Pts(1)}
	if implied {
		style.Fill = s.look().Surface
	}
	const half = 2.6
	g.Add(canvas.Shape{ID: name, Label: "place of the " + e.String() + " team", Layer: canvas.Players, Path: boxAbout(at, -half, -half, half, half), Style: style})
}
