package raster

import (
	"image"
	"math"

	"homeside/canvas"
)

// rect is a box in pixels whose sides are level and plumb. Courts, zones, panels and
// bars are such boxes, and many are as large as the picture: nothing of them need be
// worked out but their edges.
type rect struct{ low, high canvas.Px }

// rectOf is the rect round which a path runs once; false for any other path.
func rectOf(path []canvas.PxStep) (rect, bool) {
	if len(path) != 5 || path[0].Op != canvas.Move || path[4].Op != canvas.Close {
		return rect{}, false
	}
	for _, s := range path[1:4] {
		if s.Op != canvas.Line {
			return rect{}, false
		}
	}
	a, b, c, d := path[0].P[0], path[1].P[0], path[2].P[0], path[3].P[0]
	lying := near(a.Y, b.Y) && near(b.X, c.X) && near(c.Y, d.Y) && near(d.X, a.X)
	standing := near(a.X, b.X) && near(b.Y, c.Y) && near(c.X, d.X) && near(d.Y, a.Y)
	return rect{canvas.Px{X: min(a.X, c.X), Y: min(a.Y, c.Y)}, canvas.Px{X: max(a.X, c.X), Y: max(a.Y, c.Y)}}, lying || standing
}

// near says whether two places are one, however they were reached.
func near(a, b float64) bool { return math.Abs(a-b) < 1e-6 }

// fillRect fills a rect inside a box: in a picture that is a row for its upper edge,
// one for its lower, and one that stands for all between.
func (r *Raster) fillRect(q rect, box image.Rectangle, s canvas.PxStyle) {
	for y := box.Min.Y; y < box.Max.Y; {
		share, end := cover(y, q.low.Y, q.high.Y), y+1
		if share == 1 {
			end = max(end, min(box.Max.Y, int(q.high.Y)))
		}
		r.row = r.row[:0]
		for x := box.Min.X; x < box.Max.X; x++ {
			r.row = append(r.row, byte(almost256*share*cover(x, q.low.X, q.high.X)))
		}
		r.lay(image.Rect(box.Min.X, y, box.Max.X, end), &image.Alpha{Pix: r.row}, s.Fill)
		y = end
	}
}

// almost256 makes 255 of all of a pixel, as golang.org/x/image/vector does.
const almost256 = 255.99998

// cover is how much of a pixel lies between two places.
func cover(px int, low, high float64) float64 {
	return max(min(float64(px+1), high)-max(float64(px), low), 0)
}
