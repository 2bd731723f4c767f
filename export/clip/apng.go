package clip

import (
	"context"
	"fmt"
	"image"
	"io"

	"homeside/canvas/raster"
	"homeside/export"
)

// WriteAPNG writes a stretch of a play as an animated PNG that repeats for ever:
// all colours exactly, the ground as transparent as was asked for, and of
// every frame the rectangle that changed. o may be nil.
func WriteAPNG(ctx context.Context, w io.Writer, src export.Source, o *export.Options) error {
	f, err := clearFilm(src, o, "an APNG", export.MaxFPS)
	if err != nil {
		return err
	}
	if err := ctx.Err(); err != nil {
		return err
	}
	clear := !f.base.Opaque()
	if _, err := w.Write(apngHead(f.o.Width, f.o.Height, f.times.Count)); err != nil {
		return fmt.Errorf("write the APNG: %w", err)
	}
	newMaker := func(int) func(int) ([]byte, error) { return newAPNGMaker(f, clear).chunks }
	err = inOrder(ctx, f.times.Count, newMaker, func(i int, chunks []byte) error {
		if _, err := w.Write(chunks); err != nil {
			return fmt.Errorf("write frame %d of the APNG: %w", i+1, err)
		}
		f.o.Progress(i+1, f.times.Count)
		return nil
	})
	if err != nil {
		return err
	}
	if _, err := w.Write(appendChunk(nil, "IEND", nil)); err != nil {
		return fmt.Errorf("write the APNG: %w", err)
	}
	return nil
}

// apngMaker turns frames into chunks for one goroutine.
type apngMaker struct {
	*camera
	clear bool   // frames replace what they cover and may be transparent
	rows  []byte // of a row of tiles
	zlib  *deflater
}

func newAPNGMaker(f *film, clear bool) *apngMaker {
	return &apngMaker{camera: f.camera(), clear: clear, zlib: newDeflater()}
}

// chunks is frame i as it stands in the file.
func (m *apngMaker) chunks(i int) ([]byte, error) {
	if i > 0 && m.at != i-1 {
		m.frame(i - 1)
	}
	img, tiles := m.frame(i)
	box := tiles.Bounds()
	switch {
	case i == 0:
		tiles.Fill()
		box = m.base.Rect
	case box.Empty():
		box = image.Rect(0, 0, 1, 1)
	}
	packed, err := m.pack(img, box, tiles)
	if err != nil {
		return nil, fmt.Errorf("pack frame %d of the APNG: %w", i+1, err)
	}
	return apngFrame(i, box, m.o.FPS, m.clear, packed), nil
}

// pack packs a box, unfiltered, a row of tiles at a time. In an opaque picture,
// tiles that did not change are clear, which packs best, and leave what is under
// them. The bytes are lent until the next call.
func (m *apngMaker) pack(img *image.RGBA, box image.Rectangle, tiles *raster.Tiles) ([]byte, error) {
	m.zlib.begin()
	for y := box.Min.Y; y < box.Max.Y; {
		end := min(y/raster.TileSide*raster.TileSide+raster.TileSide, box.Max.Y)
		var err error
		if band := image.Rect(box.Min.X, y, box.Max.X, end); !m.clear && !tiles.Touches(band) {
			err = m.zlib.zeros(band.Dy() * (1 + 4*band.Dx()))
		} else {
			err = m.zlib.write(m.band(img, band, tiles))
		}
		if err != nil {
			return nil, err
		}
		y = end
	}
	return m.zlib.end()
}

// band are the rows of a box, each after the number of its filter: none.
func (m *apngMaker) band(img *image.RGBA, box image.Rectangle, tiles *raster.Tiles) []byte {
	m.rows = m.rows[:0]
	for y := box.Min.Y; y < box.Max.Y; y++ {
		m.rows = append(m.rows, 0)
		from := len(m.rows)
		m.rows = append(m.rows, img.Pix[img.PixOffset(box.Min.X, y):img.PixOffset(box.Max.X, y)]...)
		if m.clear {
			straighten(m.rows[from:])
		} else {
			wipe(m.rows[from:], box, y, tiles)
		}
	}
	return m.rows
}

// wipe clears the pixels of a box's row that are in tiles outside the set.
func wipe(row []byte, box image.Rectangle, y int, tiles *raster.Tiles) {
	for x := box.Min.X; x < box.Max.X; {
		end := min(x/raster.TileSide*raster.TileSide+raster.TileSide, box.Max.X)
		if !tiles.Has(x/raster.TileSide, y/raster.TileSide) {
			clear(row[4*(x-box.Min.X) : 4*(end-box.Min.X)])
		}
		x = end
	}
}

// straighten takes the alpha out of the colours of pixels.
func straighten(row []byte) {
	for ; len(row) > 0; row = row[4:] {
		if a := int(row[3]); a != 0 && a != 255 {
			for k := range 3 {
				row[k] = uint8(min((int(row[k])*255+a/2)/a, 255))
			}
		}
	}
}
