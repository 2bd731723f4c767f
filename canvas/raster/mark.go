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
	parts []image.Rectangle // of the box that it touches; nil for all of it
}

func (m *mark) sameID(n *mark) bool { return m.id.ID == n.id.ID && m.id.Panel == n.id.Panel }

// addTo puts the tiles that a mark touches into a set.
func (m *mark) addTo(t *Tiles) {
	if m.parts == nil {
		t.Add(m.box)
	}
	for _, part := range m.parts {
		t.Add(part)
	}
}

// touches says whether a mark touches a tile of a set.
func (m *mark) touches(t *Tiles) bool {
	return m.parts == nil && t.Touches(m.box) || slices.ContainsFunc(m.parts, t.Touches)
}

// same says whether two marks leave the same pixels.
func (m *mark) same(n *mark) bool {
	a, b := m.style, n.style
	return m.box == n.box && m.text == n.text && m.image == n.image && a.Fill == b.Fill && a.Stroke == b.Stroke && a.Width == b.Width &&
		a.Round == b.Round && slices.Equal(a.Dash, b.Dash) && slices.Equal(m.path, n.path)
}

func (m *mark) draw(r *Raster) {
	switch {
	case m.text.Text != "":
		r.Text(m.id, m.text)
	case m.image.Pix != nil:
		r.Image(m.id, m.image)
	default:
		r.Path(m.id, m.path, m.style)
	}
}

// marks is the Surface that notes what is to be drawn. Its arrays are used again.
type marks struct {
	list   []mark
	steps  []canvas.PxStep
	dashes []float64
	parts  []image.Rectangle
	line   []placed
	glyphs *glyphs

	picture  image.Rectangle
	straight polylines
	strips   strips
}

var _ canvas.Surface = (*marks)(nil)

// newMarks notes what r will draw.
func newMarks(r *Raster) *marks { return &marks{glyphs: &r.glyphs, picture: r.img.Rect} }

func (k *marks) record(s *canvas.Scene) {
	k.list, k.steps, k.dashes, k.parts = k.list[:0], k.steps[:0], k.dashes[:0], k.parts[:0]
	canvas.Draw(k, s)
}

// Path implements canvas.Surface.
func (k *marks) Path(id canvas.Info, path []canvas.PxStep, s canvas.PxStyle) {
	from, dash := len(k.steps), len(k.dashes)
	k.steps = append(k.steps, path...)
	k.dashes = append(k.dashes, s.Dash...)
	s.Dash = k.dashes[dash:]
	m := mark{id: id, path: k.steps[from:], style: s, box: reach(path, overhang(s))}
	if s.Fill.A == 0 {
		m.parts = k.divide(m)
	}
	k.list = append(k.list, m)
}

// divide is what a stroke touches of its box.
func (k *marks) divide(m mark) []image.Rectangle {
	box, from := m.box.Intersect(k.picture), len(k.parts)
	if box.Empty() {
		return nil
	}
	k.straight.flatten(m.path, false)
	k.parts = append(k.parts, k.strips.divide(box, &k.straight, overhang(m.style))...)
	return k.parts[from:]
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
