package still

import "homeside/canvas"

// Fragments are parts of pictures as SVG for one document that shares the
// letters' outlines. Its zero value is ready to use.
type Fragments struct{ svg svg }

// Draw is what of a scene is wanted, as SVG elements in pixels.
func (f *Fragments) Draw(scene *canvas.Scene, want func(canvas.Info) bool) string {
	f.svg.body.Reset()
	canvas.Draw(chosen{&f.svg, want}, scene)
	return f.svg.body.String()
}

// Defs are the outlines that all fragments drawn so far use, to stand once in
// the document as a defs element.
func (f *Fragments) Defs() string {
	return "<defs>\n" + f.svg.glyphs.defs.String() + "</defs>\n"
}

// Err is the first thing that went wrong.
func (f *Fragments) Err() error { return f.svg.err }

// chosen passes on the shapes that are wanted.
type chosen struct {
	canvas.Surface
	want func(canvas.Info) bool
}

// Path implements canvas.Surface.
func (c chosen) Path(info canvas.Info, path []canvas.PxStep, style canvas.PxStyle) {
	if c.want(info) {
		c.Surface.Path(info, path, style)
	}
}

// Text implements canvas.Surface.
func (c chosen) Text(info canvas.Info, t canvas.PxText) {
	if c.want(info) {
		c.Surface.Text(info, t)
	}
}

// Image implements canvas.Surface.
func (c chosen) Image(info canvas.Info, g canvas.PxImage) {
	if c.want(info) {
		c.Surface.Image(info, g)
	}
}

var _ canvas.Surface = chosen{}
