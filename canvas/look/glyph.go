package look

import (
	"fmt"

	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"

	"homeside/assets"
)

// Em is how many units of a Glyph and of a GlyphOutline make the em. It is the
// fonts' own figure, so that outlines have whole coordinates.
const Em = 1000

// Glyph is a letter in its place in a line of text.
type Glyph struct {
	Rune    rune
	Index   sfnt.GlyphIndex // 0 is the empty box that shows a letter the fonts lack
	X       float64         // from the start of the line, in Em-ths of the em
	Advance float64         // to the next letter before kerning, likewise
}

// Glyphs sets a line of text letter by letter from left to right, kerned as on
// the screen, and gives its width in Em-ths of the em.
func Glyphs(text string, bold bool) (line []Glyph, width float64) {
	var buf sfnt.Buffer
	f := fonts()[index(bold)]
	for _, r := range text {
		g := Glyph{Rune: r}
		g.Index, g.Advance = letter(f, &buf, r)
		if n := len(line); n > 0 {
			width += float64(kern(f, &buf, line[n-1].Index, g.Index, fixed.I(Em))) / 64
		}
		g.X = width
		width += g.Advance
		line = append(line, g)
	}
	return line, width
}

// GlyphOutline is a letter's outline, y down from the baseline. A coordinate of
// fixed.I(Em) is an em.
func GlyphOutline(g sfnt.GlyphIndex, bold bool) (sfnt.Segments, error) {
	s, err := fonts()[index(bold)].LoadGlyph(nil, g, fixed.I(Em), nil)
	if err != nil {
		return nil, fmt.Errorf("outline of glyph %d: %w", g, err)
	}
	return s, nil
}

// TTF is the font's file, to be embedded in documents. It is not to be changed.
func TTF(bold bool) []byte {
	if bold {
		return assets.Bold
	}
	return assets.Regular
}
