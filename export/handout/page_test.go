package handout

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"math"
	"regexp"
	"strings"
	"testing"

	"homeside/words"
)

// Papers are exact: A4 is 210 x 297 mm (ISO 216), Letter 8.5 x 11 in, and a
// point is a 72nd of an inch of 25.4 mm. Poppler's pdfinfo knows them by name.
func TestPaperSizes(t *testing.T) {
	want := map[string]string{
		"a4":     fmt.Sprintf("Page size: %.2f x %.2f pts (A4)", 210/25.4*72, 297/25.4*72),
		"letter": "Page size: 612 x 792 pts (letter)",
	}
	eachSheet(t, func(t *testing.T, pdf []byte, r Result, p Paper) {
		info := oneLine(poppler(t, pdf, "pdfinfo", "-"))
		if !strings.Contains(info, want[p.Name]) || !strings.Contains(info, fmt.Sprintf("Pages: %d ", r.Pages)) || r.Pages == 0 {
			t.Errorf("pdfinfo says %s, want %s and %d pages", info, want[p.Name], r.Pages)
		}
	})
}

// Every font is in the file, of it only the letters used, and with the table that
// lets texts be searched: the columns emb, sub and uni of pdffonts.
func TestFontsAreEmbedded(t *testing.T) {
	embedded := regexp.MustCompile(`CID TrueType +Identity-H +yes yes yes|CID TrueType +Identity-H +yes no +yes`)
	eachSheet(t, func(t *testing.T, pdf []byte, _ Result, _ Paper) {
		lines := strings.Split(strings.TrimSpace(poppler(t, pdf, "pdffonts", "-")), "\n")
		if len(lines) != 4 {
			t.Fatalf("pdffonts lists\n%s\nwant two fonts", strings.Join(lines, "\n"))
		}
		for _, font := range lines[2:] {
			if !embedded.MatchString(font) {
				t.Errorf("pdffonts says %q, want it embedded", font)
			}
		}
		const whole = 500000 // bytes of one font's file, at least
		if len(pdf) > whole {
			t.Errorf("the file has %d bytes, want less than a font's %d", len(pdf), whole)
		}
	})
}

// Every page has the cautions, where the figures come from, whose names are
// invented, and its number.
func TestFeet(t *testing.T) {
	eachSheet(t, func(t *testing.T, pdf []byte, r Result, _ Paper) {
		for page := 1; page <= r.Pages; page++ {
			got := pageText(t, pdf, page)
			wants := append(words.Cautions(), words.FiguresFrom(), "Ines, Tobin, Marlo, Petra and the Lanternfield club are invented.", words.T("page %d of %d", page, r.Pages))
			for _, want := range wants {
				if !strings.Contains(got, oneLine(want)) {
					t.Errorf("page %d lacks %q:\n%s", page, want, got)
				}
			}
		}
	})
}

// A lesson that says nothing of invented names has nothing of it on paper.
func TestNobodyIsCalledInvented(t *testing.T) {
	l := demo(t)
	l.Notes = "Real play. Follow your coach."
	if pdf, _ := write(t, l, "cones", nil); strings.Contains(text(t, pdf), "invented") {
		t.Error("the page speaks of invented names, and the lesson does not")
	}
}

// What is set in 9 points or more stays 10 mm from every edge and on no other
// word; in the demo lesson nothing is shortened.
func TestWordsKeepApart(t *testing.T) {
	eachSheet(t, func(t *testing.T, pdf []byte, r Result, _ Paper) {
		if len(r.Notes) > 0 {
			t.Errorf("notes %q, want none for the demo lesson", r.Notes)
		}
		checkApart(t, boxes(t, pdf))
	})
}

// The longest texts keep apart too, in the language with the longer words.
func TestHardWordsKeepApart(t *testing.T) {
	words.Speak(words.Spanish)
	defer words.Speak(words.English)
	for _, s := range Sheets {
		pdf, _ := write(t, hard(t), s.Name, &Options{Paper: Letter})
		checkApart(t, boxes(t, pdf))
	}
}

// A word's box is 1.36 em high, as Noto Sans has it: of letters on discs and of
// numbers of cones, which stand where the play has them, it is below.
const leastBox = 8.9 * 1.36

func checkApart(t *testing.T, all []box) {
	t.Helper()
	const margin = 10 / 25.4 * 72
	var words []box
	for _, b := range all {
		if b.x1 < margin || b.y1 < margin || b.x2 > b.pageWidth-margin || b.y2 > b.pageHeight-margin {
			t.Errorf("page %d: %q reaches (%.1f %.1f %.1f %.1f), nearer than %.1f to the edge of %.1f x %.1f", b.page, b.word, b.x1, b.y1, b.x2, b.y2, margin, b.pageWidth, b.pageHeight)
		}
		if b.y2-b.y1 >= leastBox {
			middle, half := (b.y1+b.y2)/2, (b.y2-b.y1)*0.28
			b.y1, b.y2 = middle-half, middle+half // ascenders and descenders of two lines may share a height
			words = append(words, b)
		}
	}
	for i, a := range words {
		for _, b := range words[i+1:] {
			w, h := math.Min(a.x2, b.x2)-math.Max(a.x1, b.x1), math.Min(a.y2, b.y2)-math.Max(a.y1, b.y1)
			if a.page == b.page && w > 1 && h > 0.5 {
				t.Errorf("page %d: %q and %q overlap by %.1f x %.1f points", a.page, a.word, b.word, w, h)
			}
		}
	}
}

// The same lesson has the same bytes.
func TestSameBytes(t *testing.T) {
	for _, s := range Sheets {
		a, _ := write(t, demo(t), s.Name, nil)
		b, _ := write(t, demo(t), s.Name, nil)
		if !bytes.Equal(a, b) {
			t.Errorf("%s: two files of one lesson differ", s.Name)
		}
	}
}

// What had to be shortened and what the fonts lack is told; texts stand as they
// are, whatever they mean to a browser or in a PDF.
func TestHardTexts(t *testing.T) {
	for sheet, wants := range map[string][]string{
		"storyboard": {`<script>alert("1")</script> (\) %PDF`, `O'Néill & <Sons> \n`, "\u05d3\u05d5\u05d3", "…"},
		"cones":      {`O'Néill & <Sons> \n`, "…"},
		"match":      {`<script>alert("1")</script> (\)`, "…"}, // initials stand for names that are too long
		"plan":       {"…"},
	} {
		pdf, r := write(t, hard(t), sheet, nil)
		got := text(t, pdf)
		for _, want := range wants {
			if !strings.Contains(got, want) {
				t.Errorf("%s lacks %q", sheet, want)
			}
		}
		notes := strings.Join(r.Notes, "\n")
		if sheet == "storyboard" {
			wants = []string{"Play 1, picture 1: shortened to fit", "The play's title: shortened to fit"}
		} else {
			wants = nil
		}
		if sheet != "match" {
			wants = append(wants, "No font here has \U0001F3D3")
		}
		for _, want := range append(wants, "shortened to fit") {
			if !strings.Contains(notes, want) {
				t.Errorf("%s: notes\n%s\nlack %q", sheet, notes, want)
			}
		}
	}
}

// Nothing to print is a plain error, or a clean sheet.
func TestNothingToPrint(t *testing.T) {
	bare := demo(t)
	bare.Plays = nil
	mute := demo(t)
	for i, p := range mute.Plays {
		p.Cues, p.Notes = nil, ""
		mute = mute.WithPlay(i, p)
	}
	one := demo(t)
	for i, p := range one.Plays {
		p.Shots = p.Shots[:1]
		for id := range p.Tracks {
			p.Tracks[id] = p.Tracks[id][:1]
		}
		p.Cues, p.Marks = nil, nil
		one = one.WithPlay(i, p)
	}
	for _, s := range Sheets {
		var b bytes.Buffer
		_, err := Write(context.Background(), &b, bare, s, nil)
		if (s.Cards && err != nil) || (!s.Cards && (!errors.Is(err, ErrNoPlays) || b.Len() > 0)) {
			t.Errorf("%s of no plays: error %v and %d bytes", s.Name, err, b.Len())
		}
		pdf, r := write(t, mute, s.Name, nil)
		if len(r.Notes) > 0 || !strings.Contains(text(t, pdf), "page 1 of") {
			t.Errorf("%s without cues: notes %q, want a clean sheet", s.Name, r.Notes)
		}
		_, err = Write(context.Background(), &b, one, s, nil)
		if (s.Name == "advisor") != errors.Is(err, ErrNoReturn) || (s.Name != "advisor" && err != nil) {
			t.Errorf("%s of serves alone: error %v", s.Name, err)
		}
	}
}

// Cancelled, nothing is written.
func TestCancelled(t *testing.T) {
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	for _, s := range Sheets {
		var b bytes.Buffer
		if _, err := Write(ctx, &b, demo(t), s, nil); !errors.Is(err, context.Canceled) || b.Len() > 0 {
			t.Errorf("%s cancelled: error %v and %d bytes, want %v and none", s.Name, err, b.Len(), context.Canceled)
		}
	}
}

func TestNames(t *testing.T) {
	for _, s := range Sheets {
		if got, err := SheetByName(s.Name); err != nil || got.Name != s.Name || s.Title() == "" || s.About() == "" {
			t.Errorf("SheetByName(%q) = %q, %v, or it has no words", s.Name, got.Name, err)
		}
	}
	if _, err := SheetByName("poster"); err == nil || !strings.Contains(err.Error(), "storyboard, cones, match, advisor, plan") {
		t.Errorf("SheetByName(poster): %v, want all names", err)
	}
	if p, err := PaperByName("Letter"); err != nil || p != Letter {
		t.Errorf("PaperByName(Letter) = %v, %v", p, err)
	}
	if _, err := PaperByName("a5"); err == nil || err.Error() != `paper "a5": want a4 or letter` {
		t.Errorf("PaperByName(a5): %v", err)
	}
	if _, err := Write(context.Background(), &bytes.Buffer{}, demo(t), named(t, "cones"), &Options{Plays: []int{7}}); err == nil {
		t.Error("play 8 of three is printed")
	}
}
