package look

import (
	"image/color"
	"math"
	"testing"

	"homeside/canvas"
)

// luminance and contrast are those of WCAG 2.2 (W3C, 2023): relative luminance
// and contrast ratio of sRGB colours.
func luminance(c color.NRGBA) float64 {
	linear := func(v uint8) float64 {
		s := float64(v) / 255
		if s <= 0.04045 {
			return s / 12.92
		}
		return math.Pow((s+0.055)/1.055, 2.4)
	}
	return 0.2126*linear(c.R) + 0.7152*linear(c.G) + 0.0722*linear(c.B)
}

func contrast(a, b color.NRGBA) float64 {
	la, lb := luminance(a), luminance(b)
	return (max(la, lb) + 0.05) / (min(la, lb) + 0.05)
}

// #767676 on white is 4.54:1, the lightest grey that passes for text (a value
// widely published); black on white is 21:1 by definition.
func TestContrastFormula(t *testing.T) {
	white := rgb(0xFFFFFF)
	for c, want := range map[uint32]float64{0x767676: 4.5422, 0x000000: 21, 0xFFFFFF: 1} {
		if got := contrast(rgb(c), white); math.Abs(got-want) > 0.00005 {
			t.Errorf("contrast(#%06x, white) = %.5f, want %v", c, got, want)
		}
	}
}

// looks are all there are.
var looks = map[string]Look{"Daylight": Daylight}

func grounds(l Look) map[string]color.NRGBA {
	return map[string]color.NRGBA{"plate": l.Plate, "surface": l.Surface, "court": l.Court, "kitchen": l.Kitchen, "paper": l.Paper}
}

// Text: 4.5:1 at least (WCAG 2.2, 1.4.3).
func TestTextCanBeRead(t *testing.T) {
	const least = 4.5
	for name, l := range looks {
		for ground, g := range grounds(l) {
			for text, c := range map[string]color.NRGBA{"ink": l.Ink, "quiet": l.Quiet} {
				if got := contrast(c, g); got < least {
					t.Errorf("%s: %s on %s is %.2f:1, want %v:1", name, text, ground, got, least)
				}
			}
		}
		for i, team := range l.Teams {
			if got := contrast(team.Letter, team.Disc); got < least {
				t.Errorf("%s: letters of team %d on their disc are %.2f:1, want %v:1", name, i, got, least)
			}
		}
	}
}

// Graphics: 3:1 at least (WCAG 2.2, 1.4.11). Discs and ball are seen by their
// outline.
func TestMarksCanBeSeen(t *testing.T) {
	const least = 3
	for name, l := range looks {
		for ground, g := range grounds(l) {
			for mark, c := range map[string]color.NRGBA{
				"line": l.Line, "net": l.Net, "outline": l.Ink, "near run": l.Teams[0].Run, "far run": l.Teams[1].Run,
			} {
				if got := contrast(c, g); got < least {
					t.Errorf("%s: %s on %s is %.2f:1, want %v:1", name, mark, ground, got, least)
				}
			}
		}
		for on, c := range map[string]color.NRGBA{"near disc": l.Teams[0].Disc, "far disc": l.Teams[1].Disc, "ball": l.Ball} {
			if got := contrast(l.Ink, c); got < least {
				t.Errorf("%s: the outline on the %s is %.2f:1, want %v:1", name, on, got, least)
			}
		}
	}
}

// Teams differ by outline, and in a greyscale print by their discs' lightness.
func TestTeamsDifferWithoutColour(t *testing.T) {
	for name, l := range looks {
		if l.Teams[0].Ring == l.Teams[1].Ring {
			t.Errorf("%s: both teams have the same outline", name)
		}
		if got := contrast(l.Teams[0].Disc, l.Teams[1].Disc); got < 2 {
			t.Errorf("%s: the discs differ by %.2f:1 in grey, want 2:1", name, got)
		}
	}
}

// Kitchen, court and run-off are told apart by their painted lines; they are
// not to be mistaken for one.
func TestGroundsDiffer(t *testing.T) {
	for name, l := range looks {
		if l.Court == l.Kitchen || l.Court == l.Surface || l.Surface == l.Paper {
			t.Errorf("%s: two neighbouring grounds have one colour", name)
		}
	}
}

// Okabe and Ito's own table (jfly.uni-koeln.de/color, 2008), as decimal RGB.
func TestPalette(t *testing.T) {
	for _, c := range []struct {
		name      string
		got, want color.NRGBA
	}{
		{"orange", Orange, color.NRGBA{230, 159, 0, 255}},
		{"sky blue", Sky, color.NRGBA{86, 180, 233, 255}},
		{"bluish green", Green, color.NRGBA{0, 158, 115, 255}},
		{"yellow", Yellow, color.NRGBA{240, 228, 66, 255}},
		{"blue", Blue, color.NRGBA{0, 114, 178, 255}},
		{"vermilion", Rust, color.NRGBA{213, 94, 0, 255}},
		{"reddish purple", Mauve, color.NRGBA{204, 121, 167, 255}},
	} {
		if c.got != c.want {
			t.Errorf("%s = %v, want %v", c.name, c.got, c.want)
		}
	}
}

func TestWidth(t *testing.T) {
	var f Faces
	for _, text := range []string{"", "A", "serve", "Señal: cambio", "4-7-2"} {
		for _, bold := range []bool{false, true} {
			face := f.Face(100, bold)
			got, want := 0.0, Width(text, bold)
			for _, r := range text {
				a, ok := face.GlyphAdvance(r)
				if !ok {
					t.Fatalf("no glyph for %q", r)
				}
				got += float64(a) / 64 / 100
			}
			if math.Abs(got-want) > 0.002*float64(len(text)+1) {
				t.Errorf("Width(%q, %v) = %v em, drawn %v", text, bold, want, got)
			}
		}
	}
	if Width("serve", true) <= Width("serve", false) {
		t.Error("bold is not wider than regular")
	}
}

// Both languages' letters, and the signs that pictures use, are in the fonts.
func TestFontsHaveTheLetters(t *testing.T) {
	for i, f := range fonts() {
		for _, r := range "AZaz09áéíóúüñÁÉÍÓÚÜÑ¿¡.,:;-–…′″½×°'\"()/&" {
			if g, err := f.GlyphIndex(nil, r); err != nil || g == 0 {
				t.Errorf("font %d has no %q", i, r)
			}
		}
	}
}

func TestFacesAreKept(t *testing.T) {
	var f Faces
	if a := f.Face(12, true); a != f.Face(12, true) || a == f.Face(12, false) || a == f.Face(13, true) {
		t.Error("a face is not its own, or made twice")
	}
}

// Sizes that must stay readable on a phone, in points: 9 is the least for text.
func TestSizes(t *testing.T) {
	for name, s := range map[string]canvas.Points{"letter": LetterSize, "label": LabelSize, "caption": CaptionSize, "title": TitleSize} {
		if s < 9 {
			t.Errorf("%s is %v points, want 9 at least", name, s)
		}
	}
	if RingRadius <= DiscRadius+Outline/2 {
		t.Error("the ring is hidden by the disc's outline")
	}
}
