package raster_test

import (
	"fmt"
	"image"
	"math"

	"golang.org/x/image/font"
	"golang.org/x/image/font/opentype"
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"

	"homeside/canvas/look"
)

// faces makes and keeps font faces of golang.org/x/image, which draw and kern
// letters by themselves. Its zero value is ready.
type faces struct{ made map[faceKey]font.Face }

type faceKey struct {
	px   float64
	bold bool
}

// Face is the font at a size in pixels (of the em).
func (f *faces) face(px float64, bold bool) font.Face {
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
	f, err := opentype.Parse(look.Latin.OfWeight(bold).TTF())
	if err != nil {
		panic(fmt.Sprintf("built-in font: %v", err))
	}
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
