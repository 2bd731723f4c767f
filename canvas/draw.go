package canvas

import "math"

// Draw draws the shapes of a scene in the order of their panels and layers.
// The background is the surface's own business.
func Draw(s Surface, scene *Scene) {
	d := drawer{surface: s, scale: scene.PxPerPoint}
	for i := range scene.Panels {
		d.panel(&scene.Panels[i])
	}
}

type drawer struct {
	surface Surface
	scale   float64
	steps   []PxStep
	dash    []float64
	cutter  cutter
}

func (d *drawer) panel(p *Panel) {
	for layer := range layerCount {
		for i := range p.Shapes {
			if p.Shapes[i].Layer == layer {
				d.shape(p, &p.Shapes[i])
			}
		}
	}
}

func (d *drawer) shape(p *Panel, s *Shape) {
	info := Info{p.Name, s.ID, s.Label}
	if s.Text != nil {
		if t, ok := d.text(p.View, s.Text); ok && p.Clip.holds(t.At) {
			d.surface.Text(info, t)
		}
		return
	}
	if s.Image != nil {
		if img, ok := d.image(p.View, s.Image); ok && p.Clip.holds(img.Min) && p.Clip.holds(img.Max) {
			d.surface.Image(info, img)
		}
		return
	}
	if p.View.Lens.On() {
		d.inPerspective(p, s, info)
		return
	}
	if !d.path(p.View, s.Path) {
		return
	}
	style := d.style(s.Style, p.View.PxPerFoot)
	if p.Clip.holdsAll(d.steps, style.Width/2) {
		d.surface.Path(info, d.steps, style)
		return
	}
	d.cutter.flatten(d.steps)
	d.cut(p.Clip, info, style)
}

// inPerspective draws a path through a lens: its curves as chords, without what
// is too near. A stroke to scale is as wide as it is at the path's mean depth.
func (d *drawer) inPerspective(p *Panel, s *Shape, info Info) {
	v := p.View
	whole := d.cutter.through(v, s.Path, d.scale)
	style := d.style(s.Style, v.PxPerFoot/d.cutter.depth())
	if whole {
		d.cutter.project(v)
		if d.draw(info, style, d.cutter.all, p.Clip) {
			return
		}
		d.cut(p.Clip, info, style)
		return
	}
	fill, stroke := parts(style)
	all := d.cutter.all
	for _, part := range []struct {
		style PxStyle
		cut   []outline
	}{{fill, cutFills(all, tooNear)}, {stroke, cutStrokes(all, tooNear)}} {
		d.cutter.all = part.cut
		d.cutter.project(v)
		if !d.draw(info, part.style, d.cutter.all, p.Clip) {
			d.cut(p.Clip, info, part.style)
		}
		info.Label = ""
	}
}

// parts are a style's fill without its stroke and its stroke without its fill.
func parts(s PxStyle) (fill, stroke PxStyle) {
	stroke = s
	stroke.Fill.A = 0
	return PxStyle{Fill: s.Fill}, stroke
}

// cut draws what the clip leaves of the outlines at hand: their fill closed along
// the clip's edges, their stroke not.
func (d *drawer) cut(c Clip, info Info, style PxStyle) {
	fill, stroke := parts(style)
	if fill.Fill.A > 0 {
		d.draw(info, fill, c.cutFills(d.cutter.all), Clip{})
		info.Label = ""
	}
	if stroke.Stroke.A > 0 {
		d.draw(info, stroke, c.cutStrokes(d.cutter.all), Clip{})
	}
}

// draw draws outlines that a clip holds; false if it does not hold them.
func (d *drawer) draw(info Info, style PxStyle, all []outline, c Clip) bool {
	d.steps = d.steps[:0]
	reach := 0.0
	for _, o := range all {
		for i, p := range o.points {
			op := Line
			if i == 0 {
				op = Move
			}
			px := Px{p.x, p.y}
			reach = math.Max(reach, px.reach())
			d.steps = append(d.steps, PxStep{op, [3]Px{px}})
		}
		if o.closed {
			d.steps = append(d.steps, PxStep{Op: Close})
		}
	}
	if len(d.steps) == 0 || style.Fill.A == 0 && style.Stroke.A == 0 {
		return true
	}
	if !c.holdsAll(d.steps, style.Width/2) {
		return false
	}
	if reach <= farthest {
		d.surface.Path(info, d.steps, style)
	}
	return true
}

// farthest is how far from the picture's corner in pixels a shape may reach: a
// farther one is a mistake, and surfaces count in fixed point.
const farthest = 1e6

// path projects q into d.steps; false if it is empty, too far away or not made
// of numbers: one bad place would blank a whole picture on some surfaces.
func (d *drawer) path(v View, q Path) bool {
	d.steps = d.steps[:0]
	reach := 0.0
	for _, s := range q {
		step := PxStep{Op: s.Op}
		for i := range s.P {
			step.P[i] = v.Place(s.P[i], d.scale)
			reach = math.Max(reach, step.P[i].reach())
		}
		d.steps = append(d.steps, step)
	}
	return len(q) > 0 && reach <= farthest
}

// leastDash is the shortest pattern of dashes in pixels that is drawn as one; a
// shorter one cannot be seen, takes for ever, and is a solid line.
const leastDash = 0.01

// style is a style in pixels where a foot takes so many.
func (d *drawer) style(s Style, pxPerFoot float64) PxStyle {
	d.dash = d.dash[:0]
	period := 0.0
	for _, l := range s.Dash {
		px := float64(l) * d.scale
		period += px
		d.dash = append(d.dash, px)
	}
	if !(period >= leastDash) {
		d.dash = d.dash[:0]
	}
	return PxStyle{s.Fill, s.Stroke, s.Width.px(pxPerFoot, d.scale), d.dash, s.Round}
}

// text projects t; false if it is empty or has no place or size.
func (d *drawer) text(v View, t *Text) (PxText, bool) {
	at, pxPerFoot := v.Place(t.At, d.scale), v.PxPerFoot
	if v.Lens.On() {
		depth := v.through(t.At, d.scale).w
		if !(depth > nearest) {
			return PxText{}, false
		}
		pxPerFoot /= depth
	}
	size := Length{t.SizeFt, t.Size}.px(pxPerFoot, d.scale)
	return PxText{at, t.Text, size, t.Bold, t.Align, t.Colour}, t.Text != "" && size > 0 && math.Max(size, at.reach()) <= farthest
}

// image projects an image; false if it has no pixels or no place.
func (d *drawer) image(v View, g *Image) (PxImage, bool) {
	out := PxImage{v.Place(g.Min, d.scale), v.Place(g.Max, d.scale), g.Pix}
	return out, g.Pix != nil && !g.Pix.Rect.Empty() && out.Min.X < out.Max.X && out.Min.Y < out.Max.Y && math.Max(out.Min.reach(), out.Max.reach()) <= farthest
}

// reach is the larger coordinate without its sign; NaN if there is one.
func (p Px) reach() float64 { return math.Max(math.Abs(p.X), math.Abs(p.Y)) }
