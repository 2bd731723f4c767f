package look

import (
	"fmt"
	"strings"
	"sync"
	"testing"
	"unicode/utf8"

	"pgregory.net/rapid"

	_ "homeside/internal/fixedseed"
)

// shaped are lines as HarfBuzz 6.0.0 sets them with the embedded fonts (Debian
// package libharfbuzz-bin): hb-shape --no-glyph-names FONT TEXT, for Noto Sans
// with --features=-liga,-clig. A glyph is glyph=letter@right,up+advance.
var shaped = []struct {
	text string
	font Font
	want string
}{
	{"AVATAR To", Latin, "36=0+599|57=1+560|36=2+569|55=3+486|36=4+639|53=5+622|3=6+260|55=7+486|82=8+605"},
	{"Señal: ¿qué?", Latin, "54=0+549|72=1+564|179=2+618|68=3+561|79=4+258|29=5+268|3=6+260|129=7+434|84=8+615|88=9+618|171=10+564|34=11+434"},
	{"e\u0301", Latin, "171=0+564"},
	{"a\u0323\u0302", Latin, "778=0+561"},
	{"office fi", Latin, "82=0+605|73=1+344|73=2+344|76=3+258|70=4+480|72=5+564|3=6+260|73=7+344|76=8+258"},
	{"To\u0323 Ve\u0301", LatinBold, "55=0+509|810=1+619|3=3+260|57=4+630|171=5+591"},
	{"שָׁלוֹם", Hebrew, "12=6+684|31=4@82,0+0|85=4@-10,0+291|35=3+522|54=0@227,0+0|68=0@539,0+0|67=0+730"},
	{"קו מטבח", Hebrew, "29=6+662|5=5+572|76=4+634|40=3+660|72=2+270|85=1+301|57=0+627"},
	{"السلام عليكم", ArabicBold, "385=11+661|267=10+508|742=9+409|328=8+344|6=7+557|1=6+260|384=5+548|330=3+681|534=2+1019|327=1+297|24=0+273"},
	{"مُحَمَّد", ArabicBold, "110=7+571|580=4@137,-36+0|387=4+624|134=2@9,-14+0|194=2+654|111=0@158,-41+0|386=0+582"},
	{"لا", ArabicBold, "329=0+632"},
	{"گچپژ", ArabicBold, "263=3+450|461=2+409|650=1+654|168=0+454"},
}

func TestSetAsHarfBuzzDoes(t *testing.T) {
	for _, c := range shaped {
		line := Set(c.text, c.font.Bold())
		if got := dump(line); got != c.want {
			t.Errorf("Set(%q, %v) is\n%s, want\n%s", c.text, c.font.Bold(), got, c.want)
		}
		for _, g := range line.Glyphs {
			if g.Font != c.font {
				t.Errorf("Set(%q): a glyph of font %d, want %d", c.text, g.Font, c.font)
			}
		}
		if len(line.Lacks) != 0 {
			t.Errorf("Set(%q) lacks %q, want nothing", c.text, line.Lacks)
		}
	}
}

// dump writes a line as hb-shape does.
func dump(l *Line) string {
	var out []string
	for i, g := range l.Glyphs {
		next := l.Width
		if i+1 < len(l.Glyphs) {
			next = l.Glyphs[i+1].pen
		}
		place := ""
		if g.X != g.pen || g.Y != 0 {
			place = fmt.Sprintf("@%v,%v", g.X-g.pen, -g.Y)
		}
		out = append(out, fmt.Sprintf("%d=%d%s+%v", g.Index, g.at, place, next-g.pen))
	}
	return strings.Join(out, "|")
}

// The runs of a text stand as FriBidi 1.0.8 puts them (Debian package
// libfribidi-bin): fribidi --nopad --nobreak TEXT. Mirrored brackets are told by
// the letter that they stand for.
func TestRunsAsFriBidiHasThem(t *testing.T) {
	for text, want := range map[string]string{
		"abc אבג 123 דהו xyz": "abc והד 123 גבא xyz",
		"אבג 123 abc":         "abc 123 גבא",
		"אבג abc 12 דהו":      "והד abc 12 גבא",
		"12 אבג":              "גבא 12",
		"קו 7-2 מטבח":         "חבטמ 7-2 וק",
		"4-7-2: אבג 3.5 s":    "s 3.5 גבא :4-7-2",
		"plain 12":            "plain 12",
		"":                    "",
	} {
		got := ""
		for _, g := range Set(text, false).Glyphs {
			got += string(g.Rune)
		}
		if got != want {
			t.Errorf("Set(%q) is seen as %q, want %q", text, got, want)
		}
	}
}

// A bracket round Hebrew opens toward it: the glyphs are those of the other
// bracket (Unicode Standard Annex 9, rule L4).
func TestBracketsAreMirrored(t *testing.T) {
	open, closed := Set("(", false).Glyphs[0].Index, Set(")", false).Glyphs[0].Index
	line := Set("א (ב)", false).Glyphs
	if first, third := line[0], line[2]; first.Rune != ')' || first.Index != open || third.Rune != '(' || third.Index != closed {
		t.Errorf("Set(א (ב)) begins with %c as glyph %d and then %c as %d, want ) as %d and ( as %d", first.Rune, first.Index, third.Rune, third.Index, open, closed)
	}
}

func TestLacks(t *testing.T) {
	for text, want := range map[string]string{
		"Señal ÁÉ Ελλάδα Жучок Tiếng שלום سلام": "", "中 → 中 a\U0001F3D3": "中→\U0001F3D3", "a\u00a0b\u200fc\u2009": "", "\n": "\n",
	} {
		if got := string(Set(text, true).Lacks); got != want {
			t.Errorf("Set(%q) lacks %q, want %q", text, got, want)
		}
	}
}

// Whatever a text is, every letter of it is in the line, once, and the line is as
// wide as its letters.
func TestSetAnything(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.StringOfN(rapid.SampledFrom([]rune("abfi Vé\u0301\u0323 12-()אבגלשׁ\u05b8سلاممحَ中→\n\u200f\u200d\ufffd")), 0, 20, -1).Draw(t, "text")
		line, letters := Set(text, rapid.Bool().Draw(t, "bold")), 0
		for _, g := range line.Glyphs {
			letters += utf8.RuneCountInString(g.Letters)
		}
		if want := utf8.RuneCountInString(text); letters != want {
			t.Fatalf("Set(%q) has %d letters, want %d: %+v", text, letters, want, line.Glyphs)
		}
		if line.Width < 0 || !(line.Width <= 4*Em*float64(len(text))) {
			t.Fatalf("Set(%q) is %v wide", text, line.Width)
		}
	})
}

// Several goroutines may set lines, more than are kept; all get the same.
func TestSetSideBySide(t *testing.T) {
	var wg sync.WaitGroup
	for range 4 {
		wg.Go(func() {
			for i := range maxLines + 100 {
				text := fmt.Sprint("t", i)
				if got := len(Set(text, false).Glyphs); got != len(text) {
					t.Errorf("Set(%q) has %d glyphs, want %d", text, got, len(text))
				}
			}
		})
	}
	wg.Wait()
}
