package raster

import (
	"bytes"
	"image"
	"image/color"

	"homeside/canvas"
)

// Frames draws the frames of a moving picture over a static layer. A frame is
// made from the one before: where no shape changed, nothing is drawn. It is not
// safe for two goroutines at once.
type Frames struct {
	base    *layer // the static one; nil if that is another's
	paper   color.NRGBA
	moving  *layer
	before  *image.RGBA // the frame as it was compared last
	changed *Tiles
}

// NewFrames draws the static layer of a moving picture.
func NewFrames(static *canvas.Scene) *Frames {
	base := newLayer(image.NewUniform(static.Background), image.NewRGBA(image.Rect(0, 0, static.Width, static.Height)))
	base.stale.Fill()
	base.draw(static)
	base.stale.Clear()
	f := Over(base.top.img)
	f.base, f.paper = base, static.Background
	return f
}

// Over is the moving picture over a static layer that is drawn already. The
// layer is only read; several Frames may share it.
func Over(base *image.RGBA) *Frames {
	return &Frames{before: clone(base), moving: newLayer(base, clone(base)), changed: NewTiles(base.Rect.Dx(), base.Rect.Dy())}
}

func clone(img *image.RGBA) *image.RGBA {
	return &image.RGBA{Pix: bytes.Clone(img.Pix), Stride: img.Stride, Rect: img.Rect}
}

// Restart gives the picture another static layer, which is made from the one
// before like a frame. A layer given to Over stays as it is.
func (f *Frames) Restart(static *canvas.Scene) {
	if f.base == nil || f.before.Rect.Dx() != static.Width || f.before.Rect.Dy() != static.Height {
		*f = *NewFrames(static)
		return
	}
	if static.Background != f.paper {
		f.base.under, f.paper = image.NewUniform(static.Background), static.Background
		f.base.stale.Fill()
	}
	f.base.draw(static)
	f.moving.stale.Join(f.base.stale)
	f.base.stale.Clear()
}

// Draw draws the moving shapes over the static layer. The image is lent until
// the next call.
func (f *Frames) Draw(moving *canvas.Scene) *image.RGBA {
	f.moving.draw(moving)
	f.compare()
	f.moving.stale.Clear()
	return f.moving.top.img
}

// Changed are the tiles of the last frame that are not as they were in the one
// before, or in the static layer if it is the first. They are lent until the
// next call of Draw.
func (f *Frames) Changed() *Tiles { return f.changed }

// compare notes which of the stale tiles did change.
func (f *Frames) compare() {
	f.changed.Clear()
	img := f.moving.top.img
	for box := range f.moving.stale.Boxes() {
		if !equalBox(img, f.before, box) {
			f.changed.Add(box)
			copyBox(f.before, img, box)
		}
	}
}

func copyBox(to, from *image.RGBA, box image.Rectangle) {
	for y := box.Min.Y; y < box.Max.Y; y++ {
		i, j := to.PixOffset(box.Min.X, y), to.PixOffset(box.Max.X, y)
		copy(to.Pix[i:j], from.Pix[i:j])
	}
}

func equalBox(a, b *image.RGBA, box image.Rectangle) bool {
	for y := box.Min.Y; y < box.Max.Y; y++ {
		i, j := a.PixOffset(box.Min.X, y), a.PixOffset(box.Max.X, y)
		if !bytes.Equal(a.Pix[i:j], b.Pix[i:j]) {
			return false
		}
	}
	return true
}
