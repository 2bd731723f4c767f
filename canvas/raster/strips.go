package raster

import (
	"cmp"
	"image"
	"math"
	"slices"

	"homeside/canvas"
)

// strips divide what a stroke can touch into boxes that do not overlap. A line
// across the court is long, thin and slanted: the box round it is nearly empty,
// and filling it, or drawing again all that is in it, costs far more than the line.
type strips struct {
	boxes []image.Rectangle
	spans []span
}

// span is a part of a strip, in pixels across it.
type span struct{ strip, low, high int }

const (
	stripSide = 8 * TileSide               // how wide a strip is
	smallest  = 32 * (TileSide * TileSide) // pixels: a smaller box is not divided
	nearby    = 2 * TileSide               // parts of a strip that are nearer are one
)

// divide divides the part of a box that strokes along lines touch, which reach
// margin beyond them. The boxes are lent until the next call.
func (s *strips) divide(box image.Rectangle, lines *polylines, margin float64) []image.Rectangle {
	s.boxes, s.spans = s.boxes[:0], s.spans[:0]
	if box.Dx()*box.Dy() < smallest {
		s.boxes = append(s.boxes, box)
		return s.boxes
	}
	lying := box.Dx() >= box.Dy()
	row := turned(box, lying)
	lines.each(func(outline []canvas.Px) {
		for i := 1; i < len(outline); i++ {
			s.add(along(outline[i-1], lying), along(outline[i], lying), margin, row)
		}
	})
	slices.SortFunc(s.spans, func(a, b span) int { return cmp.Or(cmp.Compare(a.strip, b.strip), cmp.Compare(a.low, b.low)) })
	s.join(box, lying)
	return s.boxes
}

// along is a point with its first number along the row of strips.
func along(p canvas.Px, lying bool) canvas.Px {
	if lying {
		return p
	}
	return canvas.Px{X: p.Y, Y: p.X}
}

func turned(b image.Rectangle, lying bool) image.Rectangle {
	if lying {
		return b
	}
	return image.Rect(b.Min.Y, b.Min.X, b.Max.Y, b.Max.X)
}

// add notes what a line touches of every strip of a row.
func (s *strips) add(a, b canvas.Px, margin float64, row image.Rectangle) {
	if a.X > b.X {
		a, b = b, a
	}
	from, to := max(a.X-margin, float64(row.Min.X)), min(b.X+margin, float64(row.Max.X))
	for k := int(from) / stripSide; float64(k*stripSide) < to; k++ {
		low, high := across(a, b, float64(k*stripSide)-margin, float64((k+1)*stripSide)+margin)
		low, high = max(low-margin, float64(row.Min.Y)), min(high+margin, float64(row.Max.Y))
		if low < high {
			s.spans = append(s.spans, span{k, int(math.Floor(low)), int(math.Ceil(high))})
		}
	}
}

// across is how far across the row a line from a on to b reaches between two
// places along it.
func across(a, b canvas.Px, from, to float64) (low, high float64) {
	if a.X == b.X {
		return min(a.Y, b.Y), max(a.Y, b.Y)
	}
	slope := (b.Y - a.Y) / (b.X - a.X)
	at := func(x float64) float64 { return a.Y + (min(max(x, a.X), b.X)-a.X)*slope }
	low, high = at(from), at(to)
	return min(low, high), max(low, high)
}

// join makes boxes of the sorted parts of strips.
func (s *strips) join(box image.Rectangle, lying bool) {
	for i := 0; i < len(s.spans); {
		one := s.spans[i]
		for i++; i < len(s.spans) && s.spans[i].strip == one.strip && s.spans[i].low < one.high+nearby; i++ {
			one.high = max(one.high, s.spans[i].high)
		}
		strip := image.Rect(one.strip*stripSide, one.low, (one.strip+1)*stripSide, one.high)
		if strip = turned(strip, lying).Intersect(box); !strip.Empty() {
			s.boxes = append(s.boxes, strip)
		}
	}
}
