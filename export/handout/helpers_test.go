package handout

import (
	"bytes"
	"context"
	"fmt"
	"os/exec"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"homeside/export/exporttest"
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/words"
)

// demo is the built-in lesson. All its names are invented.
func demo(t testing.TB) lesson.Lesson {
	t.Helper()
	return exporttest.BuiltIn(t)
}

// hard is the built-in lesson with all that a page may have to bear: the longest
// texts, one word as long as a line, other scripts, signs of HTML and of PDF.
func hard(t testing.TB) lesson.Lesson {
	t.Helper()
	l := demo(t)
	l.Title = strings.Repeat("A title without end ", 10)
	l.Notes = strings.Repeat("All is invented here ", 90) + "."
	l.Teams[court.Near].Name = `<script>alert("1")</script> (\) %PDF`
	l.Teams[court.Near].Players[0].Name = strings.Repeat("Wilhelmina", 6)
	l.Teams[court.Near].Players[1].Name = "\u05d3\u05d5\u05d3 \u0645\u062d\u0645\u062f \U0001F3D3"
	l.Teams[court.Far].Players[0].Name = "O'Néill & <Sons> \\n"
	p := l.Plays[0]
	p.Title = strings.Repeat("stacked-", 25)
	p.Notes = strings.Repeat("note after note ", 600)
	long := strings.Repeat("every word of a caption counts ", 16)
	p.Cues = append([]lesson.Cue{}, p.Cues...)
	for range 6 {
		p.Cues = append(p.Cues, lesson.Cue{Span: lesson.Span{To: lesson.At(lesson.TheEnd)}, Text: long})
	}
	p.Cues = append(p.Cues, lesson.Cue{Kind: lesson.Signal, Span: lesson.Span{To: lesson.At(lesson.TheEnd)}, Giver: game.Far2, Reader: game.Far1, Text: "\u05db\u05df"})
	l = l.WithPlay(0, p)
	if err := lesson.Validate(l); err != nil {
		t.Fatalf("the test's lesson is unsound: %v", err)
	}
	return l
}

func named(t testing.TB, name string) Sheet {
	t.Helper()
	s, err := SheetByName(name)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

func write(t testing.TB, l lesson.Lesson, sheet string, o *Options) ([]byte, Result) {
	t.Helper()
	var b bytes.Buffer
	r, err := Write(context.Background(), &b, l, named(t, sheet), o)
	if err != nil {
		t.Fatalf("Write(%s): %v", sheet, err)
	}
	return b.Bytes(), r
}

// poppler runs a program of Poppler (Debian package poppler-utils) on a PDF.
func poppler(t testing.TB, pdf []byte, program string, args ...string) string {
	t.Helper()
	c := exec.Command(program, args...)
	c.Stdin = bytes.NewReader(pdf)
	var stderr bytes.Buffer
	c.Stderr = &stderr
	out, err := c.Output()
	if err != nil || stderr.Len() > 0 {
		t.Fatalf("%s (Debian package poppler-utils): %v: %s", program, err, &stderr)
	}
	return string(out)
}

// text is what pdftotext reads, in the order of drawing, on one line.
func text(t testing.TB, pdf []byte) string {
	t.Helper()
	return oneLine(poppler(t, pdf, "pdftotext", "-raw", "-", "-"))
}

func oneLine(s string) string { return strings.Join(strings.Fields(s), " ") }

// pageText is the text of one page, from 1.
func pageText(t testing.TB, pdf []byte, page int) string {
	t.Helper()
	n := strconv.Itoa(page)
	return oneLine(poppler(t, pdf, "pdftotext", "-raw", "-f", n, "-l", n, "-", "-"))
}

// box is a word with its place in points from the page's upper left corner.
type box struct {
	page                  int
	x1, y1, x2, y2        float64
	word                  string
	pageWidth, pageHeight float64
}

var (
	pageOf = regexp.MustCompile(`<page width="([\d.]+)" height="([\d.]+)">`)
	wordOf = regexp.MustCompile(`<word xMin="([-\d.]+)" yMin="([-\d.]+)" xMax="([-\d.]+)" yMax="([-\d.]+)">(.*)</word>`)
)

func boxes(t testing.TB, pdf []byte) (all []box) {
	t.Helper()
	page, width, height := 0, 0.0, 0.0
	for line := range strings.Lines(poppler(t, pdf, "pdftotext", "-bbox", "-", "-")) {
		if m := pageOf.FindStringSubmatch(line); m != nil {
			page++
			width, height = number(t, m[1]), number(t, m[2])
		}
		if m := wordOf.FindStringSubmatch(line); m != nil {
			all = append(all, box{page, number(t, m[1]), number(t, m[2]), number(t, m[3]), number(t, m[4]), m[5], width, height})
		}
	}
	if len(all) == 0 {
		t.Fatal("pdftotext finds no words")
	}
	return all
}

func number(t testing.TB, s string) float64 {
	t.Helper()
	v, err := strconv.ParseFloat(s, 64)
	if err != nil {
		t.Fatal(err)
	}
	return v
}

// printed is a sheet with its Result.
type printed struct {
	pdf    []byte
	result Result
}

// prints are the demo lesson's sheets printed so far, by their names: many tests
// look at the same ones.
var prints = map[string]printed{}

// eachSheet runs a check on every sheet of the demo lesson, on both papers and
// in both languages.
func eachSheet(t *testing.T, check func(t *testing.T, pdf []byte, r Result, p Paper)) {
	t.Helper()
	defer words.Speak(words.English)
	for _, language := range words.Languages() {
		words.Speak(language)
		for _, p := range Papers {
			for _, s := range Sheets {
				name := fmt.Sprintf("%s-%s-%s", s.Name, p.Name, language.Tag())
				t.Run(name, func(t *testing.T) {
					if _, is := prints[name]; !is {
						pdf, r := write(t, demo(t), s.Name, &Options{Paper: p})
						prints[name] = printed{pdf, r}
					}
					check(t, prints[name].pdf, prints[name].result, p)
				})
			}
		}
	}
}
