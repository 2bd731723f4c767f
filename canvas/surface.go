package canvas

import (
	"image/color"
	"math"
)

// Surface draws shapes in pixels. Implementations are whole: each draws all
// paths and all texts. Slices passed in are only lent for the call.
type Surface interface {
	// Path fills and strokes an outline.
	Path(info Info, path []PxStep, style PxStyle)
	// Text draws one line of text.
	Text(info Info, text PxText)
}

// Info is what a shape is.
type Info struct {
	Panel, ID, Label string
}

// PxStep is a path's step in pixels.
type PxStep struct {
	Op Op
	P  [3]Px
}

// PxStyle is a style in pixels.
type PxStyle struct {
	Fill, Stroke color.NRGBA
	Width        float64
	Dash         []float64
	Round        bool
}

// PxText is a text in pixels. At is on the baseline, at the start, middle or end.
type PxText struct {
	At     Px
	Text   string
	Size   float64
	Bold   bool
	Align  Align
	Colour color.NRGBA
}

// Start is where a text of a width in pixels begins.
func (t PxText) Start(width float64) float64 {
	return t.At.X - width*[...]float64{Centre: 0.5, Start: 0, Finish: 1}[t.Align]
}

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
		if t, ok := d.text(p.View, s.Text); ok {
			d.surface.Text(info, t)
		}
		return
	}
	if d.path(p.View, s.Path) {
		d.surface.Path(info, d.steps, d.style(p.View, s.Style))
	}
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
			step.P[i] = v.place(s.P[i], d.scale)
			reach = math.Max(reach, step.P[i].reach())
		}
		d.steps = append(d.steps, step)
	}
	return len(q) > 0 && reach <= farthest
}

// leastDash is the shortest pattern of dashes in pixels that is drawn as one; a
// shorter one cannot be seen, takes for ever, and is a solid line.
const leastDash = 0.01

func (d *drawer) style(v View, s Style) PxStyle {
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
	return PxStyle{s.Fill, s.Stroke, v.length(s.Width, d.scale), d.dash, s.Round}
}

// text projects t; false if it is empty or has no place or size.
func (d *drawer) text(v View, t *Text) (PxText, bool) {
	at, size := v.place(t.At, d.scale), float64(t.Size)*d.scale
	return PxText{at, t.Text, size, t.Bold, t.Align, t.Colour}, t.Text != "" && size > 0 && math.Max(size, at.reach()) <= farthest
}

// reach is the larger coordinate without its sign; NaN if there is one.
func (p Px) reach() float64 { return math.Max(math.Abs(p.X), math.Abs(p.Y)) }
