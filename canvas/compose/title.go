package compose

import (
	"image/color"
	"strconv"
	"strings"

	"homeside/canvas"
	"homeside/canvas/look"
	"homeside/model/units"
)

type (
	colour = color.NRGBA
	feet   = units.Feet
)

func degrees(i int) units.Degrees { return units.Degrees(i) }

// Points of the words' layout.
const (
	textMargin                  = 10
	titleBaseline canvas.Points = 20
	clockWidth                  = 64
	titleLead                   = 18
	titleRows                   = 2    // above the court
	rises                       = 0.75 // of a letter over its baseline, in ems
	falls                       = 0.25 // and below it
)

// title draws the play's title in its area, on a ground of its own: the picture
// may be laid over something else.
func (p Picture) title(l Layout) canvas.Panel {
	c := canvas.Panel{Name: "title", View: paper(l.Title.Min)}
	c.Add(canvas.Shape{ID: "plate", Layer: canvas.Ground, Path: paperBox(0, 0, l.Title.Width()/l.PxPerPoint, l.Title.Height()/l.PxPerPoint), Style: canvas.Style{Fill: p.look().Paper}})
	lines, left, baseline := p.titleLines(l), l.titleLeft(), l.titleBaseline()
	for i, line := range lines {
		c.Add(canvas.Shape{
			ID: "line." + strconv.Itoa(i), Label: line, Layer: canvas.Labels,
			Text: &canvas.Text{At: canvas.Pos{Right: left, Down: baseline + titleLead*canvas.Points(i)}, Text: line, Size: look.TitleSize, Bold: true, Align: canvas.Start, Colour: p.look().Ink},
		})
	}
	return c
}

// titleLines is at most two lines above the court or as many as fit above the
// clock beside it.
func (p Picture) titleLines(l Layout) []string {
	width, rows := l.lines(l.Title).Width()/l.PxPerPoint, titleRows
	if l.Column {
		room := l.Title.Height()/l.PxPerPoint - float64(l.titleBaseline()+2*look.TitleSize)
		rows = 1 + int(max(room, 0)/titleLead)
	} else {
		width -= clockWidth
	}
	return firstRows(Wrap(p.Rally.Play.Title, width, look.TitleSize, true), rows, width, look.TitleSize)
}

// titleLeft is where the title's lines begin, in points from its area.
func (l Layout) titleLeft() canvas.Points {
	return canvas.Points((l.lines(l.Title).Min.X - l.Title.Min.X) / l.PxPerPoint)
}

// titleBaseline is where its first line stands, in points from the top of its area.
func (l Layout) titleBaseline() canvas.Points {
	from := canvas.Points((l.lines(l.Title).Min.Y - l.Title.Min.Y) / l.PxPerPoint)
	return max(titleBaseline, from+rises*look.TitleSize)
}

// firstRows are the first so many lines; what is left out is marked in the last.
func firstRows(lines []string, rows int, width float64, size canvas.Points) []string {
	if len(lines) <= rows || rows < 1 {
		return lines
	}
	return append(lines[:rows-1], Shorten(strings.Join(lines[rows-1:], " "), width, size, true))
}

// paperBox is a closed rectangle in points from the panel's corner.
func paperBox(left, top, right, bottom float64) canvas.Path {
	return boxAbout(canvas.Pos{}, canvas.Points(left), canvas.Points(top), canvas.Points(right), canvas.Points(bottom))
}

// boxAbout is a closed rectangle on the paper about a place, in points to the
// right of it and below it.
func boxAbout(at canvas.Pos, left, top, right, bottom canvas.Points) canvas.Path {
	return canvas.Path{}.Move(at.Shift(left, top)).Line(at.Shift(right, top)).
		Line(at.Shift(right, bottom)).Line(at.Shift(left, bottom)).Close()
}
