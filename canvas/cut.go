package canvas

import (
	"slices"

	"homeside/model/units"
)

// seen is a place seen: through a lens before it is divided by its depth w, on
// the picture in pixels with w 1; moved by a shift on the paper in pixels.
type seen struct {
	x, y, w float64
	shift   Px
}

// toward is the place after a share of the way to another.
func (a seen) toward(b seen, share float64) seen {
	mix := func(a, b float64) float64 { return a + (b-a)*share }
	return seen{mix(a.x, b.x), mix(a.y, b.y), mix(a.w, b.w), Px{mix(a.shift.X, b.shift.X), mix(a.shift.Y, b.shift.Y)}}
}

// through is a place as the view's lens sees it. Points along the axes are as
// long on the ground as at depth 1.
func (v View) through(p Pos, pxPerPoint float64) seen {
	ft := pxPerPoint / v.PxPerFoot
	at := Vec{p.X + units.Feet(float64(p.U)*ft), p.Y + units.Feet(float64(p.V)*ft), p.Z}
	return seen{row(v.Lens.X, at), row(v.Lens.Y, at), row(v.Lens.W, at), Px{float64(p.Right) * pxPerPoint, float64(p.Down) * pxPerPoint}}
}

// seen is where in the picture a place is that a lens sees.
func (v View) seen(s seen) Px {
	k := v.PxPerFoot / max(s.w, nearest)
	return Px{v.Origin.X + s.x*k + s.shift.X, v.Origin.Y + s.y*k + s.shift.Y}
}

// outline is a line of places, closed or not.
type outline struct {
	points []seen
	closed bool
}

// cutter holds the outlines of a path while they are cut.
type cutter struct{ all []outline }

// chords is the number of chords that a curve is cut into: a circle of four
// curves as large as a phone's picture is off by less than a pixel.
const chords = 12

// through takes a path's outlines through a lens and says whether all of it is
// far enough away to be drawn whole.
func (c *cutter) through(v View, q Path, pxPerPoint float64) bool {
	whole := true
	c.outlines(len(q), func(i int) (Op, [3]seen) {
		var p [3]seen
		for k := range p {
			p[k] = v.through(q[i].P[k], pxPerPoint)
		}
		return q[i].Op, p
	})
	for _, o := range c.all {
		for _, p := range o.points {
			whole = whole && p.w >= nearest
		}
	}
	return whole
}

// flatten takes the outlines of a path in pixels.
func (c *cutter) flatten(steps []PxStep) {
	c.outlines(len(steps), func(i int) (Op, [3]seen) {
		var p [3]seen
		for k, px := range steps[i].P {
			p[k] = seen{x: px.X, y: px.Y, w: 1}
		}
		return steps[i].Op, p
	})
}

// outlines makes outlines of n steps. A step that follows no Move is left out;
// one that follows a Close starts where the closed outline did.
func (c *cutter) outlines(n int, step func(i int) (Op, [3]seen)) {
	c.all = c.all[:0]
	for i := range n {
		op, p := step(i)
		if op == Move {
			c.all = append(c.all, outline{points: []seen{p[0]}})
			continue
		}
		if len(c.all) == 0 {
			continue
		}
		o := &c.all[len(c.all)-1]
		if op == Close {
			o.closed = true
			continue
		}
		if o.closed {
			c.all = append(c.all, outline{points: []seen{o.points[0]}})
			o = &c.all[len(c.all)-1]
		}
		o.add(op, p)
	}
}

func (o *outline) add(op Op, p [3]seen) {
	if op == Line {
		o.points = append(o.points, p[0])
		return
	}
	from := o.points[len(o.points)-1]
	for k := range chords {
		u := float64(k+1) / chords
		a, b, c := from.toward(p[0], u), p[0].toward(p[1], u), p[1].toward(p[2], u)
		o.points = append(o.points, a.toward(b, u).toward(b.toward(c, u), u))
	}
}

// depth is the mean depth of the outlines' places, none less than the nearest
// that is drawn; 1 if there are none.
func (c *cutter) depth() float64 {
	sum, n := 0.0, 0
	for _, o := range c.all {
		for _, p := range o.points {
			sum += max(p.w, nearest)
			n++
		}
	}
	if n == 0 {
		return 1
	}
	return sum / float64(n)
}

// project puts the outlines on the picture.
func (c *cutter) project(v View) {
	for _, o := range c.all {
		for i, p := range o.points {
			px := v.seen(p)
			o.points[i] = seen{x: px.X, y: px.Y, w: 1}
		}
	}
}

// within is how far a place is within an edge; negative outside.
type within func(seen) float64

// tooNear is the edge in front of a lens before which nothing is drawn.
func tooNear(p seen) float64 { return p.w - nearest }

// cutFills cuts closed outlines at an edge and closes them along it (Sutherland
// and Hodgman, Reentrant polygon clipping, CACM 17 (1974) 32). Open ones count
// as closed: so they are filled.
func cutFills(all []outline, edge within) []outline {
	var out []outline
	for _, o := range all {
		var kept []seen
		for i, p := range o.points {
			before := o.points[(i+len(o.points)-1)%len(o.points)]
			a, b := edge(before), edge(p)
			if (a < 0) != (b < 0) {
				kept = append(kept, before.toward(p, a/(a-b)))
			}
			if b >= 0 {
				kept = append(kept, p)
			}
		}
		if len(kept) > 0 {
			out = append(out, outline{kept, true})
		}
	}
	return out
}

// cutStrokes cuts outlines at an edge into the open pieces within it; one that is
// not cut stays closed.
func cutStrokes(all []outline, edge within) []outline {
	var out []outline
	for _, o := range all {
		outside := slices.IndexFunc(o.points, func(p seen) bool { return !(edge(p) >= 0) })
		switch {
		case outside < 0:
			out = append(out, o)
		case o.closed: // begun outside, it comes back to where it begins
			out = append(out, pieces(slices.Concat(o.points[outside:], o.points[:outside+1]), edge)...)
		default:
			out = append(out, pieces(o.points, edge)...)
		}
	}
	return out
}

func pieces(points []seen, edge within) []outline {
	var out []outline
	var piece []seen
	for i, p := range points {
		b := edge(p)
		if i > 0 {
			if a := edge(points[i-1]); (a < 0) != (b < 0) {
				piece = append(piece, points[i-1].toward(p, a/(a-b)))
			}
		}
		switch {
		case b >= 0:
			piece = append(piece, p)
		case len(piece) > 0:
			out, piece = append(out, outline{points: piece}), nil
		}
	}
	if len(piece) > 0 {
		out = append(out, outline{points: piece})
	}
	return out
}
