package look

import (
	"math"
	"testing"

	"golang.org/x/image/font"
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"
)

// A line is set as the drawer of the screen sets it (golang.org/x/image/font),
// to the 64th of a pixel that it rounds every letter to.
func TestGlyphsStandAsOnTheScreen(t *testing.T) {
	const px = 100
	var f Faces
	for _, text := range []string{"", "serve", "AVATAR To P. Te", "Señal: cambio ¡ya!", "e\u0301", "\U0001F3D3 \u05d0\u05d1 x"} {
		for _, bold := range []bool{false, true} {
			d, at := font.Drawer{Face: f.Face(px, bold)}, 0.0
			line, width := Glyphs(text, bold)
			for i, r := range []rune(text) {
				at = float64(d.MeasureString(string([]rune(text)[:i+1])))/64 - line[i].Advance*px/Em
				if got := line[i].X * px / Em; line[i].Rune != r || math.Abs(got-at) > 0.04*float64(i+1) {
					t.Errorf("Glyphs(%q, %v)[%d] is %q at %.2f px, want %q at %.2f", text, bold, i, line[i].Rune, got, r, at)
				}
			}
			if got, want := width*px/Em, float64(d.MeasureString(text))/64; math.Abs(got-want) > 0.04*float64(len(text)+1) {
				t.Errorf("Glyphs(%q, %v) is %.2f px wide, drawn %.2f", text, bold, got, want)
			}
		}
	}
}

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
	for _, r := range []rune{'\U0001F3D3', '\u05d0', '\u0628', '→', '\n'} {
		line, width := Glyphs(string(r), false)
		if len(line) != 1 || line[0].Index != 0 || width < Em/4 {
			t.Errorf("Glyphs(%q) = %+v, %v wide, want the box", r, line, width)
		}
		var f Faces
		if area, _, _, _, ok := f.Face(20, false).Glyph(fixed.Point26_6{}, r); !ok || area.Dx() < 5 || area.Dy() < 10 {
			t.Errorf("at 20 px, %q is %v, %v, want a box", r, area, ok)
		}
	}
	if s, err := GlyphOutline(0, true); err != nil || len(s) < 4 {
		t.Errorf("GlyphOutline(0) = %v, %v, want a box", s, err)
	}
}

// Noto Sans has capitals of 714 units (its OS/2 table, sCapHeight), on the
// baseline.
func TestOutlineStandsOnTheBaseline(t *testing.T) {
	for _, bold := range []bool{false, true} {
		line, _ := Glyphs("H", bold)
		s, err := GlyphOutline(line[0].Index, bold)
		if err != nil {
			t.Fatal(err)
		}
		b := s.Bounds()
		if top, bottom := float64(b.Min.Y)/64, float64(b.Max.Y)/64; top != -714 || bottom != 0 {
			t.Errorf("H, bold %v, reaches from %v to %v, want -714 to 0", bold, top, bottom)
		}
	}
	if _, err := GlyphOutline(65535, false); err == nil {
		t.Error("a glyph that is not there has an outline")
	}
}

func TestTTF(t *testing.T) {
	for i, bold := range []bool{false, true} {
		f, err := sfnt.Parse(TTF(bold))
		if err != nil || f.NumGlyphs() != fonts()[i].NumGlyphs() || f.UnitsPerEm() != Em {
			t.Errorf("TTF(%v): %v, want a font of %d units an em", bold, err, Em)
		}
	}
}

// Kerning grows with the size: A V is closer by 40 thousandths of the em.
func TestFacesKernBySize(t *testing.T) {
	var f Faces
	for _, px := range []float64{10, 100, 333} {
		if got, want := float64(f.Face(px, false).Kern('A', 'V'))/64, -0.04*px; math.Abs(got-want) > 1.0/64 {
			t.Errorf("at %v px, A V is kerned by %.3f px, want %.3f", px, got, want)
		}
	}
	if got := f.Face(100, true).Kern('1', '1'); got != 0 {
		t.Errorf("figures are kerned by %v, want 0", got)
	}
}
