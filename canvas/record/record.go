package record

import (
	"fmt"
	"image/color"
	"strings"

	"homeside/canvas"
)

// Recorder is the Surface. The zero value is ready to use.
type Recorder struct{ b strings.Builder }

var _ canvas.Surface = (*Recorder)(nil)

// Scene is the text of a whole scene.
func Scene(s *canvas.Scene) string {
	var r Recorder
	canvas.Draw(&r, s)
	return r.String()
}

// String is what was drawn so far.
func (r *Recorder) String() string { return r.b.String() }

// Path writes one line: panel, id, fill, stroke, outline.
func (r *Recorder) Path(info canvas.Info, path []canvas.PxStep, s canvas.PxStyle) {
	fmt.Fprintf(&r.b, "%s %s", info.Panel, info.ID)
	if s.Fill.A > 0 {
		fmt.Fprintf(&r.b, " fill %s", hex(s.Fill))
	}
	if s.Stroke.A > 0 {
		fmt.Fprintf(&r.b, " stroke %s %.1f", hex(s.Stroke), s.Width)
	}
	for _, d := range s.Dash {
		fmt.Fprintf(&r.b, " dash %.1f", d)
	}
	for _, p := range path {
		r.step(p)
	}
	r.b.WriteByte('\n')
}

func (r *Recorder) step(s canvas.PxStep) {
	r.b.WriteByte(' ')
	r.b.WriteByte("MLCZ"[s.Op])
	for _, p := range s.P[:[...]int{1, 1, 3, 0}[s.Op]] {
		fmt.Fprintf(&r.b, " %.1f,%.1f", p.X, p.Y)
	}
}

// Text writes one line: panel, id, place, size, words.
func (r *Recorder) Text(info canvas.Info, t canvas.PxText) {
	fmt.Fprintf(&r.b, "%s %s text %.1f,%.1f size %.1f %q %s\n", info.Panel, info.ID, t.At.X, t.At.Y, t.Size, t.Text, hex(t.Colour))
}

// Image writes one line: panel, id, place, the image's own size in pixels.
func (r *Recorder) Image(info canvas.Info, g canvas.PxImage) {
	size := g.Pix.Rect.Size()
	fmt.Fprintf(&r.b, "%s %s image %.1f,%.1f %.1f,%.1f of %dx%d\n", info.Panel, info.ID, g.Min.X, g.Min.Y, g.Max.X, g.Max.Y, size.X, size.Y)
}

func hex(c color.NRGBA) string {
	if c.A == 255 {
		return fmt.Sprintf("#%02x%02x%02x", c.R, c.G, c.B)
	}
	return fmt.Sprintf("#%02x%02x%02x%02x", c.R, c.G, c.B, c.A)
}
