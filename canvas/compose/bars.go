package compose

import (
	"fmt"
	"math"

	"homeside/canvas"
	"homeside/canvas/look"
)

// BarChart is a small chart of lying bars in sections. Each section has a scale
// of its own from 0 unless they share one; bars below 0 go to the left and have a dashed outline, so
// that they are told apart also without colour.
type BarChart struct {
	Title      string
	Sections   []BarSection
	OneScale   bool       // all sections share a scale: their values are of one kind
	Look       *look.Look // nil means look.Daylight
	Width      int        // pixels
	PxPerPoint float64
}

// BarSection is a heading and the bars under it.
type BarSection struct {
	Title string
	Bars  []Bar
}

// Bar is one line: what it is, its length and what stands at its end. A value
// that is no number is drawn as 0.
type Bar struct {
	Label string
	Value float64
	Text  string
	Other bool // the lighter one of two kinds
}

// Parts of the chart in points.
const (
	barEdge      canvas.Points = 8
	barGap       canvas.Points = 6 // beside the words
	barHeading   canvas.Points = 20
	barLine      canvas.Points = 16
	barThickness canvas.Points = 10
	leastBars    canvas.Points = 30 // that the bars keep, however long the words
)

// Height is how tall the chart is, in points.
func (c BarChart) Height() canvas.Points {
	h := 2 * barEdge
	for _, s := range c.Sections {
		h += barHeading + barLine*canvas.Points(len(s.Bars))
	}
	return h
}

// Scene is the chart, as tall as it has to be.
func (c BarChart) Scene() *canvas.Scene {
	lk := c.Look
	if lk == nil {
		lk = &look.Daylight
	}
	g := canvas.Panel{Name: "bars", View: paper(canvas.Px{})}
	left, right := c.columns()
	down := barEdge
	for i, s := range c.Sections {
		id := fmt.Sprintf("%d", i+1)
		line(&g, lk, id+".title", onPaper(barEdge, down+barHeading-6), canvas.Start, s.Title, true)
		down += barHeading
		r := ruler{left, right, c.scale(s)}
		for j, b := range s.Bars {
			r.bar(&g, lk, fmt.Sprintf("%s.%d", id, j+1), down, b)
			down += barLine
		}
		r.zero(&g, lk, id+".zero", down-barLine*canvas.Points(len(s.Bars)), down)
	}
	height := int(math.Ceil(float64(c.Height()) * c.PxPerPoint))
	return &canvas.Scene{Width: c.Width, Height: height, PxPerPoint: c.PxPerPoint, Background: lk.Paper, Title: c.Title, Panels: []canvas.Panel{g}}
}

// columns is where the bars may begin and end: between the longest words.
func (c BarChart) columns() (left, right canvas.Points) {
	label, text := 0.0, 0.0
	for _, s := range c.Sections {
		for _, b := range s.Bars {
			label, text = max(label, look.Width(b.Label, false)), max(text, look.Width(b.Text, true))
		}
	}
	left = barEdge + canvas.Points(label)*look.LabelSize + barGap
	right = canvas.Points(float64(c.Width)/c.PxPerPoint) - barEdge - canvas.Points(text)*look.LabelSize - barGap
	return left, max(right, left+leastBars)
}

// scale is the values that a section's scale has to hold.
func (c BarChart) scale(s BarSection) (values []float64) {
	of := []BarSection{s}
	if c.OneScale {
		of = c.Sections
	}
	for _, s := range of {
		for _, b := range s.Bars {
			values = append(values, sound(b.Value))
		}
	}
	return values
}

func sound(v float64) float64 {
	if math.IsNaN(v) || math.IsInf(v, 0) {
		return 0
	}
	return v
}

// ruler places values between two columns; 0 is always among them.
type ruler struct {
	left, right canvas.Points
	values      []float64
}

// place is where a value stands.
func (r ruler) place(v float64) canvas.Points {
	low, high := 0.0, 0.0
	for _, v := range r.values {
		low, high = min(low, v), max(high, v)
	}
	if high == low {
		return r.left
	}
	return r.left + canvas.Points((v-low)/(high-low))*(r.right-r.left)
}

// bar draws one line at a height.
func (r ruler) bar(g *canvas.Panel, lk *look.Look, id string, down canvas.Points, b Bar) {
	v := sound(b.Value)
	from, to := r.place(0), r.place(v)
	top := down + (barLine-barThickness)/2
	box := canvas.Path{}.Move(onPaper(from, top)).Line(onPaper(to, top)).Line(onPaper(to, top+barThickness)).Line(onPaper(from, top+barThickness)).Close()
	style := canvas.Style{Fill: lk.Teams[0].Run, Stroke: lk.Ink, Width: canvas.Pts(0.8)}
	switch {
	case v < 0:
		style = canvas.Style{Fill: lk.Below, Stroke: lk.Rim, Width: canvas.Pts(0.8), Dash: []canvas.Points{3, 2}}
	case b.Other:
		style.Fill = lk.Kitchen
	}
	g.Add(canvas.Shape{ID: id, Label: b.Label + ": " + b.Text, Layer: canvas.Runs, Path: box, Style: style})
	foot := top + barThickness/2 + look.LabelSize*0.36
	line(g, lk, id+".label", onPaper(r.left-barGap, foot), canvas.Finish, b.Label, false)
	line(g, lk, id+".text", onPaper(r.right+barGap, foot), canvas.Start, b.Text, true)
}

// zero draws the line that the bars begin at.
func (r ruler) zero(g *canvas.Panel, lk *look.Look, id string, top, foot canvas.Points) {
	x := r.place(0)
	g.Add(canvas.Shape{ID: id, Layer: canvas.Marks, Path: canvas.Path{}.Move(onPaper(x, top)).Line(onPaper(x, foot)), Style: canvas.Style{Stroke: lk.Line, Width: canvas.Pts(1)}})
}

// onPaper is a place in points from the picture's upper left corner.
func onPaper(right, down canvas.Points) canvas.Pos { return canvas.Pos{}.Shift(right, down) }

// line is one line of text.
func line(g *canvas.Panel, lk *look.Look, id string, at canvas.Pos, a canvas.Align, s string, bold bool) {
	g.Add(canvas.Shape{ID: id, Label: s, Layer: canvas.Labels, Text: &canvas.Text{At: at, Text: s, Size: look.LabelSize, Bold: bold, Align: a, Colour: lk.Ink}})
}
