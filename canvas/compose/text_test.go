package compose

import (
	"slices"
	"strings"
	"testing"
	"unicode/utf8"

	"pgregory.net/rapid"

	"homeside/canvas"
	"homeside/canvas/look"
)

func TestWrap(t *testing.T) {
	// 200 points at 10 points an em: 20 em, about 38 letters.
	for text, want := range map[string][]string{
		"":                  nil,
		" \n ":              nil,
		"one line":          {"one line"},
		"two\n  lines  too": {"two lines too"},
		"the server changes halves, the partner fills": {"the server changes halves, the partner", "fills"},
	} {
		if got := Wrap(text, 200, 10, true); !slices.Equal(got, want) {
			t.Errorf("Wrap(%q) = %q, want %q", text, got, want)
		}
	}
}

// Lines are no wider than asked and lose no word; a word wider than a line
// stands alone, shortened.
func TestWrapKeepsWidthAndWords(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		words := rapid.SliceOfN(rapid.StringMatching(`[A-Za-zäß,.]{1,12}`), 0, 20).Draw(t, "words")
		width := rapid.Float64Range(90, 400).Draw(t, "width")
		lines := Wrap(strings.Join(words, " "), width, 9, true)
		for _, line := range lines {
			if w := look.Width(line, true) * 9; w > width {
				t.Fatalf("line %q is %v points wide, at most %v", line, w, width)
			}
		}
		all := strings.Fields(strings.Join(lines, " "))
		if !slices.ContainsFunc(all, func(s string) bool { return strings.HasSuffix(s, "…") }) && !slices.Equal(all, words) {
			t.Fatalf("wrapped words are %q, want %q", all, words)
		}
	})
}

// The lines of a caption are even: no word is left over alone in the last.
func TestBalanced(t *testing.T) {
	for text, want := range map[string][]string{
		"one line": {"one line"},
		"the server changes halves, the partner fills": {"the server changes", "halves, the partner fills"},
		"a " + strings.Repeat("m", 40) + " b":          Wrap("a "+strings.Repeat("m", 40)+" b", 200, 10, true),
	} {
		if got := Balanced(text, 200, 10, true); !slices.Equal(got, want) {
			t.Errorf("Balanced(%q) = %q, want %q", text, got, want)
		}
	}
}

// Balanced lines say the same in no more lines, and in a narrower width they would not.
func TestBalancedIsTheNarrowest(t *testing.T) {
	widest := func(lines []string) (most float64) {
		for _, line := range lines {
			most = max(most, look.Width(line, true)*9)
		}
		return most
	}
	rapid.Check(t, func(t *rapid.T) {
		text := strings.Join(rapid.SliceOfN(rapid.StringMatching(`[A-Za-zäß,.]{1,12}`), 0, 20).Draw(t, "words"), " ")
		width := rapid.Float64Range(90, 400).Draw(t, "width")
		plain, got := Wrap(text, width, 9, true), Balanced(text, width, 9, true)
		if len(got) != len(plain) || strings.Join(got, " ") != strings.Join(plain, " ") || widest(got) > widest(plain) {
			t.Fatalf("Balanced(%q, %v) = %q, want %q more evenly", text, width, got, plain)
		}
		if len(got) < 2 {
			return
		}
		if narrower := Wrap(text, widest(got)-5, 9, true); len(narrower) == len(got) && strings.Join(narrower, " ") == strings.Join(got, " ") {
			t.Fatalf("Balanced(%q, %v) = %q, and %q is narrower", text, width, got, narrower)
		}
	})
}

func TestWrapShortensALongWord(t *testing.T) {
	lines := Wrap("a "+strings.Repeat("m", 200)+" b", 100, 10, true)
	if len(lines) != 3 || lines[0] != "a" || lines[2] != "b" || !strings.HasSuffix(lines[1], "m…") || look.Width(lines[1], true)*10 > 100 {
		t.Errorf("wrap of a long word = %q, want a, the word cut to the width, b", lines)
	}
}

func TestShorten(t *testing.T) {
	if got := Shorten("fits", 1000, 10, false); got != "fits" {
		t.Errorf("Shorten(fits) = %q", got)
	}
	if got := Shorten("one two three", 45, 10, false); got != "one two…" && got != "one t…" && got != "one tw…" {
		t.Errorf("Shorten(one two three) = %q, want it cut with …", got)
	}
	if got := Shorten("anything", 1, 10, false); got != "" {
		t.Errorf("shorten to one point = %q, want nothing", got)
	}
	rapid.Check(t, func(t *rapid.T) {
		text, width := rapid.StringN(0, 60, -1).Draw(t, "text"), rapid.Float64Range(0, 300).Draw(t, "width")
		got := Shorten(text, width, 9, false)
		if w := look.Width(got, false) * 9; w > width {
			t.Fatalf("Shorten(%q, %v) = %q, %v points", text, width, got, w)
		}
		cut := strings.TrimSuffix(got, "…")
		if !strings.HasPrefix(text, cut) || utf8.ValidString(text) && !utf8.ValidString(got) {
			t.Fatalf("Shorten(%q) = %q, want its beginning", text, got)
		}
	})
}

// However long a play's title, its lines stay in their area and off the clock.
func TestLongTitlesStayInTheirArea(t *testing.T) {
	l := invented()
	for _, title := range []string{strings.Repeat("stack and switch ", 11), strings.Repeat("m", 200), ""} {
		l.Plays[0].Title = title
		for _, size := range sizes {
			for _, turn := range []canvas.Turn{canvas.Upright, canvas.Lying} {
				p := pictureOf(t, l, 0, turn)
				lay := Sight{Turn: turn}.forExport(size[0], size[1], p.surface(), RiseOf(p.Rally))
				area, clock := areaBox(lay.Title), extentsOf(p.Moving(size[0], size[1], 0))["clock/time"]
				for id, b := range extentsOf(p.Static(size[0], size[1])) {
					if !strings.HasPrefix(id, "title/") {
						continue
					}
					if b.left < area.left-0.5 || b.right > area.right+0.5 || b.top < area.top-0.5 || b.bottom > area.bottom+0.5 {
						t.Errorf("%dx%d %v: %s of a title of %d letters is %+v, not in %+v", size[0], size[1], turn, id, len(title), b, area)
					}
					if id != "title/plate" && b.overlaps(clock) {
						t.Errorf("%dx%d %v: %s of a title of %d letters is under the clock", size[0], size[1], turn, id, len(title))
					}
				}
			}
		}
	}
}

// However long a caption (500 letters at most), it stays in the picture.
func TestLongCaptionsStayInThePicture(t *testing.T) {
	l := invented()
	for _, text := range []string{strings.Repeat("move as you see it ", 26), strings.Repeat("m", 500)} {
		l.Plays[0].Cues[0].Text = text
		for _, size := range sizes {
			for _, turn := range []canvas.Turn{canvas.Upright, canvas.Lying} {
				p := pictureOf(t, l, 0, turn)
				found := false
				for id, b := range extentsOf(p.Moving(size[0], size[1], 0)) {
					if strings.HasPrefix(id, "caption/") {
						found = true
						if !b.within(size[0], size[1]) {
							t.Errorf("%dx%d %v: %s of a caption of %d letters is %+v, not in the picture", size[0], size[1], turn, id, len(text), b)
						}
					}
				}
				if !found {
					t.Errorf("%dx%d %v: no caption", size[0], size[1], turn)
				}
			}
		}
	}
}
