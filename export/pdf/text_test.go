package pdf

import (
	"bytes"
	"os/exec"
	"regexp"
	"testing"

	"homeside/canvas"
	"homeside/canvas/look"
)

// Letters that stand as the font has them are one piece; kerned and missing ones,
// letters with accents of their own and other fonts begin another.
func TestPieces(t *testing.T) {
	for text, want := range map[string][]string{
		"serve": {"serve"}, "AVA": {"A", "V", "A"}, "a→b": {"a", "→", "b"}, "e\u0301te": {"e\u0301", "te"}, "Te אב": {"T", "e ", "בא"}, "→→": {"→", "→"},
	} {
		line, _ := look.Glyphs(text, false)
		for i, w := range want {
			n := piece(line)
			got := ""
			for _, g := range line[:n] {
				got += g.Letters
			}
			if line = line[n:]; got != w {
				t.Errorf("%q: piece %d is %q, want %q", text, i, got, w)
				break
			}
		}
		if len(line) != 0 {
			t.Errorf("%q: %d letters are left after %q", text, len(line), want)
		}
	}
}

// A document tells the letters that stand in it as boxes, each once.
func TestLacking(t *testing.T) {
	d := New("")
	d.AddPage(Size{100, 100})
	for _, text := range []string{"serve", "\U0001F3D3 a", "中\U0001F3D3"} {
		s := &canvas.Scene{Width: 100, Height: 100, PxPerPoint: 1, Panels: []canvas.Panel{{View: canvas.View{PxPerFoot: 1}}}}
		s.Panels[0].Add(canvas.Shape{Text: &canvas.Text{Text: text, Size: 9}})
		d.Draw(s, canvas.Px{}, 1)
	}
	if got, want := string(d.Lacking()), "中\U0001F3D3"; got != want {
		t.Errorf("Lacking() = %q, want %q", got, want)
	}
}

// Scenes on one page stand where they are put, at their scale: a box of 10 x 10
// px at (20, 30) and 2 points for a pixel. pdftotext (Poppler) tells the place
// of a word in points.
func TestDrawPlacesScenes(t *testing.T) {
	d := New("places")
	d.AddPage(Size{200, 100})
	s := &canvas.Scene{Width: 50, Height: 50, PxPerPoint: 1, Panels: []canvas.Panel{{View: canvas.View{PxPerFoot: 1}}}}
	s.Panels[0].Add(canvas.Shape{Text: &canvas.Text{Text: "word", Size: 10, At: canvas.Pos{Right: 10, Down: 20}, Align: canvas.Start}})
	d.Draw(s, canvas.Px{X: 20, Y: 30}, 2)
	var b bytes.Buffer
	if err := d.Write(&b); err != nil {
		t.Fatal(err)
	}
	c := exec.Command("pdftotext", "-bbox", "-", "-")
	c.Stdin = &b
	out, err := c.Output()
	if err != nil {
		t.Fatalf("pdftotext (Debian package poppler-utils): %v", err)
	}
	if !regexp.MustCompile(`<page width="200.000000" height="100.000000">\s*<word xMin="40.000000" [^>]*>word<`).Match(out) {
		t.Errorf("pdftotext says\n%s\nwant a word from 20 + 2 x 10 points on", out)
	}
}
