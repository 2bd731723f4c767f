package clip

import (
	"bytes"
	"compress/lzw"
	"context"
	"encoding/binary"
	"fmt"
	"image"
	"io"

	"homeside/export"
)

// GIFMaxFPS is the fastest GIF: players take a delay below 2 hundredths of a
// second for a slow one.
const GIFMaxFPS = 50

// palettePictures is how many frames, evenly spread, are looked at for the
// palette; a clip of no more frames has all its colours counted.
const palettePictures = 100

// WriteGIF writes a stretch of a play as a GIF that repeats for ever: one
// palette for the whole clip, exact if 256 colours are enough, no dithering, and
// full frames. Delays are whole hundredths of a second whose remainders are
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

// palette looks at frames all over the clip.
func (f *film) palette(ctx context.Context) ([]rgb, error) {
	pictures := min(f.times.Count, palettePictures)
	var counts [workers]map[rgb]int
	newMaker := func(k int) func(int) (struct{}, error) {
		seen, c := map[rgb]int{}, f.camera()
		counts[k] = seen
		return func(i int) (struct{}, error) {
			eachChange(c.frame(i*f.times.Count/pictures), f.base, func(_ int, c rgb) { seen[c]++ })
			return struct{}{}, nil
		}
	}
	if err := inOrder(ctx, pictures, newMaker, func(int, struct{}) error { return nil }); err != nil {
		return nil, err
	}
	all := map[rgb]int{}
	eachPixel(f.base, func(_ int, c rgb) { all[c] += pictures })
	for _, seen := range counts {
		for c, n := range seen {
			all[c] += n
		}
	}
	return newPalette(all), nil
}

// gifMaker turns frames into blocks for one goroutine.
type gifMaker struct {
	camera
	bits    int // of a colour's index
	indexer *indexer
	still   []byte // the indices of the base
	pixels  []byte // the indices of a frame
	lzw     *lzw.Writer
}

func newGIFMaker(f *film, palette []rgb) *gifMaker {
	m := &gifMaker{camera: f.camera(), bits: indexBits(len(palette)), indexer: newIndexer(palette)}
	m.still = make([]byte, f.o.Width*f.o.Height)
	m.pixels = make([]byte, len(m.still))
	eachPixel(f.base, func(at int, c rgb) { m.still[at] = m.indexer.index(c) })
	m.lzw = lzw.NewWriter(io.Discard, lzw.LSB, m.bits).(*lzw.Writer)
	return m
}

// block is frame i as it stands in the file.
func (m *gifMaker) block(i int) ([]byte, error) {
	copy(m.pixels, m.still)
	eachChange(m.frame(i), m.base, func(at int, c rgb) { m.pixels[at] = m.indexer.index(c) })
	var packed bytes.Buffer
	m.lzw.Reset(&packed, lzw.LSB, m.bits)
	if _, err := m.lzw.Write(m.pixels); err != nil {
		return nil, fmt.Errorf("pack frame %d of the GIF: %w", i+1, err)
	}
	if err := m.lzw.Close(); err != nil {
		return nil, fmt.Errorf("pack frame %d of the GIF: %w", i+1, err)
	}
	head := gifFrame(m.o.Width, m.o.Height, delay(i, m.o.FPS), m.bits)
	return appendSubBlocks(head, packed.Bytes()), nil
}

// eachPixel calls f with every pixel of an opaque image.
func eachPixel(img *image.RGBA, f func(at int, c rgb)) {
	for at := 0; at < len(img.Pix)/4; at++ {
		f(at, pixel(img.Pix[4*at:]))
	}
}

// eachChange calls f with every pixel of img that is not as in base, an image
// of the same size. Equal pixels are passed over by twos.
func eachChange(img, base *image.RGBA, f func(at int, c rgb)) {
	for at, end := 0, len(img.Pix)/4; at < end; at++ {
		p, q := img.Pix[4*at:], base.Pix[4*at:]
		if len(p) >= 8 && binary.NativeEndian.Uint64(p) == binary.NativeEndian.Uint64(q) {
			at++
			continue
		}
		if c := pixel(p); c != pixel(q) {
			f(at, c)
		}
	}
}

func pixel(p []byte) rgb { return rgb(p[0])<<16 | rgb(p[1])<<8 | rgb(p[2]) }
