package still

import (
	"errors"
	"slices"

	"homeside/canvas"
)

// Fragments are parts of pictures as SVG for one document that shares the
// letters' outlines and can turn dark. Its zero value is ready to use.
type Fragments struct{ svg svg }

// Draw is what of a scene is wanted, as SVG elements in pixels. The scene is given
// twice, in the colours of day, which the elements have, and in those of the dark,
// of which Dark has the rules.
func (f *Fragments) Draw(day, dark *canvas.Scene, want func(canvas.Info) bool) string {
	f.svg.body.Reset()
	var inks inks
	canvas.Draw(chosen{&inks, want}, dark)
	f.svg.dark.begin(inks.all)
	canvas.Draw(chosen{&f.svg, want}, day)
	if len(f.svg.dark.next) > 0 {
		f.svg.dark.unlike = true
	}
	return f.svg.body.String()
}

// Defs are the outlines that all fragments drawn so far use, to stand once in
// the document as a defs element.
func (f *Fragments) Defs() string {
	return "<defs>\n" + f.svg.glyphs.defs.String() + "</defs>\n"
}

// Lacks are the letters drawn so far that no font has, in order: they are empty
// boxes.
func (f *Fragments) Lacks() []rune { return slices.Sorted(slices.Values(f.svg.lacks)) }

// Dark are the rules of a style sheet that give all fragments drawn so far the
// colours of the dark.
func (f *Fragments) Dark() string { return f.svg.dark.rules() }

// errUnlike says that a scene differs in more than colours.
var errUnlike = errors.New("the scene in the dark has other shapes than by day")

// Err is the first thing that went wrong.
func (f *Fragments) Err() error {
	if f.svg.err == nil && f.svg.dark.unlike {
		return errUnlike
	}
	return f.svg.err
}

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
