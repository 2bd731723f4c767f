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

// path projects q into d.steps; false if it is empty or not made of numbers:
// one bad place would blank a whole picture on some surfaces.
func (d *drawer) path(v View, q Path) bool {
	d.steps = d.steps[:0]
	sum := 0.0
	for _, s := range q {
		step := PxStep{Op: s.Op}
		for i := range s.P {
			step.P[i] = v.place(s.P[i], d.scale)
			sum += step.P[i].X + step.P[i].Y
		}
		d.steps = append(d.steps, step)
	}
	return len(q) > 0 && finite(sum)
}

func (d *drawer) style(v View, s Style) PxStyle {
	d.dash = d.dash[:0]
	for _, l := range s.Dash {
		d.dash = append(d.dash, float64(l)*d.scale)
	}
	return PxStyle{s.Fill, s.Stroke, v.length(s.Width, d.scale), d.dash, s.Round}
}

func (d *drawer) text(v View, t *Text) (PxText, bool) {
	at := v.place(t.At, d.scale)
	return PxText{at, t.Text, float64(t.Size) * d.scale, t.Bold, t.Align, t.Colour}, t.Text != "" && finite(at.X+at.Y)
}

func finite(x float64) bool { return !math.IsNaN(x) && !math.IsInf(x, 0) }
