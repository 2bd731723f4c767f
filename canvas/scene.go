package canvas

import (
	"image"
	"image/color"

	"homeside/model/units"
)

// Layer orders the shapes of a panel from the ground up.
type Layer uint8

// The layers, bottom first.
const (
	Ground Layer = iota
	Lines
	BallPath
	Runs
	NetLayer
	Shadows
	Players
	BallLayer
	Marks
	Labels
	layerCount
)

// Scene is one picture of Width x Height pixels.
type Scene struct {
	Width, Height int
	PxPerPoint    float64
	Background    color.NRGBA // fully transparent draws none
	Title         string      // for readers of the picture who cannot see it
	Panels        []Panel
}

// Panel is a part of the picture with its own axes. Panels are drawn in order;
// a panel that must hide what is under it brings its own ground.
type Panel struct {
	Name   string
	View   View
	Clip   Clip // what of the picture it may draw on; the zero Clip is all
	Shapes []Shape
}

// Add appends shapes to the panel.
func (p *Panel) Add(s ...Shape) { p.Shapes = append(p.Shapes, s...) }

// Shape is one thing drawn: a path, a text or an image. ID is stable from frame to frame
// and from run to run; Label says what it is to one who cannot see it.
type Shape struct {
	ID    string
	Label string
	Layer Layer
	Path  Path
	Style Style
	Text  *Text  // nil for a path
	Image *Image // nil for a path
}

// Style is how a path is drawn. A colour with alpha 0 draws nothing.
type Style struct {
	Fill   color.NRGBA
	Stroke color.NRGBA
	Width  Length   // of the stroke
	Dash   []Points // on, off, ...; nil is solid
	Round  bool     // round caps and joints; butt caps otherwise
}

// Align places a text about its anchor.
type Align uint8

// The alignments.
const (
	Centre Align = iota
	Start        // begins at the anchor
	Finish       // ends at the anchor
)

// Text is one line of text. It always stands upright, whatever the view.
type Text struct {
	At     Pos // on the baseline
	Text   string
	Size   Points     // of the em
	SizeFt units.Feet // of the em to scale, added to Size
	Bold   bool
	Align  Align
	Colour color.NRGBA
}

// Image is a picture made of pixels, such as a logo, upright between two corners.
type Image struct {
	Min, Max Pos // top left, bottom right
	Pix      *image.NRGBA
}
