package look

import (
	"fmt"
	"image"
	"math"
	"sync"

	"golang.org/x/image/font"
	"golang.org/x/image/font/opentype"
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"

	"homeside/assets"
)

// parsed fonts; sfnt.Font is safe to share between goroutines.
var fonts = sync.OnceValue(func() [2]*sfnt.Font {
	return [2]*sfnt.Font{mustParse(assets.Regular), mustParse(assets.Bold)}
})

func mustParse(ttf []byte) *sfnt.Font {
	f, err := opentype.Parse(ttf)
	if err != nil {
		panic(fmt.Sprintf("built-in font: %v", err)) // only a damaged build can get here
	}
	return f
}

// Faces makes and keeps font faces. Its zero value is ready; it is not safe for
// use by two goroutines at once.
type Faces struct{ made map[faceKey]font.Face }

type faceKey struct {
	px   float64
	bold bool
}

// Face is the font at a size in pixels (of the em).
func (f *Faces) Face(px float64, bold bool) font.Face {
	key := faceKey{px, bold}
	if face, ok := f.made[key]; ok {
		return face
	}
	face := newFace(px, bold)
	if f.made == nil {
		f.made = map[faceKey]font.Face{}
	}
	f.made[key] = face
	return face
}

// kerned is a face that kerns in proportion to its size; opentype's own gives
// the pixels of one size at every size (golang.org/x/image v0.48.0).
type kerned struct {
	font.Face
	font *sfnt.Font
	size fixed.Int26_6
	buf  sfnt.Buffer
}

func newFace(px float64, bold bool) font.Face {
	f := fonts()[index(bold)]
	face, err := opentype.NewFace(f, &opentype.FaceOptions{Size: px, DPI: 72, Hinting: font.HintingNone})
	if err != nil {
		panic(fmt.Sprintf("built-in font at %v px: %v", px, err)) // NewFace fails on a damaged font only
	}
	return &kerned{Face: face, font: f, size: fixed.Int26_6(math.Round(px * 64))}
}

// Glyph implements font.Face, but for this: the box that stands for a letter
// the font lacks counts as a glyph, so that it is drawn and not left out.
func (k *kerned) Glyph(dot fixed.Point26_6, r rune) (image.Rectangle, image.Image, image.Point, fixed.Int26_6, bool) {
	area, mask, at, advance, _ := k.Face.Glyph(dot, r)
	return area, mask, at, advance, mask != nil
}

// Kern implements font.Face.
func (k *kerned) Kern(a, b rune) fixed.Int26_6 {
	x, _ := k.font.GlyphIndex(&k.buf, a)
	y, _ := k.font.GlyphIndex(&k.buf, b)
	return kern(k.font, &k.buf, x, y, k.size)
}

func kern(f *sfnt.Font, buf *sfnt.Buffer, a, b sfnt.GlyphIndex, size fixed.Int26_6) fixed.Int26_6 {
	k, err := f.Kern(buf, a, b, size, font.HintingNone)
	if err != nil {
		return 0 // most pairs have none
	}
	return k
}

// Width is the width of a line of text in units of the em before kerning, which
// most often narrows it: enough to find a text room with.
func Width(text string, bold bool) float64 {
	var buf sfnt.Buffer
	f := fonts()[index(bold)]
	width := 0.0
	for _, r := range text {
		_, a := letter(f, &buf, r)
		width += a
	}
	return width / Em
}

// letter is a letter's glyph, 0 if the font lacks it, and its advance.
func letter(f *sfnt.Font, buf *sfnt.Buffer, r rune) (sfnt.GlyphIndex, float64) {
	g, err := f.GlyphIndex(buf, r)
	if err != nil {
		g = 0
	}
	a, err := f.GlyphAdvance(buf, g, fixed.I(Em), font.HintingNone)
	if err != nil {
		a = 0
	}
	return g, float64(a) / 64
}

func index(bold bool) int {
	if bold {
		return 1
	}
	return 0
}
