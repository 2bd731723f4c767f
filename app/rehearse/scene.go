package rehearse

import (
	"image/color"
	"strconv"

	"homeside/app/looks"
	"homeside/canvas"
	"homeside/canvas/compose"
	"homeside/canvas/look"
)

// Sizes of what is said, in points, and shares of the stage.
const (
	eventSize canvas.Points = 19
	lineSize  canvas.Points = 12
	headSize  canvas.Points = 10.5
	warnSize  canvas.Points = 16
	bigSize   canvas.Points = 130
	edge                    = 10
	lead                    = 1.3 // from line to line, of a letter's size

	footHigh  = 92   // of what is said below the court
	mostFoot  = 0.42 // as a share of the stage
	besides   = 0.6  // the court's share where that is beside it
	bigShare  = 0.42 // a digit's height at most, of its room
	bigPlate  = 0.72 // its plate's radius, of its height
	acrossAll = 360  // points across the shorter side of the stage
	alongMost = 760  // points along it at most, however flat it is
)

// rooms divide the stage.
type rooms struct {
	width, height int
	point         float64      // in pixels
	court, said   compose.Area // the court's begins in the corner
	column        bool         // what is said stands beside the court
}

// roomsOf divides a stage: beside an upright court as a whole there is room, below
// the other views.
func roomsOf(width, height int, v view) rooms {
	w, h := float64(width), float64(height)
	r := rooms{width: width, height: height, point: max(min(w, h)/acrossAll, w/alongMost) * float64(looks.Letters())}
	if r.column = v == wholeCourt && width > height; r.column {
		x := float64(int(w * besides))
		r.court, r.said = compose.Area{Max: canvas.Px{X: x, Y: h}}, compose.Area{Min: canvas.Px{X: x}, Max: canvas.Px{X: w, Y: h}}
		return r
	}
	y := float64(int(h - min(footHigh*r.point, h*mostFoot)))
	r.court, r.said = compose.Area{Max: canvas.Px{X: w, Y: y}}, compose.Area{Min: canvas.Px{Y: y}, Max: canvas.Px{X: w, Y: h}}
	return r
}

// sheet is a panel in points from an area's corner, and how many there are.
func (r rooms) sheet(name string, a compose.Area) sheet {
	return sheet{canvas.Panel{Name: name, View: canvas.View{Origin: a.Min, PxPerFoot: 1}}, a.Width() / r.point, a.Height() / r.point}
}

// sheet is a panel that is written on.
type sheet struct {
	canvas.Panel
	wide, high float64
}

// write writes a line and says where the next one stands.
func (s *sheet) write(text string, right, down float64, size canvas.Points, bold bool, a canvas.Align, c color.NRGBA) float64 {
	s.Add(canvas.Shape{
		ID: s.Name + "." + strconv.Itoa(len(s.Shapes)), Label: text, Layer: canvas.Labels,
		Text: &canvas.Text{At: canvas.Pos{Right: canvas.Points(right), Down: canvas.Points(down)}, Text: text, Size: size, Bold: bold, Align: a, Colour: c},
	})
	return down + float64(size)*lead
}

// fill fills the sheet between its edges from one height to another.
func (s *sheet) fill(from, to float64, style canvas.Style) {
	corner := canvas.Pos{Right: edge, Down: canvas.Points(from)}
	w, h := canvas.Points(s.wide-2*edge), canvas.Points(to-from)
	s.Add(canvas.Shape{ID: s.Name + ".plate", Layer: canvas.Ground, Style: style,
		Path: canvas.Path{}.Move(corner).Line(corner.Shift(w, 0)).Line(corner.Shift(w, h)).Line(corner.Shift(0, h)).Close()})
}

// wrapped are texts in lines of a width, no more than so many; the last is cut
// where there were more.
func wrapped(texts []string, most int, width float64, size canvas.Points, bold bool) []string {
	var all []string
	for _, t := range texts {
		all = append(all, compose.Wrap(t, width, size, bold)...)
	}
	if most = max(most, 0); len(all) > most {
		all = all[:most]
		if most > 0 {
			all[most-1] = compose.Shorten(all[most-1]+" …", width, size, bold)
		}
	}
	return all
}

// scene is what is said, drawn beside and over the court.
func (t telling) scene(r rooms, lk *look.Look) *canvas.Scene {
	s := &canvas.Scene{Width: r.width, Height: r.height, PxPerPoint: r.point}
	s.Panels = append(s.Panels, t.beside(r, lk))
	if t.big != "" {
		s.Panels = append(s.Panels, t.digit(r, lk))
	}
	return s
}

// beside are the round, the event and, below, the lines or a warning.
func (t telling) beside(r rooms, lk *look.Look) canvas.Panel {
	p := r.sheet("said", r.said)
	width, down, events := p.wide-2*edge, float64(eventSize)*1.15, 1
	if r.column {
		down = 2 * p.write(t.head, edge, float64(headSize)*2, headSize, false, canvas.Start, lk.Quiet)
		events = 3
	} else {
		p.write(t.head, p.wide-edge, down, headSize, false, canvas.Finish, lk.Quiet)
		width -= look.Width(t.head, false)*float64(headSize) + edge
	}
	for _, line := range wrapped([]string{t.event}, events, width, eventSize, true) {
		down = p.write(line, edge, down, eventSize, true, canvas.Start, lk.Ink)
	}
	if t.warned != "" {
		t.warning(&p, down-float64(eventSize), lk)
		return p.Panel
	}
	fits := int((p.high-down)/(float64(lineSize)*lead)) + 1
	for _, line := range wrapped(t.lines, fits, p.wide-2*edge, lineSize, false) {
		down = p.write(line, edge, down, lineSize, false, canvas.Start, lk.Ink)
	}
	return p.Panel
}

// warning takes the place of the lines from a height on: that paths cross is what
// is to be read now, and the court stays free to show where.
func (t telling) warning(p *sheet, from float64, lk *look.Look) {
	const pad = 0.35 // of a letter's size
	size := float64(warnSize)
	lines := wrapped([]string{t.warned}, max(int((p.high-from-2*pad*size)/(size*lead)), 1), p.wide-4*edge, warnSize, true)
	p.fill(from, from+size*(lead*float64(len(lines))+2*pad), canvas.Style{Fill: lk.Caution.Fill, Stroke: lk.Caution.Letter, Width: canvas.Pts(2)})
	down := from + size*(1+pad)
	for _, line := range lines {
		down = p.write(line, p.wide/2, down, warnSize, true, canvas.Centre, lk.Caution.Letter)
	}
}

// digit stands where the court is least: in the upper corner over it or, where
// something is beside it, at the foot of that. Its plate lets the court shine
// through: partners look for their places while it counts.
func (t telling) digit(r rooms, lk *look.Look) canvas.Panel {
	p := r.sheet("big", r.court)
	if r.column {
		p = r.sheet("big", r.said)
	}
	size := min(bigSize, canvas.Points(min(p.wide, p.high)*bigShare))
	plate := float64(size) * bigPlate
	right, down := p.wide-plate-edge, plate+edge
	if r.column {
		right, down = p.wide/2, p.high-plate-edge
	}
	fill := lk.Plate
	fill.A = 0xD0
	p.Add(canvas.Shape{ID: "big.plate", Layer: canvas.Ground, Path: canvas.Circle(canvas.Pos{Right: canvas.Points(right), Down: canvas.Points(down)}, canvas.Pts(canvas.Points(plate))), Style: canvas.Style{Fill: fill, Stroke: lk.Ink, Width: canvas.Pts(look.Outline)}})
	p.write(t.big, right, down+float64(size)*0.36, size, true, canvas.Centre, lk.Ink)
	return p.Panel
}
