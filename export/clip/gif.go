package clip

import (
	"context"
	"fmt"
	"image"
	"io"

	"homeside/canvas/raster"
	"homeside/export"
	"homeside/internal/large"
)

// GIFMaxFPS is the fastest GIF: players take a delay below 2 hundredths of a
// second for a slow one.
const GIFMaxFPS = 50

// WriteGIF writes a stretch of a play as a GIF that repeats for ever: one
// palette for the whole clip, exact if 255 colours are enough, no dithering, and
// of every frame the rectangle that changed, in which what did not is
// transparent. Delays are whole hundredths of a second whose remainders are
// carried on, so that the clip keeps time. o may be nil.
func WriteGIF(ctx context.Context, w io.Writer, src export.Source, o *export.Options) error {
	f, err := newFilm(src, o, "a GIF", GIFMaxFPS)
	if err != nil {
		return err
	}
	palette, err := f.palette(ctx)
	if err != nil {
		return err
	}
	if _, err := w.Write(gifHeader(f.o.Width, f.o.Height, palette)); err != nil {
		return fmt.Errorf("write the GIF: %w", err)
	}
	newMaker := func(int) func(int) ([]byte, error) { return newGIFMaker(f, palette).block }
	err = inOrder(ctx, f.times.Count, newMaker, func(i int, block []byte) error {
		if _, err := w.Write(block); err != nil {
			return fmt.Errorf("write frame %d of the GIF: %w", i+1, err)
		}
		f.o.Progress(i+1, f.times.Count)
		return nil
	})
	if err != nil {
		return err
	}
	if _, err := w.Write([]byte{gifTrailer}); err != nil {
		return fmt.Errorf("write the GIF: %w", err)
	}
	return nil
}

// delay is how long frame i of a clip is shown, in hundredths of a second: the
// whole part of the time that has passed, so that 30 fps give 3, 3, 4.
func delay(i, fps int) int { return (i+1)*100/fps - i*100/fps }

// gifMaker turns frames into blocks for one goroutine.
type gifMaker struct {
	*camera
	indexer     *indexer
	transparent byte   // the index after the palette's
	before, now []byte // the indices of two frames
	packer      packer
}

func newGIFMaker(f *film, palette []rgb) *gifMaker {
	m := &gifMaker{camera: f.camera(), indexer: newIndexer(palette), transparent: byte(len(palette))}
	m.now = large.Bytes(f.o.Width * f.o.Height)
	for at := range m.now {
		m.now[at] = m.indexer.index(pixel(f.base.Pix[4*at:]))
	}
	m.before = large.Clone(m.now)
	return m
}

// block is frame i as it stands in the file.
func (m *gifMaker) block(i int) ([]byte, error) {
	if i > 0 && m.at != i-1 {
		m.draw(i - 1)
	}
	tiles := m.draw(i)
	box := m.changed(tiles)
	if i == 0 {
		tiles.Fill()
		box = m.base.Rect
	}
	bits := indexBits(len(m.indexer.palette) + 1)
	m.packer.begin(bits)
	m.pack(box, tiles, i == 0)
	head := gifFrame(box, delay(i, m.o.FPS), m.transparent, bits)
	return appendSubBlocks(head, m.packer.end()), nil
}

// draw makes the indices of frame i, and what was now, before.
func (m *gifMaker) draw(i int) *raster.Tiles {
	for box := range m.frames.Changed().Boxes() {
		for y := box.Min.Y; y < box.Max.Y; y++ {
			from, to := y*m.o.Width+box.Min.X, y*m.o.Width+box.Max.X
			copy(m.before[from:to], m.now[from:to])
		}
	}
	img, tiles := m.frame(i)
	for box := range tiles.Boxes() {
		for y := box.Min.Y; y < box.Max.Y; y++ {
			for at := y*m.o.Width + box.Min.X; at < y*m.o.Width+box.Max.X; at++ {
				m.now[at] = m.indexer.index(pixel(img.Pix[4*at:]))
			}
		}
	}
	return tiles
}

// changed is the box round the pixels that are not as before, at least one.
func (m *gifMaker) changed(tiles *raster.Tiles) image.Rectangle {
	var all image.Rectangle
	for box := range tiles.Boxes() {
		if box.In(all) {
			continue
		}
		for y := box.Min.Y; y < box.Max.Y; y++ {
			for x := box.Min.X; x < box.Max.X; x++ {
				if at := y*m.o.Width + x; m.now[at] != m.before[at] {
					all = all.Union(image.Rect(x, y, x+1, y+1))
				}
			}
		}
	}
	if all.Empty() {
		return image.Rect(0, 0, 1, 1)
	}
	return all
}

// pack packs a box of the frame, whole or only what changed in its tiles.
func (m *gifMaker) pack(box image.Rectangle, tiles *raster.Tiles, whole bool) {
	for y := box.Min.Y; y < box.Max.Y; y++ {
		for x := box.Min.X; x < box.Max.X; {
			end := min(x/raster.TileSide*raster.TileSide+raster.TileSide, box.Max.X)
			if !tiles.Has(x/raster.TileSide, y/raster.TileSide) {
				m.packer.add(m.transparent, end-x)
				x = end
				continue
			}
			for ; x < end; x++ {
				at := y*m.o.Width + x
				index := m.now[at]
				if !whole && index == m.before[at] {
					index = m.transparent
				}
				m.packer.add(index, 1)
			}
		}
	}
}

func pixel(p []byte) rgb { return rgb(p[0])<<16 | rgb(p[1])<<8 | rgb(p[2]) }
