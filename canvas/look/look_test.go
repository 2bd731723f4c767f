package look

import (
	"image/color"
	"math"
	"reflect"
	"strings"
	"testing"

	"homeside/canvas"
	"homeside/internal/wcag"
	"homeside/model/court"
)

// looks are all there are.
var looks = map[string]Look{"Daylight": Daylight, "Night": Night}

func grounds(l Look) map[string]color.NRGBA {
	return map[string]color.NRGBA{"plate": l.Plate, "surface": l.Surface, "court": l.Court, "kitchen": l.Kitchen, "paper": l.Paper}
}

func signs(l Look) map[string]SignLook {
	return map[string]SignLook{"fault": l.Fault, "late": l.Late, "caution": l.Caution, "advice": l.Advice, "signal": l.Cue}
}

// Text: 4.5:1 at least, on every ground that it can stand on. The letters of a
// player of the play beside are in the team's colour on a plate.
func TestTextCanBeRead(t *testing.T) {
	for name, l := range looks {
		for ground, g := range grounds(l) {
			for text, c := range map[string]color.NRGBA{"ink": l.Ink, "quiet": l.Quiet} {
				atLeast(t, name+": "+text+" on "+ground, c, g, wcag.Text)
			}
		}
		for i, team := range l.Teams {
			which := court.End(i).String()
			atLeast(t, name+": letters on the disc of the "+which+" team", team.Letter, team.Disc, wcag.Text)
			atLeast(t, name+": letters of the "+which+" team on a plate", team.Run, l.Plate, wcag.Text)
		}
		atLeast(t, name+": ink on a loop", l.Ink, l.Loop, wcag.Text)
		for sign, s := range signs(l) {
			atLeast(t, name+": the number on the sign of a "+sign, s.Letter, s.Fill, wcag.Text)
		}
	}
}

// Lines: 3:1 at least on every ground. The ball's shadow and the hairlines of
// height have no such contrast: what they tell is also said in figures.
func TestLinesCanBeSeen(t *testing.T) {
	for name, l := range looks {
		for ground, g := range grounds(l) {
			for mark, c := range map[string]color.NRGBA{
				"line": l.Line, "net": l.Net, "outline": l.Ink, "hatch": l.Quiet, "near run": l.Teams[0].Run, "far run": l.Teams[1].Run,
				"moment shown": l.Head, "choice": l.Chosen, "parting of two plays": l.Part,
				"zone": l.Zone, "highlight": l.Spot,
			} {
				atLeast(t, name+": "+mark+" on "+ground, c, g, wcag.Graphics)
			}
		}
	}
}

// Filled marks are seen by their fill or by the outline round it: one of both
// stands out from every ground by 3:1, and where it is the outline, from the
// fill too.
func TestFilledMarksCanBeSeen(t *testing.T) {
	for name, l := range looks {
		marks := map[string]struct{ fill, outline color.NRGBA }{
			"near disc": {l.Teams[0].Disc, l.Ink}, "far disc": {l.Teams[1].Disc, l.Ink}, "palm": {l.Plate, l.Ink},
			"ball": {l.Ball, l.Rim}, "handle": {l.Handle, l.Rim}, "parting": {l.Part, l.Rim},
			"bar below 0": {l.Below, l.Rim}, "bar of the other kind": {l.Kitchen, l.Ink},
		}
		for sign, s := range signs(l) {
			marks["sign of a "+sign] = struct{ fill, outline color.NRGBA }{s.Fill, l.Rim}
		}
		for mark, m := range marks {
			for ground, g := range grounds(l) {
				byOutline := min(wcag.Contrast(m.outline, g), wcag.Contrast(m.outline, m.fill))
				if byFill := wcag.Contrast(m.fill, g); max(byOutline, byFill) < wcag.Graphics {
					t.Errorf("%s: %s on %s: by its fill %.2f:1, by its outline %.2f:1, want one of them %v:1", name, mark, ground, byFill, byOutline, wcag.Graphics)
				}
			}
		}
	}
}

// checked is what is looked at above: every colour of a look by its field, and what is not held
// against the grounds, with why.
var checked = map[string]string{
	"Paper": "a ground", "Surface": "a ground", "Court": "a ground", "Kitchen": "a ground", "Plate": "a ground",
	"Line": "", "Net": "", "Ink": "", "Quiet": "", "Head": "", "Chosen": "", "Part": "", "Zone": "", "Spot": "", // lines
	"Ball": "", "Handle": "", "Below": "", "Teams.Disc": "", "Fault.Fill": "", "Late.Fill": "", "Caution.Fill": "", "Advice.Fill": "", "Cue.Fill": "", // filled
	"Rim":    "the outline of what is filled",
	"Shadow": "how high the ball is is said in figures too",
	"Loop":   "under the rally strip's own marks; what is on it is ink",

	"Teams.Letter": "", "Teams.Run": "", "Fault.Letter": "", "Late.Letter": "", "Caution.Letter": "", "Advice.Letter": "", "Cue.Letter": "", // letters
}

// No colour of a look goes unlooked at.
func TestEveryColourIsChecked(t *testing.T) {
	found := map[string]bool{}
	var walk func(name string, of reflect.Type)
	walk = func(name string, of reflect.Type) {
		switch {
		case of == reflect.TypeFor[color.NRGBA]():
			found[name] = true
		case of.Kind() == reflect.Array:
			walk(name, of.Elem())
		case of.Kind() == reflect.Struct:
			for i := range of.NumField() {
				walk(strings.TrimPrefix(name+"."+of.Field(i).Name, "."), of.Field(i).Type)
			}
		}
	}
	walk("", reflect.TypeFor[Look]())
	for name := range found {
		if _, ok := checked[name]; !ok {
			t.Errorf("nothing says how well %s can be seen", name)
		}
	}
	if len(found) != len(checked) {
		t.Errorf("%d colours are found and %d checked", len(found), len(checked))
	}
}

func atLeast(t *testing.T, what string, a, b color.NRGBA, least float64) {
	t.Helper()
	if got := wcag.Contrast(a, b); got < least {
		t.Errorf("%s is %.2f:1, want %v:1", what, got, least)
	}
}

// Teams differ by outline, and in a greyscale print by their discs' lightness.
// Their bars on the rally strip have the discs' colours.
func TestTeamsDifferWithoutColour(t *testing.T) {
	for name, l := range looks {
		if l.Teams[0].Ring == l.Teams[1].Ring {
			t.Errorf("%s: both teams have the same outline", name)
		}
		if got := wcag.Contrast(l.Teams[0].Disc, l.Teams[1].Disc); got < 2 {
			t.Errorf("%s: the discs differ by %.2f:1 in grey, want 2:1", name, got)
		}
	}
}

// What stands side by side in bars differs in grey: the two kinds of a chart,
// time to spare and lateness.
func TestBarsDifferWithoutColour(t *testing.T) {
	for name, l := range looks {
		for pair, c := range map[string][2]color.NRGBA{
			"bars of a kind and of the other": {l.Teams[0].Run, l.Kitchen}, "to spare and late": {l.Surface, l.Head},
		} {
			if got := wcag.Contrast(c[0], c[1]); got < 1.2 {
				t.Errorf("%s: %s differ by %.2f:1 in grey, want 1.2:1", name, pair, got)
			}
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

// Widths are those of HarfBuzz in shaped, in thousandths of the em.
func TestWidth(t *testing.T) {
	for text, want := range map[string]float64{"": 0, "AVATAR To": 4.826, "office fi": 3.457, "لا": 0.632} {
		if got := Width(text, text == "لا"); math.Abs(got-want) > 1e-9 {
			t.Errorf("Width(%q) = %v em, want %v", text, got, want)
		}
	}
	if Width("serve", true) <= Width("serve", false) {
		t.Error("bold is not wider than regular")
	}
}

// Both languages' letters, and the signs that pictures use, are in the fonts.
func TestFontsHaveTheLetters(t *testing.T) {
	for _, bold := range []bool{false, true} {
		if got := Set("AZaz09áéíóúüñÁÉÍÓÚÜÑ¿¡.,:;-–…′″½×°'\"()/&", bold).Lacks; len(got) > 0 {
			t.Errorf("the fonts, bold %v, have no %q", bold, got)
		}
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
