package compose

import (
	"fmt"
	"math"
	"slices"
	"strconv"

	"homeside/canvas"
	"homeside/canvas/look"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
	"homeside/words"
)

// events draws a line for every event: contacts solid and labelled with their
// times, nets and bounces thin.
func (s Strip) events(g *canvas.Panel) {
	var ends [2]canvas.Points // where the last label of each row ends
	for _, e := range s.Rally.Events {
		if !s.in(e.At, e.At) {
			continue
		}
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
		style, top = canvas.Style{Stroke: s.look().Quiet, Width: canvas.Pts(1)}, s.rulerTop()-2
	}
	at := canvas.Pos{}.Shift(s.x(e.At), 0)
	g.Add(canvas.Shape{
		ID: "event." + e.Name.String(), Label: words.T("%s, at %s", words.TheEvent(e.Name), words.Seconds(e.At)), Layer: canvas.Lines,
		Path: canvas.Path{}.Move(at.Shift(0, top)).Line(at.Shift(0, s.foot())), Style: style,
	})
}

// eventLabel puts a label into the first row with room; one without room in
// either is left out, its line stays.
func (s Strip) eventLabel(g *canvas.Panel, e rally.Event, ends *[2]canvas.Points) {
	name := words.T("end")
	if e.Name.Moment != lesson.End {
		name = words.Shot(e.Name.Shot)
	}
	text := fmt.Sprintf("%s %.2f", name, float64(e.At))
	half := canvas.Points(look.Width(text, false)) * look.LabelSize / 2
	x := max(min(s.x(e.At), stripGutter+canvas.Points(s.span())+stripRight-half-2), namesEnd+half)
	for row := range s.labelRows() {
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

// tickSteps are the distances between two ticks of the ruler that are easy to count by.
var tickSteps = [...]units.Seconds{0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 60}

// leastTick is the room that a tick's figure takes.
const leastTick canvas.Points = 34

// ruler is a band with the seconds since the serve.
func (s Strip) ruler(g *canvas.Panel) {
	end := float64(s.Width) / s.PxPerPoint
	g.Add(canvas.Shape{ID: "ruler", Label: words.T("seconds"), Layer: canvas.Ground, Path: paperBox(namesEnd, float64(s.rulerTop()), end, float64(s.head())), Style: canvas.Style{Fill: s.look().Plate}})
	step, v := s.tickStep(), s.shown()
	for i := math.Ceil(float64(v.From/step) - 1e-9); units.Seconds(i)*step <= v.To+1e-9; i++ {
		s.tick(g, units.Seconds(i)*step)
	}
}

func (s Strip) tickStep() units.Seconds {
	for _, step := range tickSteps {
		if s.TimeFor(leastTick) <= step {
			return step
		}
	}
	return tickSteps[len(tickSteps)-1]
}

// tick is a short line with its figure to the right of it.
func (s Strip) tick(g *canvas.Panel, t units.Seconds) {
	figure := strconv.FormatFloat(math.Round(float64(t)*100)/100+0, 'f', -1, 64)
	at := canvas.Pos{}.Shift(s.x(t), 0)
	g.Add(canvas.Shape{ID: "tick." + figure, Layer: canvas.Lines, Path: canvas.Path{}.Move(at.Shift(0, s.head()-4)).Line(at.Shift(0, s.head())), Style: canvas.Style{Stroke: s.look().Quiet, Width: canvas.Pts(0.8)}})
	if room := canvas.Points(float64(s.Width)/s.PxPerPoint) - s.x(t); room > leastTick && !s.contactIn(s.x(t)+1, s.x(t)+leastTick-6) {
		g.Add(canvas.Shape{ID: "tick." + figure + ".text", Layer: canvas.Labels, Text: &canvas.Text{At: at.Shift(3, s.head()-4), Text: words.Tick(t), Size: look.LabelSize - 1, Align: canvas.Start, Colour: s.look().Quiet}})
	}
}

// contactIn says whether the line of a contact runs between two places.
func (s Strip) contactIn(left, right canvas.Points) bool {
	return slices.ContainsFunc(s.Rally.Events, func(e rally.Event) bool {
		return e.Name.Moment == lesson.Contact && s.x(e.At) > left && s.x(e.At) < right
	})
}

// lead sets the time before the serve apart.
func (s Strip) lead(g *canvas.Panel) {
	if s.Rally.From >= 0 || !s.in(s.Rally.From, 0) {
		return
	}
	left, right := s.heldX(s.Rally.From), s.heldX(0)
	g.Add(canvas.Shape{ID: "lead", Label: words.T("before the serve"), Layer: canvas.Ground, Path: paperBox(float64(left), float64(s.head()), float64(right), float64(s.foot())), Style: canvas.Style{Fill: s.look().Kitchen}})
	text := Shorten(words.T("before the serve"), float64(right-left)-8, look.LabelSize, false)
	g.Add(canvas.Shape{ID: "lead.text", Layer: canvas.Labels, Text: &canvas.Text{At: canvas.Pos{}.Shift((left+right)/2, s.lane(rally.BallLane)+look.LabelSize*0.36), Text: text, Size: look.LabelSize, Colour: s.look().Quiet}})
}

// loop marks the stretch that is played again and again.
func (s Strip) loop(g *canvas.Panel) {
	if s.Loop.Empty() || !s.in(s.Loop.From, s.Loop.To) {
		return
	}
	left, right := s.heldX(s.Loop.From), s.heldX(s.Loop.To)
	g.Add(canvas.Shape{ID: "loop", Label: words.T("loop from %s to %s", words.Seconds(s.Loop.From), words.Seconds(s.Loop.To)), Layer: canvas.Ground,
		Path: paperBox(float64(left), float64(s.rulerTop()), float64(right), float64(s.head())), Style: canvas.Style{Fill: s.look().Loop, Stroke: s.look().Ink, Width: canvas.Pts(0.7)}})
	for _, end := range []struct {
		name string
		at   units.Seconds
		in   canvas.Points // the way into the loop
	}{{"loop.from", s.Loop.From, 6}, {"loop.to", s.Loop.To, -6}} {
		if s.in(end.at, end.at) {
			at := canvas.Pos{}.Shift(s.x(end.at), s.rulerTop())
			s.loopEnd(g, end.name, at, end.in)
		}
	}
}

// loopEnd is a flag on the ruler with a line through the lanes.
func (s Strip) loopEnd(g *canvas.Panel, name string, at canvas.Pos, in canvas.Points) {
	g.Add(
		canvas.Shape{ID: name, Layer: canvas.Marks, Path: canvas.Path{}.Move(at).Line(at.Shift(in, rulerTall/2)).Line(at.Shift(0, rulerTall)).Close(), Style: canvas.Style{Fill: s.look().Chosen}},
		canvas.Shape{ID: name + ".line", Layer: canvas.Lines, Path: canvas.Path{}.Move(at).Line(canvas.Pos{}.Shift(at.Right, s.foot())), Style: canvas.Style{Stroke: s.look().Chosen, Width: canvas.Pts(1.4), Dash: []canvas.Points{4, 2}}},
	)
}
