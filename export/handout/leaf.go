package handout

import (
	"image/color"
	"strconv"

	"homeside/canvas"
	"homeside/canvas/look"
)

// leaf is one page. All its lengths are points from the upper left corner of
// the paper, downward.
type leaf struct {
	words                    canvas.Panel
	pictures                 []picture
	left, right, top, bottom float64 // of the room for the sheet's own things
	pageNumber               canvas.Pos
}

// picture is a scene and where its corner lies. Its pixels are points.
type picture struct {
	scene *canvas.Scene
	at    canvas.Px
}

// style is how a text is set.
type style struct {
	size   float64 // of the em
	lead   float64 // from line to line
	bold   bool
	colour color.NRGBA
}

var (
	ink   = look.Daylight.Ink
	quiet = look.Daylight.Quiet
)

// The styles. What is to be read on court has 9 points at least.
var (
	titleStyle = style{size: 17, lead: 21, bold: true, colour: ink}
	kickStyle  = style{size: 9, lead: 12, bold: true, colour: quiet}
	leadStyle  = style{size: 10, lead: 13, colour: ink}
	headStyle  = style{size: 11, lead: 15, bold: true, colour: ink}
	bodyStyle  = style{size: 9, lead: 11.5, colour: ink}
	boldStyle  = style{size: 9, lead: 11.5, bold: true, colour: ink}
	quietStyle = style{size: 9, lead: 11.5, colour: quiet}
	footStyle  = style{size: 9, lead: 11, colour: ink}
	smallStyle = style{size: 8, lead: 10, colour: quiet}
)

// width is a text's width.
func (s style) width(text string) float64 { return look.Width(text, s.bold) * s.size }

// pos is a place on the paper.
func pos(x, y float64) canvas.Pos {
	return canvas.Pos{Right: canvas.Points(x), Down: canvas.Points(y)}
}

func (l *leaf) id() string { return strconv.Itoa(len(l.words.Shapes)) }

// text sets one line on a baseline.
func (l *leaf) text(x, y float64, a canvas.Align, text string, s style) {
	l.words.Add(canvas.Shape{ID: l.id(), Label: text, Layer: canvas.Labels,
		Text: &canvas.Text{At: pos(x, y), Text: text, Size: canvas.Points(s.size), Bold: s.bold, Align: a, Colour: s.colour}})
}

// block sets lines below a height and gives the height below them.
func (l *leaf) block(x, y float64, lines []string, s style) float64 {
	for _, line := range lines {
		l.text(x, y+s.size, canvas.Start, line, s)
		y += s.lead
	}
	return y
}

// line draws a straight line.
func (l *leaf) line(x1, y1, x2, y2, width float64, dash ...canvas.Points) {
	l.words.Add(canvas.Shape{ID: l.id(), Layer: canvas.Lines, Path: canvas.Path{}.Move(pos(x1, y1)).Line(pos(x2, y2)),
		Style: canvas.Style{Stroke: look.Daylight.Line, Width: canvas.Pts(canvas.Points(width)), Dash: dash}})
}

// box draws a rectangle.
func (l *leaf) box(x1, y1, x2, y2 float64, s canvas.Style) {
	path := canvas.Path{}.Move(pos(x1, y1)).Line(pos(x2, y1)).Line(pos(x2, y2)).Line(pos(x1, y2)).Close()
	l.words.Add(canvas.Shape{ID: l.id(), Layer: canvas.Ground, Path: path, Style: s})
}

// badge draws a number in a dark disc about a place.
func (l *leaf) badge(x, y float64, number string) {
	l.words.Add(canvas.Shape{ID: l.id(), Layer: canvas.Marks, Path: canvas.Circle(pos(x, y), canvas.Pts(7)), Style: canvas.Style{Fill: ink}})
	l.text(x, y+3.2, canvas.Centre, number, style{size: 9, bold: true, colour: look.Daylight.Plate})
}

// room is the height that is left below y.
func (l *leaf) room(y float64) float64 { return l.bottom - y }
