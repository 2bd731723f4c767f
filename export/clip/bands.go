package clip

import (
	"bytes"
	"compress/flate"
	"encoding/binary"
	"hash/adler32"
	"image"
	"io"

	"homeside/canvas/raster"
)

// bands packs a sequence of pictures of one size as PNGs, each with what the one
// before it has left: a row of tiles is packed by itself, again only if one of
// its tiles changed. It is not safe for two goroutines at once.
type bands struct {
	size   image.Point
	clear  bool // red, green, blue and alpha; without alpha otherwise
	packed []band
	rows   []byte
	packer *flate.Writer
}

// band is a row of tiles packed, with what it adds to the checksum.
type band struct {
	bytes []byte
	sum   uint32
	count int // of bytes before packing
}

func newBands(img *image.RGBA, clear bool) *bands {
	p, err := flate.NewWriter(io.Discard, flate.DefaultCompression)
	if err != nil {
		panic(err) // there is such a level
	}
	down := (img.Rect.Dy() + raster.TileSide - 1) / raster.TileSide
	return &bands{size: img.Rect.Size(), clear: clear, packed: make([]band, down), packer: p}
}

// update takes over the rows with tiles that are not as in the picture before;
// the first picture needs none.
func (b *bands) update(img *image.RGBA, changed *raster.Tiles) error {
	for i := range b.packed {
		row := image.Rect(0, i*raster.TileSide, b.size.X, (i+1)*raster.TileSide).Intersect(img.Rect)
		if b.packed[i].bytes != nil && !changed.Touches(row) {
			continue
		}
		if err := b.pack(&b.packed[i], img, row); err != nil {
			return err
		}
	}
	return nil
}

func (b *bands) pack(to *band, img *image.RGBA, row image.Rectangle) error {
	b.rows = b.rows[:0]
	for y := row.Min.Y; y < row.Max.Y; y++ {
		b.rows = append(b.rows, 0) // the number of its filter: none
		b.row(img.Pix[img.PixOffset(0, y):][:4*b.size.X])
	}
	var out bytes.Buffer
	b.packer.Reset(&out)
	if _, err := b.packer.Write(b.rows); err != nil {
		return err
	}
	if err := b.packer.Flush(); err != nil {
		return err
	}
	*to = band{out.Bytes(), adler32.Checksum(b.rows), len(b.rows)}
	return nil
}

func (b *bands) row(pix []byte) {
	from := len(b.rows)
	if b.clear {
		b.rows = append(b.rows, pix...)
		straighten(b.rows[from:])
		return
	}
	for ; len(pix) > 0; pix = pix[4:] {
		b.rows = append(b.rows, pix[0], pix[1], pix[2])
	}
}

// png is the picture as a file.
func (b *bands) png() []byte {
	kind := byte(2)
	if b.clear {
		kind = 6
	}
	out := appendChunk([]byte("\x89PNG\r\n\x1a\n"), "IHDR", append(bigEndian(b.size.X, b.size.Y), 8, kind, 0, 0, 0))
	data, sum := []byte{0x78, 0x01}, uint32(1)
	for _, p := range b.packed {
		data = append(data, p.bytes...)
		sum = joinAdler(sum, p.sum, p.count)
	}
	data = append(data, 1, 0, 0, 0xFF, 0xFF) // the last block, stored, of nothing
	out = appendChunk(out, "IDAT", binary.BigEndian.AppendUint32(data, sum))
	return appendChunk(out, "IEND", nil)
}
