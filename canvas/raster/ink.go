package raster

import (
	"image"
	"image/draw"
	"math"

	"golang.org/x/image/vector"

	"homeside/canvas"
)

// ink fills outlines inside a box of a picture. Winding is not zero inside.
type ink struct {
	area vector.Rasterizer
	box  image.Rectangle
	mask image.Alpha
	pen  canvas.Px // from the box's corner
	from canvas.Px // where the outline began
}

func (k *ink) begin(box image.Rectangle) {
	k.box = box
	k.area.Reset(box.Dx(), box.Dy())
}

// pour is the mask of what was added; it is lent until the next call.
func (k *ink) pour() *image.Alpha {
	size := k.area.Bounds()
	if n := size.Dx() * size.Dy(); n > cap(k.mask.Pix) {
		k.mask.Pix = make([]byte, n)
	}
	k.mask = image.Alpha{Pix: k.mask.Pix[:size.Dx()*size.Dy()], Stride: size.Dx(), Rect: size}
	k.area.DrawOp = draw.Src
	k.area.Draw(&k.mask, size, image.Opaque, image.Point{})
	return &k.mask
}

func (k *ink) move(p canvas.Px) {
	k.pen = canvas.Px{X: p.X - float64(k.box.Min.X), Y: p.Y - float64(k.box.Min.Y)}
	k.from = k.pen
}

func (k *ink) line(p canvas.Px) {
	k.to(canvas.Px{X: p.X - float64(k.box.Min.X), Y: p.Y - float64(k.box.Min.Y)})
}

// close goes back to where the outline began.
func (k *ink) close() { k.to(k.from) }

func (k *ink) outline(points []canvas.Px) {
	k.move(points[0])
	for _, p := range points[1:] {
		k.line(p)
	}
	k.close()
}

// to adds a line as far as it counts: above and below the box nothing does, and
// left and right of it only how far down it goes, since the rasteriser counts
// in fixed point.
func (k *ink) to(b canvas.Px) {
	a, w, h := k.pen, float64(k.box.Dx()), float64(k.box.Dy())
	k.pen = b
	a, b, ok := upright(a, b, h)
	if !ok {
		return
	}
	if min(a.X, b.X) >= 0 && max(a.X, b.X) <= w {
		k.add(a, b)
		return
	}
	edges := [2]float64{0, w}
	if a.X > b.X {
		edges = [2]float64{w, 0}
	}
	for _, edge := range edges {
		if (a.X < edge) != (b.X < edge) {
			middle := canvas.Px{X: edge, Y: a.Y + (edge-a.X)/(b.X-a.X)*(b.Y-a.Y)}
			k.beside(a, middle, w)
			a = middle
		}
	}
	k.beside(a, b, w)
}

// upright is the part of a line between the heights 0 and h; false if it has
// no height.
func upright(a, b canvas.Px, h float64) (canvas.Px, canvas.Px, bool) {
	if a.Y == b.Y || max(a.Y, b.Y) <= 0 || min(a.Y, b.Y) >= h {
		return a, b, false
	}
	slope := (b.X - a.X) / (b.Y - a.Y)
	cut := func(p canvas.Px) canvas.Px {
		y := min(max(p.Y, 0), h)
		if y == p.Y {
			return p
		}
		return canvas.Px{X: a.X + (y-a.Y)*slope, Y: y}
	}
	return cut(a), cut(b), true
}

// beside adds a line that does not cross the sides of the box.
func (k *ink) beside(a, b canvas.Px, w float64) {
	a.X, b.X = min(max(a.X, 0), w), min(max(b.X, 0), w)
	k.add(a, b)
}

// longest is how many rows down a line goes in one piece: the rasteriser loses up
// to a 512th of a pixel of a slope in every row.
const longest = 16

func (k *ink) add(a, b canvas.Px) {
	k.area.MoveTo(float32(a.X), float32(a.Y))
	for n := math.Ceil(math.Abs(b.Y-a.Y) / longest); n > 1; n-- {
		a.X += (b.X - a.X) / n
		a.Y += (b.Y - a.Y) / n
		k.area.LineTo(float32(a.X), float32(a.Y))
	}
	k.area.LineTo(float32(b.X), float32(b.Y))
}
