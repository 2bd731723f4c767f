package film

import (
	"image/color"
	"strconv"

	"homeside/canvas"
	"homeside/canvas/compose"
	"homeside/canvas/look"
)

// board is a panel that words are written on, in pixels of the picture.
type board struct {
	panel canvas.Panel
	scale float64 // pixels per point of the scene
	look  *look.Look
	over  bool // the picture is laid over something else
}

func (f *Film) board(s *canvas.Scene, name string) *board {
	return &board{canvas.Panel{Name: name, View: canvas.View{PxPerFoot: 1}}, s.PxPerPoint, f.look(), f.over}
}

func (b *board) points(px float64) canvas.Points { return canvas.Points(px / b.scale) }

func (b *board) at(p canvas.Px) canvas.Pos {
	return canvas.Pos{Right: b.points(p.X), Down: b.points(p.Y)}
}

// box fills an area.
func (b *board) box(id string, a compose.Area, fill color.NRGBA) {
	path := canvas.Path{}.Move(b.at(a.Min)).Line(b.at(canvas.Px{X: a.Max.X, Y: a.Min.Y})).Line(b.at(a.Max)).Line(b.at(canvas.Px{X: a.Min.X, Y: a.Max.Y})).Close()
	b.panel.Add(canvas.Shape{ID: id, Layer: canvas.Ground, Path: path, Style: canvas.Style{Fill: fill}})
}

// typeface is how a block of lines is set.
type typeface struct {
	em     float64 // px
	bold   bool
	align  canvas.Align
	colour color.NRGBA
}

// Lines stand so far apart, and their first baseline so far below their top, in ems.
const (
	lead   = 1.3
	ascent = 0.98
)

// lines writes lines below each other from a top; x is their start, middle or end.
func (b *board) lines(id string, x, top float64, lines []string, t typeface) {
	for i, line := range lines {
		b.panel.Add(canvas.Shape{
			ID: id + "." + strconv.Itoa(i), Label: line, Layer: canvas.Labels,
			Text: &canvas.Text{
				At: b.at(canvas.Px{X: x, Y: top + t.em*(ascent+lead*float64(i))}), Text: line,
				Size: b.points(t.em), Bold: t.bold, Align: t.align, Colour: t.colour,
			},
		})
	}
}

// wrapped breaks a text into at most rows lines of a width in pixels, even ones where
// nothing has to be cut.
func wrapped(text string, width, em float64, bold bool, rows int) []string {
	if rows < 1 {
		return nil
	}
	lines := compose.Wrap(text, width, canvas.Points(em), bold)
	if len(lines) > rows {
		rest := ""
		for _, l := range lines[rows-1:] {
			rest += l + " "
		}
		return append(lines[:rows-1:rows-1], compose.Shorten(rest[:len(rest)-1]+" …", width, canvas.Points(em), bold))
	}
	return compose.Balanced(text, width, canvas.Points(em), bold)
}

// widest is the width in pixels of the widest line.
func widest(lines []string, em float64, bold bool) float64 {
	most := 0.0
	for _, l := range lines {
		most = max(most, look.Width(l, bold)*em)
	}
	return most
}
