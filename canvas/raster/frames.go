package raster

import (
	"bytes"
	"image"
	"image/color"
	"iter"

	"homeside/canvas"
	"homeside/internal/large"
)

// Frames draws the frames of a moving picture over a static layer. A frame is
// made from the one before: where no shape changed, nothing is drawn. It is not
// safe for two goroutines at once.
type Frames struct {
	base    *layer // the static one; nil if that is another's
	paper   color.NRGBA
	moving  *layer
	was     []byte // the pixels of the stale tiles in the frame before
	changed *Tiles
}

// NewFrames draws the static layer of a moving picture.
func NewFrames(static *canvas.Scene) *Frames {
	base := newLayer(image.NewUniform(static.Background), large.RGBA(static.Width, static.Height))
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
	top := &image.RGBA{Pix: large.Clone(base.Pix), Stride: base.Stride, Rect: base.Rect}
	return &Frames{moving: newLayer(base, top), changed: NewTiles(base.Rect.Dx(), base.Rect.Dy())}
}

// Restart gives the picture another static layer, which is made from the one
// before like a frame. A layer given to Over stays as it is.
func (f *Frames) Restart(static *canvas.Scene) {
	if f.base == nil || f.base.top.img.Rect.Size() != image.Pt(static.Width, static.Height) {
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
	f.moving.note(moving)
	f.save()
	f.moving.redraw()
	f.compare()
	f.moving.stale.Clear()
	return f.moving.top.img
}

// Changed are the tiles of the last frame that are not as they were in the one
// before, or in the static layer if it is the first. They are lent until the
// next call of Draw.
func (f *Frames) Changed() *Tiles { return f.changed }

// save keeps the pixels of the stale tiles.
func (f *Frames) save() {
	if n := 4 * f.moving.stale.Pixels(); n > cap(f.was) {
		f.was = large.Bytes(n)
	}
	f.was = f.was[:0]
	for row := range f.rows() {
		f.was = append(f.was, row...)
	}
}

// compare notes which of the stale tiles did change.
func (f *Frames) compare() {
	f.changed.Clear()
	was := f.was
	for row, box := range f.rows() {
		if !bytes.Equal(row, was[:len(row)]) {
			f.changed.Add(box)
		}
		was = was[len(row):]
	}
}

// rows are the rows of pixels of the stale tiles, each with its tile.
func (f *Frames) rows() iter.Seq2[[]byte, image.Rectangle] {
	return func(yield func([]byte, image.Rectangle) bool) {
		img := f.moving.top.img
		for box := range f.moving.stale.Boxes() {
			for y := box.Min.Y; y < box.Max.Y; y++ {
				if !yield(img.Pix[img.PixOffset(box.Min.X, y):img.PixOffset(box.Max.X, y)], box) {
					return
				}
			}
		}
	}
}
