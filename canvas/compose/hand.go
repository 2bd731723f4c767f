package compose

import (
	"strconv"

	"homeside/canvas"
	"homeside/canvas/look"
	"homeside/model/drill"
	"homeside/words"
)

// HandPanel is the name of the panel with a hand sign.
const HandPanel = "hand"

// Hand is a hand sign, large, as the partner behind sees it: the back of a hand
// that points down. It fits a square of side px pixels. lk nil means look.Daylight.
func Hand(sign drill.Sign, px int, lk *look.Look) *canvas.Scene {
	if lk == nil {
		lk = &look.Daylight
	}
	s := &canvas.Scene{Width: px, Height: px, PxPerPoint: float64(px) / handSide, Title: words.SignName(sign)}
	h := hand{panel: canvas.Panel{Name: HandPanel, View: paper(canvas.Px{})}, look: lk, label: s.Title}
	h.draw(sign)
	s.Panels = []canvas.Panel{h.panel}
	return s
}

// handSide is the side of the square in points that a hand is drawn in.
const handSide = 100

// finger is a stroke of a hand from its root to its tip, in points of the square.
type finger struct{ root, tip [2]canvas.Points }

// Fingers of an open hand, thumb first, and of a hand that shows two.
var (
	fanned = []finger{{xy(32, 40), xy(13, 56)}, {xy(36, 52), xy(28, 88)}, {xy(46, 54), xy(45, 94)}, {xy(56, 54), xy(60, 92)}, {xy(65, 50), xy(75, 82)}}
	two    = []finger{{xy(43, 52), xy(36, 92)}, {xy(57, 52), xy(64, 92)}}
	curled = []finger{{xy(36, 56), xy(36, 63)}, {xy(46, 58), xy(46, 66)}, {xy(56, 58), xy(56, 66)}, {xy(65, 56), xy(65, 62)}}
)

func xy(right, down canvas.Points) [2]canvas.Points { return [2]canvas.Points{right, down} }

// hand is one being drawn.
type hand struct {
	panel canvas.Panel
	look  *look.Look
	label string
	n     int
}

// Widths of a hand's parts in points.
const (
	fingerWidth canvas.Points = 11
	palmWidth   canvas.Points = 34
	wristWidth  canvas.Points = 24
	handOutline canvas.Points = 3
)

func (h *hand) draw(sign drill.Sign) {
	palm := []finger{{xy(50, 2), xy(50, 26)}}
	switch sign {
	case drill.OpenHand:
		h.parts(palm, fanned)
	case drill.TwoFingers:
		h.parts(palm, append([]finger{}, two...))
	case drill.Fist:
		h.parts(palm, curled)
	default:
		h.parts(palm, nil)
		h.hide()
	}
}

// parts draws wrist, fingers and palm: all outlines first, then all insides, so
// that they are one shape.
func (h *hand) parts(wrist, fingers []finger) {
	back := finger{xy(42, 42), xy(59, 42)}
	for _, grow := range []canvas.Points{handOutline, 0} {
		c := h.look.Plate
		if grow > 0 {
			c = h.look.Ink
		}
		h.stroke(wrist[0], wristWidth+grow, c)
		for _, f := range fingers {
			h.stroke(f, fingerWidth+grow, c)
		}
		h.stroke(back, palmWidth+grow, c)
	}
	h.creases(fingers)
}

func (h *hand) stroke(f finger, width canvas.Points, c colour) {
	h.add(canvas.Shape{
		Path:  canvas.Path{}.Move(inSquare(f.root)).Line(inSquare(f.tip)),
		Style: canvas.Style{Stroke: c, Width: canvas.Pts(width), Round: true},
	})
}

// creases are the knuckles: a short line at each finger's root.
func (h *hand) creases(fingers []finger) {
	for _, f := range fingers {
		a, b := f.root, f.root
		a[0], b[0], a[1], b[1] = a[0]-3, b[0]+3, a[1]-4, b[1]-4
		h.stroke(finger{a, b}, 1.4, h.look.Ink)
	}
}

// hide lays a paddle over the hand: nobody can read it.
func (h *hand) hide() {
	h.add(canvas.Shape{
		Path:  boxAbout(inSquare(xy(50, 58)), -30, -22, 30, 30),
		Style: canvas.Style{Fill: h.look.Surface, Stroke: h.look.Ink, Width: canvas.Pts(handOutline / 2)},
	})
	h.add(canvas.Shape{Text: &canvas.Text{At: inSquare(xy(50, 76)), Text: "?", Size: 40, Bold: true, Colour: h.look.Ink}})
}

// add names a shape by its number and, once, by what the hand shows.
func (h *hand) add(s canvas.Shape) {
	s.ID, s.Layer = "part."+strconv.Itoa(h.n), canvas.Marks
	if h.n == 0 {
		s.Label = h.label
	}
	h.n++
	h.panel.Add(s)
}

func inSquare(at [2]canvas.Points) canvas.Pos { return canvas.Pos{Right: at[0], Down: at[1]} }
