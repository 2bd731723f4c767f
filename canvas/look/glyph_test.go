package look

import (
	"testing"

	"golang.org/x/image/font/sfnt"
)

// The pair A V is kerned: it is narrower than its letters by 40 units in the
// fonts' own table.
func TestGlyphsAreKerned(t *testing.T) {
	line, width := Glyphs("AV", false)
	if got := line[0].Advance + line[1].Advance - width; got != 40 {
		t.Errorf("A V is kerned by %v, want 40", got)
	}
}

// A letter that the fonts lack keeps its place as a box that has ink.
func TestMissingLettersAreABox(t *testing.T) {
	for _, r := range []rune{'\U0001F3D3', '中', '→', '\n'} {
		line, width := Glyphs(string(r), false)
		if len(line) != 1 || line[0].Index != 0 || width < Em/4 {
			t.Errorf("Glyphs(%q) = %+v, %v wide, want the box", r, line, width)
		}
	}
	if s, err := GlyphOutline(LatinBold, 0); err != nil || len(s) < 4 {
		t.Errorf("GlyphOutline(LatinBold, 0) = %v, %v, want a box", s, err)
	}
}

// Noto Sans has capitals of 714 units (its OS/2 table, sCapHeight), on the
// baseline.
func TestOutlineStandsOnTheBaseline(t *testing.T) {
	for _, bold := range []bool{false, true} {
		line, _ := Glyphs("H", bold)
		s, err := GlyphOutline(line[0].Font, line[0].Index)
		if err != nil {
			t.Fatal(err)
		}
		b := s.Bounds()
		if top, bottom := float64(b.Min.Y)/64, float64(b.Max.Y)/64; top != -714 || bottom != 0 {
			t.Errorf("H, bold %v, reaches from %v to %v, want -714 to 0", bold, top, bottom)
		}
	}
	if _, err := GlyphOutline(Latin, 65535); err == nil {
		t.Error("a glyph that is not there has an outline")
	}
}

// Every font counts in the same units, and a glyph's number means the same to
// those that set lines and those that draw outlines.
func TestFonts(t *testing.T) {
	for f := Latin; f < fontCount; f++ {
		p, err := sfnt.Parse(f.TTF())
		if err != nil || p.UnitsPerEm() != Em || parsed[f]().setting.Upem() != Em || p.NumGlyphs() != f.sfnt().NumGlyphs() {
			t.Errorf("font %d: %v, want %d units an em", f, err, Em)
		}
		if got := f.OfWeight(!f.Bold()); got.Bold() == f.Bold() || got.OfWeight(f.Bold()) != f {
			t.Errorf("font %d of the other weight is %d", f, got)
		}
	}
}
