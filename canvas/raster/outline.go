package raster

import (
	"math"

	"homeside/canvas"
)

// polylines are outlines made of straight lines. They lie in one array, which
// is used again.
type polylines struct {
	points []canvas.Px
	ends   []int // of each outline in points
}

func (p *polylines) reset() { p.points, p.ends = p.points[:0], p.ends[:0] }

// end closes the outline that is being added; one of a single point is dropped.
func (p *polylines) end() {
	start := p.start()
	if len(p.points)-start < 2 {
		p.points = p.points[:start]
		return
	}
	p.ends = append(p.ends, len(p.points))
}

func (p *polylines) start() int {
	if n := len(p.ends); n > 0 {
		return p.ends[n-1]
	}
	return 0
}

func (p *polylines) each(f func(outline []canvas.Px)) {
	from := 0
	for _, to := range p.ends {
		f(p.points[from:to])
		from = to
	}
}

// flatten makes a path straight. With seams, every closed outline begins in the
// middle of its first side.
func (p *polylines) flatten(path []canvas.PxStep, seams bool) {
	p.reset()
	var corner, start canvas.Px
	for i, s := range path {
		switch s.Op {
		case canvas.Move:
			p.end()
			corner, start = s.P[0], s.P[0]
			if seams {
				start = seam(path[i:])
			}
			p.points = append(p.points, start)
		case canvas.Line:
			p.points = append(p.points, s.P[0])
		case canvas.Curve:
			p.curve(s.P)
		case canvas.Close:
			if start != corner {
				p.points = append(p.points, corner)
			}
			p.points = append(p.points, start)
		}
	}
	p.end()
}

// tolerance is how far in pixels a straightened curve may be off.
const tolerance = 0.05

// curve adds a cubic Bézier from the last point. Divided into n lines, it is off
// by 6/8 of its largest second difference over n squared at most (Wang's formula).
func (p *polylines) curve(c [3]canvas.Px) {
	if len(p.points) == 0 {
		return
	}
	const most = 1000 // lines
	a := p.points[len(p.points)-1]
	bend := math.Max(math.Hypot(a.X-2*c[0].X+c[1].X, a.Y-2*c[0].Y+c[1].Y), math.Hypot(c[0].X-2*c[1].X+c[2].X, c[0].Y-2*c[1].Y+c[2].Y))
	n := int(math.Ceil(math.Min(math.Sqrt(0.75*bend/tolerance), most)))
	for i := 1; i < n; i++ {
		t := float64(i) / float64(n)
		u := 1 - t
		k0, k1, k2, k3 := u*u*u, 3*u*u*t, 3*u*t*t, t*t*t
		p.points = append(p.points, canvas.Px{X: k0*a.X + k1*c[0].X + k2*c[1].X + k3*c[2].X, Y: k0*a.Y + k1*c[0].Y + k2*c[1].Y + k3*c[2].Y})
	}
	p.points = append(p.points, c[2])
}

// seam is where to begin an outline: the middle of the first side of a closed
// one. A closed outline's stroke ends in two caps, which leave a notch at a
// corner and fit together on a side.
func seam(path []canvas.PxStep) canvas.Px {
	start := path[0].P[0]
	if len(path) < 2 || path[1].Op != canvas.Line {
		return start
	}
	for _, s := range path[1:] {
		switch s.Op {
		case canvas.Move:
			return start
		case canvas.Close:
			next := path[1].P[0]
			return canvas.Px{X: (start.X + next.X) / 2, Y: (start.Y + next.Y) / 2}
		}
	}
	return start
}

// dash cuts outlines into dashes: on, off, ... in pixels.
func (p *polylines) dash(outlines *polylines, lengths []float64) {
	p.reset()
	outlines.each(func(outline []canvas.Px) {
		at, k, left := outline[0], 0, lengths[0]
		p.points = append(p.points, at)
		for i := 1; i < len(outline); {
			next := outline[i]
			d := math.Hypot(next.X-at.X, next.Y-at.Y)
			if on := k%2 == 0; d <= left {
				at, left = next, left-d
				i++
				p.put(on, at)
				continue
			}
			share := left / d
			at = canvas.Px{X: at.X + share*(next.X-at.X), Y: at.Y + share*(next.Y-at.Y)}
			p.put(k%2 == 0, at)
			p.end()
			k++
			left = lengths[k%len(lengths)]
			p.put(k%2 == 0, at)
		}
		p.end()
	})
}

func (p *polylines) put(on bool, at canvas.Px) {
	if on {
		p.points = append(p.points, at)
	}
}
