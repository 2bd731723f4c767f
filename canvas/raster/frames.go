package raster

import (
	"image"

	"homeside/canvas"
	"homeside/canvas/look"
)

// Frames draws the frames of a moving picture: a static layer is drawn once and
// copied under every frame. It is not safe for two goroutines at once.
type Frames struct {
	base  *image.RGBA
	frame *Raster
}

// NewFrames draws the static layer of a moving picture.
func NewFrames(static *canvas.Scene) *Frames {
	base := Scene(static)
	return &Frames{base, newShared(image.NewRGBA(base.Rect), &look.Faces{})}
}

// Draw draws the moving shapes over the static layer. The image is lent until
// the next call.
func (f *Frames) Draw(moving *canvas.Scene) *image.RGBA {
	copy(f.frame.img.Pix, f.base.Pix)
	canvas.Draw(f.frame, moving)
	return f.frame.img
}
