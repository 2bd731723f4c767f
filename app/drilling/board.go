package drilling

import (
	"image"
	"image/color"

	"homeside/canvas"
	"homeside/canvas/look"
	"homeside/model/drill"
)

// tone is what a line is in.
type tone uint8

const (
	plain tone = iota
	quiet
	good
	bad
)

// line is a text of a board; a long one is wrapped.
type line struct {
	text string
	size canvas.Points
	bold bool
	tone tone
}

// board is what is shown large: a sign or a court on the left and text beside it,
// or text alone in the middle; the count at the foot.
type board struct {
	sign  *drill.Sign // large on the left or, where there is a court, small above the text
	film  *film
	lines []line
	foot  string
}

// The board's measures in points; the shorter side has 360 of them.
const (
	boardPoints               = 360
	boardMargin               = 14.0
	footSize    canvas.Points = 22
	footRoom                  = 36.0 // of the count at the foot
	smallSign                 = 84.0
)

// room divides a board of a size in pixels.
type room struct {
	w, h  int
	pt    float64
	left  image.Rectangle // the sign or the court; empty for neither
	small image.Rectangle // the sign above the text; empty for none
	text  image.Rectangle
}

func (b board) room(w, h int) room {
	pt := max(min(float64(w)/(boardPoints*1.6), float64(h)/boardPoints), 0.1)
	r := room{w: w, h: h, pt: pt}
	px := func(points float64) int { return int(points * pt) }
	inner := image.Rect(px(boardMargin), px(boardMargin), max(w-px(boardMargin), 1), max(h-px(footRoom), 1))
	r.text = inner
	if b.film == nil && b.sign == nil {
		return r
	}
	r.left = image.Rect(0, 0, w/2, inner.Max.Y)
	if b.film == nil {
		r.left = image.Rect(0, inner.Min.Y, w/2, inner.Max.Y)
	}
	r.text.Min.X = r.left.Max.X + px(boardMargin)
	if b.film != nil && b.sign != nil {
		r.small = image.Rect(0, 0, px(smallSign), px(smallSign)).Add(r.text.Min)
		r.text.Min.Y = r.small.Max.Y + px(boardMargin/2)
	}
	return r
}

// scene is the board's text in a size in pixels.
func (b board) scene(w, h int, lk *look.Look) *canvas.Scene {
	r := b.room(w, h)
	s := &canvas.Scene{Width: w, Height: h, PxPerPoint: r.pt, Background: lk.Paper}
	text := canvas.Panel{Name: "board", View: canvas.View{PxPerFoot: 1}}
	set := fitted(b.lines, float64(r.text.Dx())/r.pt, float64(r.text.Dy())/r.pt)
	set.middle, set.centred = r.left.Empty(), b.film == nil
	set.add(&text, float64(r.text.Min.X)/r.pt, float64(r.text.Min.Y)/r.pt, lk)
	foot := fitted([]line{{b.foot, footSize, true, plain}}, float64(w)/r.pt-2*boardMargin, footRoom)
	foot.middle, foot.centred, foot.name = true, true, "foot"
	foot.add(&text, boardMargin, float64(h)/r.pt-footRoom, lk)
	s.Panels = []canvas.Panel{text}
	return s
}

// colour is a tone's colour.
func (t tone) colour(lk *look.Look) color.NRGBA {
	switch t {
	case quiet:
		return lk.Quiet
	case good:
		return lk.Teams[0].Run
	case bad:
		return lk.Head
	}
	return lk.Ink
}
