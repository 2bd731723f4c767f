package look

import (
	"fmt"
	"math"

	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"
)

// Em is how many units of a Glyph and of a GlyphOutline make the em. It is the
// fonts' own figure, so that outlines have whole coordinates.
const Em = 1000

// Glyph is a piece of a line of text in its place: most often a letter.
type Glyph struct {
	Rune    rune   // the letter that it stands for, the first of several
	Letters string // all that it and the glyphs of the same letters after it stand for; "" for those
	Plain   bool   // it is what the font has for this letter alone
	Back    bool   // its letters run from right to left
	Font    Font
	Index   sfnt.GlyphIndex // 0 is the empty box that shows a letter the fonts lack
	X, Y    float64         // from the start of the line and down from its baseline, in Em-ths of the em
	Advance float64         // to the next letter before kerning, likewise
	pen     float64         // where the letter begins, from which X may differ
	at      int             // of Rune in the text, in runes
}

// Line is a line of text set in glyphs, from left to right as they are seen.
type Line struct {
	Glyphs []Glyph
	Width  float64 // in Em-ths of the em
	Lacks  []rune  // letters that the fonts lack, in the order of the text, each once
}

// Glyphs sets a line of text as every surface shows it, and gives its width in
// Em-ths of the em. The glyphs are shared: they are not to be changed.
func Glyphs(text string, bold bool) (line []Glyph, width float64) {
	l := Set(text, bold)
	return l.Glyphs, l.Width
}

// Width is the width of a line of text in units of the em.
func Width(text string, bold bool) float64 { return Set(text, bold).Width / Em }

// GlyphOutline is a glyph's outline, y down from the baseline. A coordinate of
// fixed.I(Em) is an em.
func GlyphOutline(f Font, g sfnt.GlyphIndex) (sfnt.Segments, error) { return OutlineAt(f, g, Em) }

// OutlineAt is a glyph's outline at a size of the em in pixels, y down from the
// baseline, in 64ths of a pixel.
func OutlineAt(f Font, g sfnt.GlyphIndex, size float64) (sfnt.Segments, error) {
	s, err := f.sfnt().LoadGlyph(nil, g, fixed.Int26_6(math.Round(size*64)), nil)
	if err != nil {
		return nil, fmt.Errorf("outline of glyph %d: %w", g, err)
	}
	return s, nil
}
