package compose

import (
	"fmt"
	"math"

	"homeside/canvas"
	"homeside/canvas/look"
	"homeside/model/advice"
	"homeside/model/flight"
	"homeside/model/rally"
	"homeside/model/units"
	"homeside/words"
)

// ReturnChart is a small chart of what a return gives, by its height (to the
// right) and how far inside the baseline it lands (downward): lines of equal
// time. Make it with TimesOf or MarginsOf and say its size.
type ReturnChart struct {
	Look          *look.Look // nil means look.Daylight
	Width, Height int        // pixels
	PxPerPoint    float64

	title          string
	apexes, depths []units.Feet
	value          func(row, column int) (units.Seconds, bool) // false where there is no such return
	set            units.Seconds                               // the value at which the returner is just set
	hasSet         bool
	figure         string     // how a value is written
	depth, apex    units.Feet // of the play's own return
}

// TimesOf charts the time until a third of 15 m/s reaches the kitchen line. set
// is what the returner needs of it to be set; 0 draws no line for that.
func TimesOf(t rally.TimeBought, set units.Seconds) ReturnChart {
	return ReturnChart{
		title: words.T("Time the return buys"), apexes: t.Apexes, depths: t.Depths, set: set, hasSet: set > 0, figure: "%.2f s", depth: t.Depth, apex: t.Apex,
		value: func(i, j int) (units.Seconds, bool) {
			b := t.Bought[i][j]
			return b.Line, b.Reason == flight.Possible
		},
	}
}

// MarginsOf charts the time that the returner has to spare, below 0 too little,
// to stand at the target when the third arrives; the play's own return is marked.
func MarginsOf(c advice.Chart, depth, apex units.Feet) ReturnChart {
	return ReturnChart{
		title: words.T("Margin of the returner"), apexes: c.Apexes, depths: c.Depths, hasSet: true, figure: "%+.2f s", depth: depth, apex: apex,
		value: func(i, j int) (units.Seconds, bool) {
			return c.Margin[i][j], c.Reason[i][j] == flight.Possible
		},
	}
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
func (c ReturnChart) Scene() *canvas.Scene {
	lk := c.Look
	if lk == nil {
		lk = &look.Daylight
	}
	g := canvas.Panel{Name: "return", View: paper(canvas.Px{})}
	c.frame(&g, lk)
	c.levels(&g, lk)
	c.setLine(&g, lk)
	c.own(&g, lk)
	return &canvas.Scene{Width: c.Width, Height: c.Height, PxPerPoint: c.PxPerPoint, Background: lk.Paper, Title: c.title, Panels: []canvas.Panel{g}}
}

func (c ReturnChart) size() (w, h float64) {
	return float64(c.Width)/c.PxPerPoint - chartLeft - chartRight, float64(c.Height)/c.PxPerPoint - chartTop - chartBottom
}

// at is the place of an apex and a depth.
func (c ReturnChart) at(apex, depth units.Feet) canvas.Pos {
	w, h := c.size()
	first, last := c.apexes[0], c.apexes[len(c.apexes)-1]
	deepest := c.depths[len(c.depths)-1]
	x := float64((apex - first) / (last - first))
	return canvas.Pos{}.Shift(chartLeft+canvas.Points(x*w), chartTop+canvas.Points(float64(depth/deepest)*h))
}

// axisSteps is from one figure to the next on the axes of height and of depth.
func axisSteps() (high, deep units.Feet) {
	if words.Measured() == words.Metric {
		return units.Metres(1).Feet(), units.Metres(2).Feet()
	}
	return 4, 5
}

func (c ReturnChart) frame(g *canvas.Panel, lk *look.Look) {
	first, last := c.apexes[0], c.apexes[len(c.apexes)-1]
	deepest := c.depths[len(c.depths)-1]
	box := canvas.Path{}.Move(c.at(first, 0)).Line(c.at(last, 0)).Line(c.at(last, deepest)).Line(c.at(first, deepest)).Close()
	g.Add(canvas.Shape{ID: "frame", Layer: canvas.Ground, Path: box, Style: canvas.Style{Fill: lk.Court, Stroke: lk.Line, Width: canvas.Pts(1)}})
	high, deep := axisSteps()
	for apex := units.Feet(math.Ceil(float64(first/high))) * high; apex <= last; apex += high {
		c.text(g, lk, fmt.Sprintf("apex.%.0f", float64(apex)), c.at(apex, deepest).Shift(0, 11), canvas.Centre, words.Whole(apex))
	}
	for depth := units.Feet(0); depth <= deepest; depth += deep {
		c.text(g, lk, fmt.Sprintf("depth.%.0f", float64(depth)), c.at(first, depth).Shift(-4, 3), canvas.Finish, words.Whole(depth))
	}
	c.text(g, lk, "axis.apex", c.at((first+last)/2, deepest).Shift(0, 23), canvas.Centre, words.T("top of the return"))
	c.text(g, lk, "axis.depth", c.at(first, 0).Shift(-chartLeft+4, -8), canvas.Start, words.T("lands inside the baseline by"))
}

func (c ReturnChart) text(g *canvas.Panel, lk *look.Look, id string, at canvas.Pos, a canvas.Align, s string) {
	g.Add(canvas.Shape{ID: id, Label: s, Layer: canvas.Labels, Text: &canvas.Text{At: at, Text: s, Size: look.LabelSize, Align: a, Colour: lk.Ink}})
}

// levels draws the lines of equal time with their times at the foot.
func (c ReturnChart) levels(g *canvas.Panel, lk *look.Look) {
	lo, hi := c.span()
	for k := math.Ceil(float64(lo / levelStep)); units.Seconds(k)*levelStep <= hi; k++ {
		level := units.Seconds(k) * levelStep
		path, foot := c.level(level)
		if len(path) < 2 || c.hasSet && level == c.set { // the line of just set has its own words
			continue
		}
		id := fmt.Sprintf("level.%.2f", float64(level))
		g.Add(canvas.Shape{ID: id, Layer: canvas.Runs, Label: fmt.Sprintf(c.figure, float64(level)), Path: path, Style: canvas.Style{Stroke: lk.Teams[0].Run, Width: canvas.Pts(1.2)}})
		Picture{Look: c.Look}.tag(g, id+".text", c.inside(foot), figureRise(int(k)), fmt.Sprintf(c.figure, float64(level)))
	}
}

// figureRise is how far above its line's foot a figure stands: by turns, so that
// neighbours do not cover one another.
func figureRise(line int) canvas.Points {
	if line%2 == 0 {
		return -8
	}
	return -24
}

// inside is a place moved to the left so that a figure there stays in the picture.
func (c ReturnChart) inside(at canvas.Pos) canvas.Pos {
	const half = 22
	at.Right = min(at.Right, canvas.Points(float64(c.Width)/c.PxPerPoint)-half)
	return at
}

// span is the least and the greatest value on the chart.
func (c ReturnChart) span() (lo, hi units.Seconds) {
	lo, hi = units.Seconds(math.Inf(1)), units.Seconds(math.Inf(-1))
	for i := range c.depths {
		for j := range c.apexes {
			if v, ok := c.value(i, j); ok {
				lo, hi = min(lo, v), max(hi, v)
			}
		}
	}
	return lo, hi
}

// level is the line of one value: it grows along every row, so that each row is
// passed at most once. foot is the line's lowest place.
func (c ReturnChart) level(want units.Seconds) (path canvas.Path, foot canvas.Pos) {
	for i := range c.depths {
		at, ok := c.passes(i, want)
		if !ok {
			continue
		}
		foot = c.at(at, c.depths[i])
		if len(path) == 0 {
			path = path.Move(foot)
		} else {
			path = path.Line(foot)
		}
	}
	return path, foot
}

// passes is the apex at which a row passes a value, straight between columns.
func (c ReturnChart) passes(row int, want units.Seconds) (units.Feet, bool) {
	for j := 1; j < len(c.apexes); j++ {
		a, okA := c.value(row, j-1)
		b, okB := c.value(row, j)
		if okA && okB && a <= want && want <= b && a < b {
			return c.apexes[j-1] + (c.apexes[j]-c.apexes[j-1])*units.Feet((want-a)/(b-a)), true
		}
	}
	return 0, false
}

// setLine draws the line on which the returner is just set when the third
// arrives: left of it the returner is late.
func (c ReturnChart) setLine(g *canvas.Panel, lk *look.Look) {
	path, foot := c.level(c.set)
	if !c.hasSet || len(path) < 2 {
		return
	}
	g.Add(canvas.Shape{
		ID: "set", Layer: canvas.Marks, Label: words.T("just set when the third arrives"), Path: path,
		Style: canvas.Style{Stroke: lk.Ink, Width: canvas.Pts(2.6), Dash: []canvas.Points{7, 3}},
	})
	Picture{Look: c.Look}.tag(g, "set.text", c.inside(foot), -41, words.T("just set"))
}

// own marks the play's return where it is on the chart.
func (c ReturnChart) own(g *canvas.Panel, lk *look.Look) {
	deepest := c.depths[len(c.depths)-1]
	if c.apex < c.apexes[0] || c.apex > c.apexes[len(c.apexes)-1] || c.depth < 0 || c.depth > deepest {
		return
	}
	g.Add(canvas.Shape{
		ID: "own", Layer: canvas.Marks, Label: words.T("this return"),
		Path:  canvas.Circle(c.at(c.apex, c.depth), canvas.Pts(4)),
		Style: canvas.Style{Fill: lk.Ball, Stroke: lk.Rim, Width: canvas.Pts(look.Outline)},
	})
}
