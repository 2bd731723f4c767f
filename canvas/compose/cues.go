package compose

import (
	"strconv"

	"homeside/canvas"
	"homeside/canvas/look"
	"homeside/model/court"
	"homeside/model/drill"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
	"homeside/words"
)

// Signs behind the back, in points.
const (
	signBehind canvas.Points = 22 // from the giver's place
	palmRadius canvas.Points = 4.5
	fingerLong canvas.Points = 5.5
	tagDown    canvas.Points = 15

	signTagDown canvas.Points = 19 // clear of fingers
)

// signals draws live signals: a hand behind the giver's back, closed for stay,
// open for switch (common practice of the trade), and the reader's answer.
func (p Picture) signals(g *canvas.Panel, f rally.Frame) {
	for _, i := range f.Cues {
		c := p.Rally.Play.Cues[i]
		if c.Kind != lesson.Signal {
			continue
		}
		name := "signal." + strconv.Itoa(i)
		giver := f.Players[c.Giver].Run
		back := court.Direction(giver.Facing).Times(-1)
		hand := canvas.On(giver.Place).Along(back, canvas.Pts(signBehind))
		p.sign(g, name, hand, back, c)
		p.tag(g, name+".meaning", hand, beyondHand(g.View, giver.Place, back), words.Name(c.Meaning))
		if c.Text != "" {
			p.tag(g, name+".answer", canvas.On(f.Players[c.Reader].Run.Place), signBehind, c.Text)
		}
	}
}

// beyondHand is how far below a hand what it says stands: above it where the giver
// stands below, who would be hidden.
func beyondHand(v canvas.View, giver, back court.Point) canvas.Points {
	if v.ToPx(giver.Add(back)).Y < v.ToPx(giver).Y {
		return -signTagDown
	}
	return signTagDown
}

func (p Picture) sign(g *canvas.Panel, name string, at canvas.Pos, out court.Point, c lesson.Cue) {
	lk := p.look()
	style := canvas.Style{Fill: lk.Plate, Stroke: lk.Ink, Width: canvas.Pts(look.Outline), Round: true}
	if n := p.fingersOf(c); n > 0 {
		g.Add(canvas.Shape{ID: name + ".fingers", Layer: canvas.Marks, Path: fingers(at, out, n),
			Style: canvas.Style{Stroke: lk.Ink, Width: canvas.Pts(2), Round: true}})
	}
	g.Add(canvas.Shape{ID: name, Layer: canvas.Marks, Label: words.T("signal: %s", words.Name(c.Meaning)), Path: canvas.Circle(at, canvas.Pts(palmRadius)), Style: style})
}

// fingersOf is how many fingers the hand of a signal shows: as its pair agreed or, where
// it agreed on nothing, none for stay and all for anything else.
func (p Picture) fingersOf(c lesson.Cue) int {
	s := p.Rally.Teams[c.Giver.Team()].Signs
	sign := drill.OpenHand
	switch {
	case s != (lesson.Signs{}):
		sign = drill.Meanings(s).SignFor(c.Meaning)
	case c.Meaning == lesson.Stay:
		sign = drill.Fist
	}
	return [...]int{drill.Fist: 0, drill.OpenHand: 5, drill.TwoFingers: 2}[sign]
}

// fingerAngle is the angle of finger i of n from the middle of the hand.
func fingerAngle(i, n int, step float64) float64 { return step * (float64(i) - float64(n-1)/2) }

// fingers are n strokes from the palm outward.
func fingers(at canvas.Pos, out court.Point, n int) canvas.Path {
	var path canvas.Path
	facing, _ := court.FacingTo(court.Point{}, out)
	for i := range n {
		dir := court.Direction(facing + units.Degrees(fingerAngle(i, n, 40)))
		path = path.Move(at.Along(dir, canvas.Pts(palmRadius))).
			Line(at.Along(dir, canvas.Pts(palmRadius+fingerLong)))
	}
	return path
}

// tag is a line of text on a small plate, down points below its place.
func (p Picture) tag(g *canvas.Panel, name string, at canvas.Pos, down canvas.Points, text string) {
	lk := p.look()
	at = at.Shift(0, down)
	w, h := tagSize(text)
	g.Add(canvas.Shape{
		ID: name + ".plate", Layer: canvas.Labels,
		Path:  boxAbout(at, -w/2, -h/2, w/2, h/2),
		Style: canvas.Style{Fill: lk.Plate, Stroke: lk.Ink, Width: canvas.Pts(0.7)},
	}, canvas.Shape{
		ID: name, Layer: canvas.Labels, Label: text,
		Text: &canvas.Text{At: at.Shift(0, look.LabelSize*0.36), Text: text, Size: look.LabelSize, Bold: true, Colour: lk.Ink},
	})
}

// tagSize is the width and height of a tag's plate.
func tagSize(text string) (w, h canvas.Points) {
	const pad = 3
	return canvas.Points(look.Width(text, true))*look.LabelSize + 2*pad, look.LabelSize + 2*pad
}

// captionLead is from one line of a caption to the next in points.
const captionLead = float64(look.CaptionSize) * 1.35

// caption is the panel with the live captions; false if there is nothing to say.
func (p Picture) caption(l Layout, f rally.Frame) (canvas.Panel, bool) {
	c := canvas.Panel{Name: "caption", View: paper(l.Caption.Min)}
	var lines []string
	room := l.lines(l.Caption)
	width, broken := room.Width()/l.PxPerPoint, Balanced
	if l.Column {
		broken = Wrap // beside the court the lines begin at one edge, and may be cut
	}
	for _, i := range f.Cues {
		if q := p.Rally.Play.Cues[i]; q.Kind == lesson.Caption {
			lines = append(lines, broken(q.Text, width, look.CaptionSize, true)...)
		}
	}
	if l.Column {
		lines = firstRows(lines, int(room.Height()/l.PxPerPoint/captionLead), width, look.CaptionSize)
	}
	if len(lines) == 0 || l.Caption.Empty() {
		return c, false
	}
	p.captionLines(&c, l, lines)
	return c, true
}

func (p Picture) captionLines(c *canvas.Panel, l Layout, lines []string) {
	lk := p.look()
	pt := l.PxPerPoint
	room := l.lines(l.Caption)
	left, from, height := (room.Min.X-l.Caption.Min.X)/pt, (room.Min.Y-l.Caption.Min.Y)/pt, room.Height()/pt
	lead := captionLead
	top := from + (height-lead*float64(len(lines)))/2
	align, x := canvas.Centre, left+room.Width()/pt/2
	if l.Column {
		align, x, top = canvas.Start, left, from
	} else if n := lead*float64(len(lines)) - height; n > 0 {
		top = from - n // longer captions grow upward
	}
	c.Add(canvas.Shape{
		ID: "plate", Layer: canvas.Ground, Path: paperBox(0, min(top, 0), l.Caption.Width()/pt, l.Caption.Height()/pt),
		Style: canvas.Style{Fill: lk.Plate},
	})
	for i, line := range lines {
		c.Add(canvas.Shape{
			ID: "line." + strconv.Itoa(i), Label: line, Layer: canvas.Labels,
			Text: &canvas.Text{At: canvas.Pos{Right: canvas.Points(x), Down: canvas.Points(top + lead*(float64(i)+0.75))}, Text: line, Size: look.CaptionSize, Bold: true, Align: align, Colour: lk.Ink},
		})
	}
}

// clock shows the time since the serve, right of the title or below it.
func (p Picture) clock(l Layout, f rally.Frame) canvas.Panel {
	c := canvas.Panel{Name: "clock", View: paper(l.Title.Min)}
	t := canvas.Text{Text: words.Seconds(f.T), Size: look.TitleSize, Align: canvas.Finish, Colour: p.look().Quiet}
	t.At = canvas.Pos{Right: canvas.Points((l.lines(l.Title).Max.X - l.Title.Min.X) / l.PxPerPoint), Down: l.titleBaseline()}
	if l.Column {
		t.Align, t.At = canvas.Start, canvas.Pos{Right: l.titleLeft(), Down: canvas.Points(l.Title.Height()/l.PxPerPoint) - look.TitleSize}
	}
	c.Add(canvas.Shape{ID: "time", Label: words.T("time since the serve"), Layer: canvas.Labels, Text: &t})
	return c
}
