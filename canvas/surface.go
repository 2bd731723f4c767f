package canvas

import (
	"image"
	"image/color"
)

// Surface draws shapes in pixels. Implementations are whole: each draws all
// paths, texts and images. Slices passed in are only lent for the call.
type Surface interface {
	// Path fills and strokes an outline.
	Path(info Info, path []PxStep, style PxStyle)
	// Text draws one line of text.
	Text(info Info, text PxText)
	// Image draws a picture made of pixels.
	Image(info Info, image PxImage)
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

// PxImage is an image in pixels: Pix scaled to fill the box from Min to Max. Who
// gives it does not change Pix any more.
type PxImage struct {
	Min, Max Px
	Pix      *image.NRGBA
}
