package compose

import (
	"fmt"
	"math"
	"strconv"

	"homeside/canvas"
	"homeside/model/court"
	"homeside/model/cover"
	"homeside/model/units"
	"homeside/words"
)

// Widths of the lines of equal margin: the edge of cover is the heaviest.
const (
	edgeWidth   canvas.Points = 2.6
	marginWidth canvas.Points = 1
)

// margins draws the lines of equal margin, a shape for each level, and writes the
// figure on each that has room for it.
func (p Picture) margins(g *canvas.Panel, c cover.Map, room *labelRoom) {
	for _, level := range c.Levels() {
		lines := c.Contours(level)
		if len(lines) == 0 {
			continue // the level is met in a single cell's centre
		}
		id, text := "cover.margin."+strconv.Itoa(int(math.Round(float64(level)*1000))), marginText(level)
		g.Add(canvas.Shape{ID: id, Label: marginLabel(level), Layer: canvas.Runs, Path: outlines(lines), Style: p.marginStyle(level)})
		if at, ok := room.find(longest(lines), text); ok {
			p.tag(g, id+".text", canvas.On(at), 0, text)
		}
	}
}

func marginText(level units.Seconds) string {
	if level == 0 {
		return "0 s"
	}
	return fmt.Sprintf("%+.1f s", float64(level))
}

func marginLabel(level units.Seconds) string {
	switch {
	case level == 0:
		return words.T("edge of cover: just in time")
	case level > 0:
		return words.T("in time by %s", words.Seconds(level))
	default:
		return words.T("late by %s", words.Seconds(-level))
	}
}

func (p Picture) marginStyle(level units.Seconds) canvas.Style {
	lk := p.look()
	switch {
	case level == 0:
		return canvas.Style{Stroke: lk.Ink, Width: canvas.Pts(edgeWidth), Round: true}
	case level > 0:
		return canvas.Style{Stroke: lk.Quiet, Width: canvas.Pts(marginWidth)}
	default:
		return canvas.Style{Stroke: lk.Quiet, Width: canvas.Pts(marginWidth), Dash: []canvas.Points{4, 3}}
	}
}

// outlines is the path along all the lines.
func outlines(lines []cover.Contour) canvas.Path {
	var path canvas.Path
	for _, l := range lines {
		path = append(path, canvas.Polyline(l.Points...)...)
		if l.Closed {
			path = path.Close()
		}
	}
	return path
}

// longest is the line of most points, the first of those.
func longest(lines []cover.Contour) []court.Point {
	best := lines[0].Points
	for _, l := range lines {
		if len(l.Points) > len(best) {
			best = l.Points
		}
	}
	return best
}
