package clip

import (
	"bytes"
	"encoding/binary"
	"image"
	"slices"

	"homeside/canvas/raster"
)

// jpegQuality keeps lines and letters clean.
const jpegQuality = 92

// interval is how many squares stand between two restart markers. A stretch
// between them does not depend on any other: it is packed again only if
// something in it changed. Shorter ones are packed faster and need more markers: with
// eight squares a clip took 4 % more time and had 3 % fewer bytes.
const interval = 4

// stills packs a sequence of pictures of one size as JPEGs (ITU-T T.81, baseline),
// each with what the one before it has left. It is not safe for two goroutines
// at once.
type stills struct {
	width, height int
	full          bool // a sample of colour for every pixel; one for four otherwise
	tables        *tables
	head          []byte
	parts         [][]byte // the stretches with their restart markers
	stale         []bool   // those of the parts to be packed again
	coder         *coder
	y, cb, cr     [256]int32 // of a square, worked in
}

// side is that of a square in which colour and brightness are packed together.
func (s *stills) side() int {
	if s.full {
		return 8
	}
	return 16
}

func (s *stills) across() int { return (s.width + s.side() - 1) / s.side() }
func (s *stills) squares() int {
	return s.across() * ((s.height + s.side() - 1) / s.side())
}

func newStills(width, height int, full bool, t *tables) *stills {
	s := &stills{width: width, height: height, full: full, tables: t, coder: newCoder(jpegQuality, t)}
	s.head = s.header(t)
	s.parts = make([][]byte, (s.squares()+interval-1)/interval)
	s.stale = make([]bool, len(s.parts))
	return s
}

// one stretch in so many is packed to see which codes suit a picture.
const sample = 4

// suiting are the codes that suit a picture.
func (s *stills) suiting(img *image.RGBA) *tables {
	for i := 0; i < len(s.parts); i += sample {
		s.pack(i, img)
	}
	clear(s.parts)
	t := s.coder.often.tables()
	return &t
}

// raw is how many bytes the samples of a picture are: more than what it is packed in.
func (s *stills) raw() int {
	n := s.squares() * s.side() * s.side()
	if s.full {
		return 3 * n
	}
	return n * 3 / 2
}

// next adds the picture to out as a JPEG. The tiles are those that are not as in
// the picture before; the first needs none.
func (s *stills) next(out []byte, img *image.RGBA, changed *raster.Tiles) []byte {
	s.touch(changed)
	size := len(s.head) + 2
	for i := range s.parts {
		if s.parts[i] == nil || s.stale[i] {
			s.pack(i, img)
		}
		size += len(s.parts[i])
	}
	out = append(slices.Grow(out, size), s.head...)
	for _, p := range s.parts {
		out = append(out, p...)
	}
	return append(out, 0xFF, 0xD9)
}

// ofPart are the first square of a stretch and the first of the next.
func (s *stills) ofPart(i int) (from, to int) {
	return i * interval, min(i*interval+interval, s.squares())
}

func (s *stills) corner(square int) (x, y int) {
	return square % s.across() * s.side(), square / s.across() * s.side()
}

// touch notes the stretches that have a part in what changed.
func (s *stills) touch(changed *raster.Tiles) {
	clear(s.stale)
	for box := range changed.Boxes() {
		for y := box.Min.Y; y < box.Max.Y; y += s.side() {
			for x := box.Min.X; x < box.Max.X; x += s.side() {
				s.stale[(y/s.side()*s.across()+x/s.side())/interval] = true
			}
		}
	}
}

func (s *stills) pack(part int, img *image.RGBA) {
	s.coder.out = s.parts[part]
	s.coder.begin()
	from, to := s.ofPart(part)
	for q := from; q < to; q++ {
		x, y := s.corner(q)
		s.square(img, x, y)
	}
	s.coder.end()
	if to < s.squares() {
		s.coder.out = append(s.coder.out, 0xFF, 0xD0+byte(part%8))
	}
	s.parts[part] = s.coder.out
}

// square packs the square with a corner. Beyond the picture's edges its last
// pixels go on.
func (s *stills) square(img *image.RGBA, x0, y0 int) {
	if !s.flat(img, x0, y0) {
		s.transform(img, x0, y0)
	}
}

// transform packs a square as its frequencies.
func (s *stills) transform(img *image.RGBA, x0, y0 int) {
	side := s.side()
	inside := min(side, s.width-x0)
	for y := range side {
		at := img.PixOffset(x0, min(y0+y, s.height-1))
		row := img.Pix[at : at+4*inside]
		luma, cb, cr := s.y[y*side:][:side], s.cb[y*side:][:side], s.cr[y*side:][:side]
		for x := range luma {
			p := row[4*min(x, inside-1):][:3]
			luma[x], cb[x], cr[x] = ycc(int32(p[0]), int32(p[1]), int32(p[2]))
		}
	}
	var b block
	for v := 0; v < side; v += 8 {
		for h := 0; h < side; h += 8 {
			for r := range 8 {
				to := b[8*r:][:8]
				for i, y := range s.y[(v+r)*side+h:][:8] {
					to[i] = y - 128
				}
			}
			s.coder.samples(0, &b)
		}
	}
	for i, plane := range [2]*[256]int32{&s.cb, &s.cr} {
		s.colour(plane, &b)
		s.coder.samples(1+i, &b)
	}
}

// flat packs a square of one colour; false if it has several.
func (s *stills) flat(img *image.RGBA, x0, y0 int) bool {
	side := s.side()
	if x0+side > s.width || y0+side > s.height {
		return false
	}
	first := img.Pix[img.PixOffset(x0, y0):][:4*side]
	if !bytes.Equal(first[4:], first[:4*side-4]) {
		return false
	}
	for y := y0 + 1; y < y0+side; y++ {
		if !bytes.Equal(first, img.Pix[img.PixOffset(x0, y):][:4*side]) {
			return false
		}
	}
	y, cb, cr := ycc(int32(first[0]), int32(first[1]), int32(first[2]))
	for range side * side / 64 {
		s.coder.level(0, y-128)
	}
	s.coder.level(1, cb-128)
	s.coder.level(2, cr-128)
	return true
}

// colour makes a block of a plane: as it is, or the means of four.
func (s *stills) colour(plane *[256]int32, b *block) {
	if s.full {
		for i := range b {
			b[i] = plane[i] - 128
		}
		return
	}
	for v := range 8 {
		to, rows := b[8*v:][:8], plane[32*v:][:32]
		for h := range to {
			to[h] = (rows[2*h]+rows[2*h+1]+rows[2*h+16]+rows[2*h+17]+2)>>2 - 128
		}
	}
}

// ycc is a colour as brightness and two differences (ITU-T T.871, JFIF),
// rounded.
func ycc(r, g, b int32) (y, cb, cr int32) {
	y = (19595*r + 38470*g + 7471*b + 1<<15) >> 16
	cb = (-11056*r - 21712*g + 32768*b + 257<<15 - 1) >> 16
	cr = (32768*r - 27440*g - 5328*b + 257<<15 - 1) >> 16
	return y, cb, cr
}

// header is all before the first square.
func (s *stills) header(t *tables) []byte {
	b := []byte{0xFF, 0xD8}
	for i, steps := range s.coder.steps {
		b = append(b, 0xFF, 0xDB, 0, 67, byte(i))
		for _, step := range steps {
			b = append(b, byte(step))
		}
	}
	sampling := byte(0x22)
	if s.full {
		sampling = 0x11
	}
	b = append(b, 0xFF, 0xC0, 0, 17, 8)
	b = binary.BigEndian.AppendUint16(b, uint16(s.height))
	b = binary.BigEndian.AppendUint16(b, uint16(s.width))
	b = append(b, 3, 1, sampling, 0, 2, 0x11, 1, 3, 0x11, 1)
	for _, h := range t {
		b = append(b, 0xFF, 0xC4)
		b = binary.BigEndian.AppendUint16(b, uint16(19+len(h.values)))
		b = append(append(append(b, h.class), h.counts[:]...), h.values...)
	}
	b = append(b, 0xFF, 0xDD, 0, 4, 0, interval)
	return append(b, 0xFF, 0xDA, 0, 12, 3, 1, 0x00, 2, 0x11, 3, 0x11, 0, 63, 0)
}
