package raster

import (
	"bytes"
	"image"

	"homeside/canvas"
)

// Frames draws the frames of a moving picture over a static layer, which is
// drawn once. A frame is made from the one before: where no shape changed,
// nothing is drawn. It is not safe for two goroutines at once.
type Frames struct {
	under    *Raster     // draws the static layer; nil if that is another's
	base     *image.RGBA // the static layer
	before   *image.RGBA // the frame as it was compared last
	frame    *Raster
	old, new *marks
	stale    *Tiles // to be drawn again
	changed  *Tiles
	anew     bool // the static layer has changed: the next frame is drawn whole
}

// NewFrames draws the static layer of a moving picture.
func NewFrames(static *canvas.Scene) *Frames {
	under := New(image.NewRGBA(image.Rect(0, 0, static.Width, static.Height)))
	under.Draw(static)
	f := Over(under.img)
	f.under = under
	return f
}

// Restart gives the picture another static layer, which is drawn once, and its
// next frame is drawn whole. Images and letters are used again where the size
// stays, so that it is cheaper than NewFrames. A layer given to Over stays as it is.
func (f *Frames) Restart(static *canvas.Scene) {
	if f.under == nil || f.base.Rect.Dx() != static.Width || f.base.Rect.Dy() != static.Height {
		*f = *NewFrames(static)
		return
	}
	if static.Background.A < 0xFF {
		clear(f.base.Pix)
	}
	f.under.Draw(static)
	f.old.list, f.new.list = f.old.list[:0], f.new.list[:0]
	f.anew = true
}

// Over is the moving picture over a static layer that is drawn already. The
// layer is only read; several Frames may share it.
func Over(base *image.RGBA) *Frames {
	f := &Frames{base: base, before: clone(base), frame: New(clone(base))}
	f.old, f.new = newMarks(f.frame), newMarks(f.frame)
	f.stale, f.changed = NewTiles(base.Rect.Dx(), base.Rect.Dy()), NewTiles(base.Rect.Dx(), base.Rect.Dy())
	return f
}

func clone(img *image.RGBA) *image.RGBA {
	return &image.RGBA{Pix: bytes.Clone(img.Pix), Stride: img.Stride, Rect: img.Rect}
}

// Draw draws the moving shapes over the static layer. The image is lent until
// the next call.
func (f *Frames) Draw(moving *canvas.Scene) *image.RGBA {
	f.old, f.new = f.new, f.old
	f.new.record(moving)
	f.stale.Clear()
	if f.anew {
		f.stale.Fill()
		f.anew = false
	}
	f.spoil()
	f.spread()
	for box := range f.stale.Boxes() {
		copyBox(f.frame.img, f.base, box)
	}
	f.redraw()
	f.compare()
	return f.frame.img
}

// Changed are the tiles of the last frame that are not as they were in the one
// before, or in the static layer if it is the first. They are lent until the
// next call of Draw.
func (f *Frames) Changed() *Tiles { return f.changed }

// spoil finds the tiles under marks that came, went or changed. Marks that stay
// are paired in the order of both frames, so that what lies over what stays too.
func (f *Frames) spoil() {
	old := f.old.list
	for i := range f.new.list {
		m := &f.new.list[i]
		at := 0
		for at < len(old) && !old[at].sameID(m) {
			at++
		}
		m.stale = true
		if at < len(old) {
			f.drop(old[:at])
			m.stale = !old[at].same(m)
			if m.stale {
				f.drop(old[at : at+1])
			}
			old = old[at+1:]
		}
		if m.stale {
			m.addTo(f.stale)
		}
	}
	f.drop(old)
}

func (f *Frames) drop(gone []mark) {
	for i := range gone {
		gone[i].addTo(f.stale)
	}
}

// spread adds the tiles of all marks that touch a stale one: a mark is drawn
// whole or not at all.
func (f *Frames) spread() {
	for again := true; again; {
		again = false
		for i := range f.new.list {
			m := &f.new.list[i]
			if !m.stale && m.touches(f.stale) {
				m.stale, again = true, true
				m.addTo(f.stale)
			}
		}
	}
}

func (f *Frames) redraw() {
	for i := range f.new.list {
		m := &f.new.list[i]
		switch {
		case !m.stale:
		case m.text.Text != "":
			f.frame.Text(m.id, m.text)
		case m.image.Pix != nil:
			f.frame.Image(m.id, m.image)
		default:
			f.frame.Path(m.id, m.path, m.style)
		}
	}
}

// compare notes which of the stale tiles did change.
func (f *Frames) compare() {
	f.changed.Clear()
	for box := range f.stale.Boxes() {
		if !equalBox(f.frame.img, f.before, box) {
			f.changed.Add(box)
			copyBox(f.before, f.frame.img, box)
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
