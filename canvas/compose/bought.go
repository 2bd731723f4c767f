package compose

import (
	"fmt"
	"math"

	"homeside/canvas"
	"homeside/canvas/look"
	"homeside/model/flight"
	"homeside/model/rally"
	"homeside/model/units"
)

// TimeChart is a small chart of the time that a return buys until a third of
// 15 m/s reaches the kitchen line: height to the right, depth upward (the
// deepest on top), lines of equal time.
type TimeChart struct {
	Time          rally.TimeBought
	Set           units.Seconds // what the returner needs to be set; 0 draws no line for it
	Look          *look.Look    // nil means look.Daylight
	Width, Height int           // pixels
	PxPerPoint    float64
}

// Parts of the chart in points.
const (
	chartLeft   = 34
	chartRight  = 12
	chartTop    = 24
	chartBottom = 30
)

// levelStep is the time between two lines.
const levelStep units.Seconds = 0.25

// Scene is the chart.
func (c TimeChart) Scene() *canvas.Scene {
	lk := c.Look
	if lk == nil {
		lk = &look.Daylight
	}
	g := canvas.Panel{Name: "time bought", View: paper(canvas.Px{})}
	c.frame(&g, lk)
	c.levels(&g, lk)
	c.set(&g, lk)
	c.own(&g, lk)
	return &canvas.Scene{Width: c.Width, Height: c.Height, PxPerPoint: c.PxPerPoint, Background: lk.Paper, Title: "Time the return buys", Panels: []canvas.Panel{g}}
}

func (c TimeChart) size() (w, h float64) {
	return float64(c.Width)/c.PxPerPoint - chartLeft - chartRight, float64(c.Height)/c.PxPerPoint - chartTop - chartBottom
}

// at is the place of an apex and a depth.
func (c TimeChart) at(apex, depth units.Feet) canvas.Pos {
	w, h := c.size()
	first, last := c.Time.Apexes[0], c.Time.Apexes[len(c.Time.Apexes)-1]
	deepest := c.Time.Depths[len(c.Time.Depths)-1]
	x := float64((apex - first) / (last - first))
	return canvas.Pos{}.Shift(chartLeft+canvas.Points(x*w), chartTop+canvas.Points(float64(depth/deepest)*h))
}

func (c TimeChart) frame(g *canvas.Panel, lk *look.Look) {
	first, last := c.Time.Apexes[0], c.Time.Apexes[len(c.Time.Apexes)-1]
	deepest := c.Time.Depths[len(c.Time.Depths)-1]
	box := canvas.Path{}.Move(c.at(first, 0)).Line(c.at(last, 0)).Line(c.at(last, deepest)).Line(c.at(first, deepest)).Close()
	g.Add(canvas.Shape{ID: "frame", Layer: canvas.Ground, Path: box, Style: canvas.Style{Fill: lk.Court, Stroke: lk.Line, Width: canvas.Pts(1)}})
	for apex := math.Ceil(float64(first)/4) * 4; apex <= float64(last); apex += 4 {
		c.text(g, lk, fmt.Sprintf("apex.%.0f", apex), c.at(units.Feet(apex), deepest).Shift(0, 11), canvas.Centre, fmt.Sprintf("%.0f ft", apex))
	}
	for depth := units.Feet(0); depth <= deepest; depth += 5 {
		c.text(g, lk, fmt.Sprintf("depth.%.0f", float64(depth)), c.at(first, depth).Shift(-4, 3), canvas.Finish, fmt.Sprintf("%.0f ft", float64(depth)))
	}
	c.text(g, lk, "axis.apex", c.at((first+last)/2, deepest).Shift(0, 23), canvas.Centre, "top of the return")
	c.text(g, lk, "axis.depth", c.at(first, 0).Shift(-chartLeft+4, -8), canvas.Start, "lands inside the baseline by")
}

func (c TimeChart) text(g *canvas.Panel, lk *look.Look, id string, at canvas.Pos, a canvas.Align, s string) {
	g.Add(canvas.Shape{ID: id, Label: s, Layer: canvas.Labels, Text: &canvas.Text{At: at, Text: s, Size: look.LabelSize, Align: a, Colour: lk.Ink}})
}

// levels draws the lines of equal time with their times at the foot.
func (c TimeChart) levels(g *canvas.Panel, lk *look.Look) {
	lo, hi := c.span()
	for k := math.Ceil(float64(lo / levelStep)); units.Seconds(k)*levelStep <= hi; k++ {
		level := units.Seconds(k) * levelStep
		path, foot := c.level(level)
		if len(path) < 2 {
			continue
		}
		id := fmt.Sprintf("level.%.2f", float64(level))
		g.Add(canvas.Shape{ID: id, Layer: canvas.Runs, Label: fmt.Sprintf("%.2f s", float64(level)), Path: path, Style: canvas.Style{Stroke: lk.Teams[0].Run, Width: canvas.Pts(1.2)}})
		Picture{Look: c.Look}.tag(g, id+".text", c.inside(foot), -8, fmt.Sprintf("%.2f s", float64(level)))
	}
}

// inside is a place moved to the left so that a figure there stays in the picture.
func (c TimeChart) inside(at canvas.Pos) canvas.Pos {
	const half = 22
	at.Right = min(at.Right, canvas.Points(float64(c.Width)/c.PxPerPoint)-half)
	return at
}

// span is the least and the greatest time on the chart.
func (c TimeChart) span() (lo, hi units.Seconds) {
	lo = units.Seconds(math.Inf(1))
	for _, row := range c.Time.Bought {
		for _, b := range row {
			if b.Reason == flight.Possible {
				lo, hi = min(lo, b.Line), max(hi, b.Line)
			}
		}
	}
	return lo, hi
}

// level is the line of one time: the time grows along every row, so that each
// row is passed at most once. foot is its lowest place.
func (c TimeChart) level(want units.Seconds) (path canvas.Path, foot canvas.Pos) {
	for i, row := range c.Time.Bought {
		for j := 1; j < len(row); j++ {
			a, b := row[j-1], row[j]
			if a.Reason != flight.Possible || b.Reason != flight.Possible || a.Line > want || b.Line < want || a.Line == b.Line {
				continue
			}
			share := units.Feet((want - a.Line) / (b.Line - a.Line))
			foot = c.at(c.Time.Apexes[j-1]+(c.Time.Apexes[j]-c.Time.Apexes[j-1])*share, c.Time.Depths[i])
			if len(path) == 0 {
				path = path.Move(foot)
			} else {
				path = path.Line(foot)
			}
			break
		}
	}
	return path, foot
}

// set draws the line on which the returner is just set when the third arrives:
// left of it the returner is late.
func (c TimeChart) set(g *canvas.Panel, lk *look.Look) {
	path, foot := c.level(c.Set)
	if c.Set <= 0 || len(path) < 2 {
		return
	}
	g.Add(canvas.Shape{
		ID: "set", Layer: canvas.Marks, Label: fmt.Sprintf("just set in time: %.2f s", float64(c.Set)), Path: path,
		Style: canvas.Style{Stroke: lk.Ink, Width: canvas.Pts(2.6), Dash: []canvas.Points{7, 3}},
	})
	Picture{Look: c.Look}.tag(g, "set.text", foot, -26, "just set")
}

// own marks the play's return.
func (c TimeChart) own(g *canvas.Panel, lk *look.Look) {
	t := c.Time
	if t.Apex < t.Apexes[0] || t.Apex > t.Apexes[len(t.Apexes)-1] || t.Depth < 0 || t.Depth > t.Depths[len(t.Depths)-1] {
		return
	}
	g.Add(canvas.Shape{
		ID: "own", Layer: canvas.Marks, Label: fmt.Sprintf("this return: %.2f s", float64(t.Own.Line)),
		Path:  canvas.Circle(c.at(t.Apex, t.Depth), canvas.Pts(4)),
		Style: canvas.Style{Fill: lk.Ball, Stroke: lk.Ink, Width: canvas.Pts(look.Outline)},
	})
}
