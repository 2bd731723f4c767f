package raster

import (
	"image"
	"slices"

	"homeside/canvas"
)

// mark is one shape in pixels, as it is drawn.
type mark struct {
	id    canvas.Info
	path  []canvas.PxStep
	style canvas.PxStyle
	text  canvas.PxText  // without words for a path
	image canvas.PxImage // without pixels for a path
	box   image.Rectangle
	stale bool
}

func (m *mark) sameID(n *mark) bool { return m.id.ID == n.id.ID && m.id.Panel == n.id.Panel }

// same says whether two marks leave the same pixels.
func (m *mark) same(n *mark) bool {
	a, b := m.style, n.style
	return m.box == n.box && m.text == n.text && m.image == n.image && a.Fill == b.Fill && a.Stroke == b.Stroke && a.Width == b.Width &&
		a.Round == b.Round && slices.Equal(a.Dash, b.Dash) && slices.Equal(m.path, n.path)
}

// marks is the Surface that notes what is to be drawn. Its arrays are used again.
type marks struct {
	list   []mark
	steps  []canvas.PxStep
	dashes []float64
	line   []placed
	glyphs *glyphs
}

var _ canvas.Surface = (*marks)(nil)

func (k *marks) record(s *canvas.Scene) {
	k.list, k.steps, k.dashes = k.list[:0], k.steps[:0], k.dashes[:0]
	canvas.Draw(k, s)
}

// Path implements canvas.Surface.
func (k *marks) Path(id canvas.Info, path []canvas.PxStep, s canvas.PxStyle) {
	from, dash := len(k.steps), len(k.dashes)
	k.steps = append(k.steps, path...)
	k.dashes = append(k.dashes, s.Dash...)
	s.Dash = k.dashes[dash:]
	k.list = append(k.list, mark{id: id, path: k.steps[from:], style: s, box: reach(path, overhang(s))})
}

// Text implements canvas.Surface.
func (k *marks) Text(id canvas.Info, t canvas.PxText) {
	m := mark{id: id, text: t}
	k.line = k.glyphs.lay(k.line[:0], t)
	for _, p := range k.line {
		m.box = m.box.Union(p.box)
	}
	k.list = append(k.list, m)
}

// Image implements canvas.Surface.
func (k *marks) Image(id canvas.Info, g canvas.PxImage) {
	k.list = append(k.list, mark{id: id, image: g, box: imageBox(g)})
}
