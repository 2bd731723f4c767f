package raster

import (
	"image"
	"math"

	"github.com/golang/freetype/raster"
	"golang.org/x/image/math/fixed"

	"homeside/canvas"
)

// outlines are the sides of strokes, each a closed outline with the box round it.
type outlines struct {
	polylines
	boxes []image.Rectangle
}

func (o *outlines) reset() {
	o.polylines.reset()
	o.boxes = o.boxes[:0]
}

// end closes the outline that is being added.
func (o *outlines) end() {
	before := o.start()
	o.polylines.end()
	if o.start() > before {
		o.boxes = append(o.boxes, boxOf(o.points[before:]))
	}
}

func boxOf(points []canvas.Px) image.Rectangle {
	low, high := points[0], points[0]
	for _, p := range points[1:] {
		low = canvas.Px{X: min(low.X, p.X), Y: min(low.Y, p.Y)}
		high = canvas.Px{X: max(high.X, p.X), Y: max(high.Y, p.Y)}
	}
	return image.Rect(int(math.Floor(low.X)), int(math.Floor(low.Y)), int(math.Ceil(high.X)), int(math.Ceil(high.Y)))
}

// in calls f with the outlines that may touch a box.
func (o *outlines) in(box image.Rectangle, f func(outline []canvas.Px)) {
	i := 0
	o.each(func(outline []canvas.Px) {
		if o.boxes[i].Overlaps(box) {
			f(outline)
		}
		i++
	})
}

// stroked takes what the stroker makes.
type stroked struct{ *polylines }

var _ raster.Adder = stroked{}

func px(p fixed.Point26_6) canvas.Px {
	return canvas.Px{X: float64(p.X) / 64, Y: float64(p.Y) / 64}
}

func (k stroked) put(p canvas.Px)         { k.points = append(k.points, p) }
func (k stroked) last() canvas.Px         { return k.points[len(k.points)-1] }
func (k stroked) Start(p fixed.Point26_6) { k.put(px(p)) }
func (k stroked) Add1(p fixed.Point26_6)  { k.put(px(p)) }

// bends is how many lines stand for a quarter of a round cap or joint.
const bends = 8

func (k stroked) Add2(b, c fixed.Point26_6) {
	p, q, r := k.last(), px(b), px(c)
	for i := 1; i <= bends; i++ {
		t := float64(i) / bends
		u := 1 - t
		k.put(canvas.Px{X: u*u*p.X + 2*u*t*q.X + t*t*r.X, Y: u*u*p.Y + 2*u*t*q.Y + t*t*r.Y})
	}
}

func (k stroked) Add3(b, c, d fixed.Point26_6) {
	p, q, r, s := k.last(), px(b), px(c), px(d)
	for i := 1; i <= bends; i++ {
		t := float64(i) / bends
		u := 1 - t
		k0, k1, k2, k3 := u*u*u, 3*u*u*t, 3*u*t*t, t*t*t
		k.put(canvas.Px{X: k0*p.X + k1*q.X + k2*r.X + k3*s.X, Y: k0*p.Y + k1*q.Y + k2*r.Y + k3*s.Y})
	}
}
