package compose

import (
	"math"

	"homeside/canvas"
	"homeside/model/rally"
	"homeside/model/units"
	"homeside/words"
)

// How near, in points, the pointer has to be to take hold.
const (
	takeReach canvas.Points = 5 // of a moment
	startRoom canvas.Points = 7 // of a run's bar that belongs to its start
)

// LaneAt is the lane under a pixel, see rally.BallLane; false above and below the lanes.
func (s Strip) LaneAt(at canvas.Px) (int, bool) {
	y := canvas.Points(at.Y/s.PxPerPoint) - s.head()
	i := int(math.Floor(float64(y / s.laneHeight())))
	return i, y >= 0 && i < rally.Lanes && at.X >= namesEnd*s.PxPerPoint
}

// OnRuler says whether a pixel is on the ruler or among the labels over it.
func (s Strip) OnRuler(at canvas.Px) bool {
	return at.Y < float64(s.head())*s.PxPerPoint && at.X >= namesEnd*s.PxPerPoint
}

// LoopEnd is the end of the loop under a pixel: -1 for its start, 1 for its end,
// 0 for neither.
func (s Strip) LoopEnd(at canvas.Px) int {
	if s.Loop.Empty() || !s.OnRuler(at) {
		return 0
	}
	x := canvas.Points(at.X / s.PxPerPoint)
	from, to := gap(x, s.x(s.Loop.From)), gap(x, s.x(s.Loop.To))
	switch {
	case min(from, to) > takeReach+1:
		return 0
	case from < to:
		return -1
	default:
		return 1
	}
}

// Thing is what the pointer takes hold of at a pixel: the nearest moment within
// reach, or the run or cue that the pixel is in.
func (s Strip) Thing(at canvas.Px) (rally.Timed, bool) {
	lane, ok := s.LaneAt(at)
	if !ok {
		return rally.Timed{}, false
	}
	x, y := canvas.Points(at.X/s.PxPerPoint), canvas.Points(at.Y/s.PxPerPoint)
	best, found, whole := canvas.Points(math.Inf(1)), rally.Timed{}, false
	for _, e := range s.Rally.Timeline() {
		if s.Rally.LaneOf(e.What) != lane || !s.drawn(e) || !s.inRow(e.What, y) {
			continue
		}
		if d, near := s.reach(e, x); near && d <= best {
			best, found = d, e.What
		} else if math.IsInf(float64(best), 1) && e.To > e.From && x >= s.x(e.From) && x <= s.x(e.To) {
			found, whole = e.What, true
		}
	}
	return found, whole || !math.IsInf(float64(best), 1)
}

// drawn leaves out the landing of a ball that has gone into the net.
func (s Strip) drawn(e rally.Entry) bool {
	return e.What.Kind != rally.Landing || s.Rally.Reached(e.From)
}

// reach is how far a moment is from x, and whether it is near enough to be taken.
func (s Strip) reach(e rally.Entry, x canvas.Points) (canvas.Points, bool) {
	d := gap(x, s.x(e.From))
	switch e.What.Kind {
	case rally.Running, rally.Saying:
		return 0, false
	case rally.Start: // a little within its bar, so that the place it starts from can be taken too
		into := x - s.x(e.From)
		return gap(into, startRoom/2) + 1, into > -1 && into <= startRoom
	case rally.CueFrom, rally.CueTo: // a short cue keeps a middle to take hold of
		cue := s.cueRows()[e.What.Index]
		return d, d <= min(takeReach, (s.x(cue.to)-s.x(cue.from))/4)
	}
	return d, d <= takeReach
}

// inRow says whether y is in the row of a cue; other things fill their lane.
func (s Strip) inRow(what rally.Timed, y canvas.Points) bool {
	switch what.Kind {
	case rally.Saying, rally.CueFrom, rally.CueTo:
		top, foot := s.band(s.cueRows()[what.Index])
		return y >= top && y <= foot
	}
	return true
}

func gap(a, b canvas.Points) canvas.Points { return max(a-b, b-a) }

// PxOf is the middle of a thing in pixels; false if it is not shown.
func (s Strip) PxOf(what rally.Timed) (canvas.Px, bool) {
	e, ok := s.Rally.EntryOf(what)
	if !ok || !s.in(e.From, e.To) {
		return canvas.Px{}, false
	}
	x := (s.heldX(e.From) + s.heldX(e.To)) / 2
	y := s.lane(s.Rally.LaneOf(what))
	switch what.Kind {
	case rally.Start:
		x += startRoom / 2
	case rally.Saying, rally.CueFrom, rally.CueTo:
		top, foot := s.band(s.cueRows()[what.Index])
		y = (top + foot) / 2
	}
	return canvas.Px{X: float64(x) * s.PxPerPoint, Y: float64(y) * s.PxPerPoint}, true
}

// RulerPx is where a time is on the ruler, in pixels; false if it is not shown.
func (s Strip) RulerPx(t units.Seconds) (canvas.Px, bool) {
	return canvas.Px{X: float64(s.x(t)) * s.PxPerPoint, Y: float64(s.rulerTop()+s.head()) / 2 * s.PxPerPoint}, s.in(t, t)
}

// chosen draws a ring round what is chosen.
func (s Strip) chosen(g *canvas.Panel) {
	if s.Chosen == nil {
		return
	}
	e, ok := s.Rally.EntryOf(*s.Chosen)
	if !ok || !s.in(e.From, e.To) {
		return
	}
	top, foot := s.lane(s.Rally.LaneOf(e.What))-s.laneHeight()/2, s.lane(s.Rally.LaneOf(e.What))+s.laneHeight()/2
	g.Add(canvas.Shape{
		ID: "chosen", Label: words.T("chosen"), Layer: canvas.Marks,
		Path:  paperBox(float64(s.heldX(e.From)-takeReach), float64(top), float64(s.heldX(e.To)+takeReach), float64(foot)),
		Style: canvas.Style{Stroke: s.look().Chosen, Width: canvas.Pts(2)},
	})
}

// hold draws a line at the time that the hand moves, with its word.
func (s Strip) hold(g *canvas.Panel) {
	if s.Held == nil || !s.in(s.Held.At, s.Held.At) {
		return
	}
	at := canvas.Pos{}.Shift(s.x(s.Held.At), 0)
	g.Add(canvas.Shape{
		ID: "held", Label: s.Held.Text, Layer: canvas.Marks,
		Path:  canvas.Path{}.Move(at.Shift(0, s.head())).Line(at.Shift(0, s.foot())),
		Style: canvas.Style{Stroke: s.look().Chosen, Width: canvas.Pts(1.4)},
	})
	Picture{Look: s.Look}.tag(g, "held.text", at.Shift(s.inward(s.Held.At, s.Held.Text), labelRow), 0, s.Held.Text)
}

// Zoomed is a span of time shown, grown or shrunk by a factor about a time that
// stays where it is, within a whole. A factor above 1 shows less. It never shows
// less than LeastShown.
func Zoomed(shown, whole Span, about units.Seconds, factor float64) Span {
	long := min(max((shown.To-shown.From)/units.Seconds(factor), LeastShown), whole.To-whole.From)
	share := units.Seconds(0.5)
	if !shown.Empty() {
		share = min(max((about-shown.From)/(shown.To-shown.From), 0), 1)
	}
	return Scrolled(Span{about - share*long, about + (1-share)*long}, whole, 0)
}

// LeastShown is the shortest time that the strip can be long.
const LeastShown units.Seconds = 0.25

// Scrolled is a span of time moved by a time and kept within a whole.
func Scrolled(shown, whole Span, by units.Seconds) Span {
	by = min(max(by, whole.From-shown.From), whole.To-shown.To)
	return Span{shown.From + by, shown.To + by}
}
