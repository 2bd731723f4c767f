package compose

import (
	"math"

	"homeside/canvas"
	"homeside/canvas/look"
	"homeside/model/game"
	"homeside/model/rally"
	"homeside/model/units"
	"homeside/words"
)

// Strip is the rally strip: a lane of time for the ball, one for each player,
// one for captions and one for signals, with lines for the events running up
// through all of them to a ruler of seconds.
type Strip struct {
	Rally         *rally.Rally
	Look          *look.Look // nil means look.Daylight
	Width, Height int        // pixels
	PxPerPoint    float64
	Shown         Span // the time that the strip is long; the zero Span shows the whole rally
	Loop          Span // marked on the ruler; the zero Span marks none
	NoMargins     bool // leaves out the time to spare
	Signs         []StripSign
	Chosen        *rally.Timed // has a ring round it in Moving; nil means nothing has
	Held          *Held        // what the hand moves, drawn in Moving; nil means nothing is
}

// Span is a stretch of a rally's time.
type Span struct{ From, To units.Seconds }

// Empty says whether the span has no length.
func (p Span) Empty() bool { return !(p.To > p.From) }

// Held is a time that the hand moves, with a word for it.
type Held struct {
	At   units.Seconds
	Text string
}

// Parts of the strip in points.
const (
	stripGutter = 62  // names of the lanes
	stripRight  = 12  // free room after the end
	rulerTall   = 14  // the ruler with its figures
	stripFoot   = 4   // free room below the lanes
	labelRow    = 12  // from one row of labels to the next
	namesEnd    = 56  // what is left of it belongs to the names
	laneFill    = 0.5 // share of a lane that a run's bar fills
)

// shown is the time that the strip is long.
func (s Strip) shown() Span {
	whole := Span{s.Rally.From, s.Rally.To}
	if s.Shown.Empty() {
		return whole
	}
	return s.Shown
}

// TimeAt is the time under a pixel, kept within what is shown.
func (s Strip) TimeAt(x float64) units.Seconds {
	v := s.shown()
	share := (x/s.PxPerPoint - stripGutter) / s.span()
	return min(max(v.From+units.Seconds(share)*(v.To-v.From), v.From), v.To)
}

// TimeFor is how long a number of points is on the strip.
func (s Strip) TimeFor(p canvas.Points) units.Seconds {
	v := s.shown()
	return (v.To - v.From) * units.Seconds(float64(p)/s.span())
}

// snapReach is how near to an event's line, in points, the pointer means the event.
const snapReach canvas.Points = 4

// SnapTime is how near to an event a time counts as the event's.
func (s Strip) SnapTime() units.Seconds { return s.TimeFor(snapReach) }

// Snapped is the time under a pixel, or of the nearest event if its line is within reach.
func (s Strip) Snapped(x float64) units.Seconds {
	t, best := s.TimeAt(x), float64(snapReach)*s.PxPerPoint
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
	v := s.shown()
	return stripGutter + canvas.Points(float64((t-v.From)/(v.To-v.From))*s.span())
}

// heldX is where a time is drawn, kept within what is shown.
func (s Strip) heldX(t units.Seconds) canvas.Points {
	v := s.shown()
	return s.x(min(max(t, v.From), v.To))
}

// in says whether some of a stretch of time is shown.
func (s Strip) in(from, to units.Seconds) bool {
	v := s.shown()
	return to >= v.From && from <= v.To
}

// lowHeight is the height in points below which the strip makes do with one row of
// event labels.
const lowHeight = 112

// labelRows is how many rows of event labels there are.
func (s Strip) labelRows() int {
	if float64(s.Height)/s.PxPerPoint < lowHeight {
		return 1
	}
	return 2
}

// rulerTop is where the ruler begins, below the event labels.
func (s Strip) rulerTop() canvas.Points { return 3 + labelRow*canvas.Points(s.labelRows()) }

// head is where the lanes begin, below the ruler.
func (s Strip) head() canvas.Points { return s.rulerTop() + rulerTall }

func (s Strip) foot() canvas.Points {
	return canvas.Points(float64(s.Height)/s.PxPerPoint) - stripFoot
}

// lane is the middle of lane i from the top, the ball's being 0.
func (s Strip) lane(i int) canvas.Points {
	return s.head() + s.laneHeight()*(canvas.Points(i)+0.5)
}

func (s Strip) laneHeight() canvas.Points { return (s.foot() - s.head()) / canvas.Points(rally.Lanes) }

func (s Strip) look() *look.Look {
	if s.Look != nil {
		return s.Look
	}
	return &look.Daylight
}

func (s Strip) scene(p ...canvas.Panel) *canvas.Scene {
	return &canvas.Scene{Width: s.Width, Height: s.Height, PxPerPoint: s.PxPerPoint, Panels: p}
}

// Static is everything but the play head and the hand.
func (s Strip) Static() *canvas.Scene {
	g := canvas.Panel{Name: "strip", View: paper(canvas.Px{})}
	s.lead(&g)
	s.ruler(&g)
	s.loop(&g)
	s.events(&g)
	s.ballLane(&g)
	for _, id := range game.Players {
		s.playerLane(&g, id)
	}
	s.cues(&g)
	s.signs(&g)
	scene := s.scene(g, s.names())
	scene.Background = s.look().Surface
	return scene
}

// Moving is the play head at time t, what is chosen and what the hand moves.
func (s Strip) Moving(t units.Seconds) *canvas.Scene {
	g := canvas.Panel{Name: "strip", View: paper(canvas.Px{})}
	s.chosen(&g)
	if s.in(t, t) {
		at := canvas.Pos{}.Shift(s.x(t), 0)
		g.Add(canvas.Shape{
			ID: "head", Label: words.T("moment shown"), Layer: canvas.Marks,
			Path:  canvas.Path{}.Move(at.Shift(0, s.rulerTop())).Line(at.Shift(0, s.foot())),
			Style: canvas.Style{Stroke: s.look().Head, Width: canvas.Pts(2)},
		})
		text := words.Seconds(t)
		Picture{Look: s.Look}.tag(&g, "head.time", at.Shift(s.inward(t, text), (s.rulerTop()+s.head())/2), 0, text)
	}
	s.hold(&g)
	return s.scene(g)
}

// inward is how far a tag at time t moves to stay in the strip.
func (s Strip) inward(t units.Seconds, text string) canvas.Points {
	w, _ := tagSize(text)
	end, x := canvas.Points(float64(s.Width)/s.PxPerPoint), s.x(t)
	return max(min(end-w/2-1-x, 0), w/2+1-x)
}
