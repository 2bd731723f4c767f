package raster

import (
	"image"
	"math"

	"golang.org/x/image/font"
	"golang.org/x/image/math/fixed"

	"homeside/canvas"
	"homeside/canvas/look"
)

// places is how many places a letter can have within a pixel, across and down:
// letters that move by quarters of a pixel do not jitter.
const places = 4

// maxMasks bounds the bytes of the masks that are kept.
const maxMasks = 32 << 20

// glyphs keeps the masks of letters by size, letter and place within a pixel.
// Its zero value is ready; it is not safe for two goroutines at once.
type glyphs struct {
	faces look.Faces
	known map[faceKey]*face
	bytes int
}

type faceKey struct {
	px   float64
	bold bool
}

// face is a font at a size with what was asked of it before.
type face struct {
	font     font.Face
	masks    map[maskKey]glyph
	advances map[rune]fixed.Int26_6
	kerns    map[[2]rune]fixed.Int26_6
}

type maskKey struct {
	letter rune
	x, y   uint8 // the place within a pixel, of places
}

// glyph is a letter's mask and where its corner is from the pixel of the dot.
type glyph struct {
	mask *image.Alpha // nil for a blank
	from image.Point
}

func (g *glyphs) face(px float64, bold bool) *face {
	if g.bytes > maxMasks {
		*g = glyphs{}
	}
	key := faceKey{px, bold}
	if f, ok := g.known[key]; ok {
		return f
	}
	if g.known == nil {
		g.known = map[faceKey]*face{}
	}
	f := &face{g.faces.Face(px, bold), map[maskKey]glyph{}, map[rune]fixed.Int26_6{}, map[[2]rune]fixed.Int26_6{}}
	g.known[key] = f
	return f
}

// placed is a mask in a picture.
type placed struct {
	mask *image.Alpha
	box  image.Rectangle
}

// lay appends the letters of a text to line.
func (g *glyphs) lay(line []placed, t canvas.PxText) []placed {
	f := g.face(t.Size, t.Bold)
	x, y := toFixed(t.At.X)-shift(t.Align, f.width(t.Text)), toFixed(t.At.Y)
	last := rune(-1)
	for _, letter := range t.Text {
		x += f.kern(last, letter)
		if p := g.place(f, letter, x, y); p.mask != nil {
			line = append(line, p)
		}
		x += f.advance(letter)
		last = letter
	}
	return line
}

// place is a letter at the nearest place to a dot.
func (g *glyphs) place(f *face, letter rune, x, y fixed.Int26_6) placed {
	px, fx := split(x)
	py, fy := split(y)
	m, ok := f.masks[maskKey{letter, fx, fy}]
	if !ok {
		m = f.draw(letter, fx, fy)
		f.masks[maskKey{letter, fx, fy}] = m
		if m.mask != nil {
			g.bytes += len(m.mask.Pix)
		}
	}
	if m.mask == nil {
		return placed{}
	}
	return placed{m.mask, m.mask.Rect.Add(m.from).Add(image.Pt(px, py))}
}

// split is a coordinate in whole pixels and places, to the nearest place.
func split(v fixed.Int26_6) (px int, place uint8) {
	n := (int(v)*places + 32) >> 6
	return n >> 2, uint8(n & (places - 1))
}

func (f *face) draw(letter rune, x, y uint8) glyph {
	dot := fixed.Point26_6{X: fixed.Int26_6(x) * 64 / places, Y: fixed.Int26_6(y) * 64 / places}
	box, mask, at, _, ok := f.font.Glyph(dot, letter)
	alpha, isAlpha := mask.(*image.Alpha)
	if !ok || !isAlpha || box.Empty() {
		return glyph{}
	}
	kept := image.NewAlpha(image.Rect(0, 0, box.Dx(), box.Dy()))
	for row := range box.Dy() { // the face draws its next letter on the same mask
		from := alpha.PixOffset(at.X, at.Y+row)
		copy(kept.Pix[row*kept.Stride:(row+1)*kept.Stride], alpha.Pix[from:])
	}
	return glyph{kept, box.Min}
}

func (f *face) advance(letter rune) fixed.Int26_6 {
	a, ok := f.advances[letter]
	if !ok {
		a, _ = f.font.GlyphAdvance(letter)
		f.advances[letter] = a
	}
	return a
}

func (f *face) kern(last, letter rune) fixed.Int26_6 {
	if last < 0 {
		return 0
	}
	k, ok := f.kerns[[2]rune{last, letter}]
	if !ok {
		k = f.font.Kern(last, letter)
		f.kerns[[2]rune{last, letter}] = k
	}
	return k
}

func (f *face) width(text string) fixed.Int26_6 {
	sum, last := fixed.Int26_6(0), rune(-1)
	for _, letter := range text {
		sum += f.kern(last, letter) + f.advance(letter)
		last = letter
	}
	return sum
}

func shift(a canvas.Align, width fixed.Int26_6) fixed.Int26_6 {
	switch a {
	case canvas.Start:
		return 0
	case canvas.Finish:
		return width
	default:
		return width / 2
	}
}

func toFixed(v float64) fixed.Int26_6 { return fixed.Int26_6(math.Round(v * 64)) }
