package main

import (
	"encoding/xml"
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"
)

// The ending chooses the format, in any case; the picture has the size that is
// asked for, at 96 px to the inch of 72 points on a PDF page, and the play's title.
func TestExportVectors(t *testing.T) {
	for _, c := range []struct{ name, args, want string }{
		{"x.svg", "--size 300x500", `^<svg [^>]* width="300" height="500" viewBox="0 0 300 500"`},
		{"x.SVG", "--at 1.2", `^<svg [^>]* width="720" height="1280"`},
		{"x.svg", "--play 1", `<title>` + regexp.QuoteMeta(drill().Plays[0].Title) + `</title>`},
		{"x.pdf", "--size 320x640 --at 1", `^%PDF-1\.[\s\S]*/MediaBox \[0 0 240.00 480.00\]`},
		{"x.PDF", "--view lying --size 1280x720", `/MediaBox \[0 0 960.00 540.00\]`},
	} {
		data, err := os.ReadFile(exported(t, c.name, strings.Fields(c.args)...))
		if err != nil {
			t.Fatal(err)
		}
		if !regexp.MustCompile(c.want).Match(data) {
			t.Errorf("export %s %s begins with %.300q, want %s", c.name, c.args, data, c.want)
		}
	}
}

// A player of the lesson, the ball and the net can be read out in an exported SVG.
func TestExportSVGReadsOut(t *testing.T) {
	data, err := os.ReadFile(exported(t, "x.svg", "--at", "0"))
	if err != nil {
		t.Fatal(err)
	}
	var doc struct {
		Desc string `xml:"desc"`
	}
	if err := xml.Unmarshal(data, &doc); err != nil {
		t.Fatal(err)
	}
	labels := strings.Split(doc.Desc, "; ")
	for _, start := range []string{"net", "ball", drill().Teams[0].Players[0].Name} {
		if !slices.ContainsFunc(labels, func(l string) bool { return strings.HasPrefix(l, start) }) || !strings.Contains(string(data), `role="img" aria-label="`+start) {
			t.Errorf("no label begins with %q in %q", start, labels)
		}
	}
}
