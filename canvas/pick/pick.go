package pick

import (
	"math"

	"homeside/canvas"
)

// At is the ID of the topmost shape at a pixel for which want is true; false if
// there is none. Reach is how many pixels beside a shape still count.
func At(s *canvas.Scene, at canvas.Px, reach float64, want func(id string) bool) (string, bool) {
	f := finder{at: at, reach: reach, want: want}
	canvas.Draw(&f, s)
	return f.found, f.ok
}

type finder struct {
	at    canvas.Px
	reach float64
	want  func(string) bool
	found string
	ok    bool
}

// Path implements canvas.Surface: later shapes lie on top.
func (f *finder) Path(info canvas.Info, path []canvas.PxStep, s canvas.PxStyle) {
	if !f.want(info.ID) {
		return
	}
	lines := flatten(path)
	near := f.reach
	if s.Stroke.A > 0 {
		near += s.Width / 2
	}
	if s.Fill.A > 0 && inside(lines, f.at) || distance(lines, f.at) <= near {
		f.found, f.ok = info.ID, true
	}
}

// Text implements canvas.Surface: texts are not picked, their plates are.
func (f *finder) Text(canvas.Info, canvas.PxText) {}

// Image implements canvas.Surface: images are not picked.
func (f *finder) Image(canvas.Info, canvas.PxImage) {}

// curveChords is the number of chords a curve is picked by.
const curveChords = 12

// flatten is the outlines of a path as polylines.
func flatten(path []canvas.PxStep) [][]canvas.Px {
	var out [][]canvas.Px
	add := func(p canvas.Px) { out[len(out)-1] = append(out[len(out)-1], p) }
	for _, s := range path {
		switch {
		case s.Op == canvas.Move:
			out = append(out, []canvas.Px{s.P[0]})
		case len(out) == 0: // nothing can start without a Move
		case s.Op == canvas.Line:
			add(s.P[0])
		case s.Op == canvas.Close:
			add(out[len(out)-1][0])
		default:
			from := out[len(out)-1][len(out[len(out)-1])-1]
			for i := range curveChords {
				add(cubic(from, s.P, float64(i+1)/curveChords))
			}
		}
	}
	return out
}

func cubic(a canvas.Px, p [3]canvas.Px, u float64) canvas.Px {
	v := 1 - u
	w := [4]float64{v * v * v, 3 * v * v * u, 3 * v * u * u, u * u * u}
	return canvas.Px{
		X: w[0]*a.X + w[1]*p[0].X + w[2]*p[1].X + w[3]*p[2].X,
		Y: w[0]*a.Y + w[1]*p[0].Y + w[2]*p[1].Y + w[3]*p[2].Y,
	}
}

// inside counts crossings to the right (even-odd rule).
func inside(lines [][]canvas.Px, p canvas.Px) bool {
	in := false
	for _, l := range lines {
		for i := range l {
			a, b := l[i], l[(i+1)%len(l)]
			if (a.Y > p.Y) != (b.Y > p.Y) && p.X < a.X+(b.X-a.X)*(p.Y-a.Y)/(b.Y-a.Y) {
				in = !in
			}
		}
	}
	return in
}

// distance is from p to the nearest line; +Inf without lines.
func distance(lines [][]canvas.Px, p canvas.Px) float64 {
	d := math.Inf(1)
	for _, l := range lines {
		for i := 1; i < len(l); i++ {
			d = min(d, toSegment(l[i-1], l[i], p))
		}
	}
	return d
}

func toSegment(a, b, p canvas.Px) float64 {
	dx, dy := b.X-a.X, b.Y-a.Y
	share := 0.0
	if n := dx*dx + dy*dy; n > 0 {
		share = min(max(((p.X-a.X)*dx+(p.Y-a.Y)*dy)/n, 0), 1)
	}
	return math.Hypot(a.X+share*dx-p.X, a.Y+share*dy-p.Y)
}
