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
	bigShare  = 0.55 // a digit's height at most, of the court's
	acrossAll = 360  // points across the shorter side of the stage
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
	r := rooms{width: width, height: height, point: min(w, h) / acrossAll * float64(looks.Letters())}
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

// fill fills the sheet from the top down to a height.
func (s *sheet) fill(down float64, style canvas.Style) {
	corner := canvas.Pos{}
	w, h := canvas.Points(s.wide), canvas.Points(down)
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
	if t.warned != "" {
		s.Panels = append(s.Panels, t.warning(r, lk))
	}
	return s
}

// beside are the round, the event and the lines.
func (t telling) beside(r rooms, lk *look.Look) canvas.Panel {
	p := r.sheet("said", r.said)
	width, down := p.wide-2*edge, float64(eventSize)*1.15
	if r.column {
		down = 2 * p.write(t.head, edge, float64(headSize)*2, headSize, false, canvas.Start, lk.Quiet)
	} else {
		p.write(t.head, p.wide-edge, down, headSize, false, canvas.Finish, lk.Quiet)
		width -= look.Width(t.head, false)*float64(headSize) + edge
	}
	events := 1
	if r.column {
		events = 3
	}
	for _, line := range wrapped([]string{t.event}, events, width, eventSize, true) {
		down = p.write(line, edge, down, eventSize, true, canvas.Start, lk.Ink)
	}
	fits := int((p.high-down)/(float64(lineSize)*lead)) + 1
	for _, line := range wrapped(t.lines, fits, p.wide-2*edge, lineSize, false) {
		down = p.write(line, edge, down, lineSize, false, canvas.Start, lk.Ink)
	}
	return p.Panel
}

// digit stands in the middle of the court on a plate that lets it shine through.
func (t telling) digit(r rooms, lk *look.Look) canvas.Panel {
	p := r.sheet("big", r.court)
	size := min(bigSize, canvas.Points(p.high*bigShare))
	middle := canvas.Pos{Right: canvas.Points(p.wide / 2), Down: canvas.Points(p.high / 2)}
	plate := lk.Plate
	plate.A = 0xE0
	p.Add(canvas.Shape{ID: "big.plate", Layer: canvas.Ground, Path: canvas.Circle(middle, canvas.Pts(size*0.75)), Style: canvas.Style{Fill: plate, Stroke: lk.Ink, Width: canvas.Pts(look.Outline)}})
	p.write(t.big, p.wide/2, p.high/2+float64(size)*0.36, size, true, canvas.Centre, lk.Ink)
	return p.Panel
}

// warning lies over the top of the court.
func (t telling) warning(r rooms, lk *look.Look) canvas.Panel {
	p := r.sheet("warned", r.court)
	lines := wrapped([]string{t.warned}, 3, p.wide-2*edge, warnSize, true)
	high := float64(warnSize) * (lead*float64(len(lines)) + 0.7)
	p.fill(high, canvas.Style{Fill: lk.Caution.Fill, Stroke: lk.Caution.Letter, Width: canvas.Pts(2)})
	down := float64(warnSize) * 1.3
	for _, line := range lines {
		down = p.write(line, p.wide/2, down, warnSize, true, canvas.Centre, lk.Caution.Letter)
	}
	return p.Panel
}
