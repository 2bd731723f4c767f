package still

import (
	"bytes"
	"regexp"
	"strings"
	"testing"

	"homeside/canvas/look"
	"homeside/export"
)

// poppler runs a program of Poppler on a PDF of the sampler at 720 x 1280 px.
func poppler(t *testing.T, program string, args ...string) string {
	t.Helper()
	return string(tool(t, "poppler-utils", writeBytes(t, "PDF", sampler{}, nil), program, args...))
}

// 720 x 1280 px at 96 px to the inch are 540 x 960 points (72 to the inch).
func TestPDFPage(t *testing.T) {
	info := poppler(t, "pdfinfo", "FILE")
	for _, want := range []string{`Title: +One <of> "each" & more\n`, `Pages: +1\n`, `Page size: +540 x 960 pts`, `CreationDate: +Sat Jan +1 00:00:00 2000`, `JavaScript: +no`, `Encrypted: +no`} {
		if !regexp.MustCompile(want).MatchString(info) {
			t.Errorf("pdfinfo says\n%s, want %s", info, want)
		}
	}
	wide := tool(t, "poppler-utils", writeBytes(t, "PDF", sampler{}, &export.Options{Width: 1001, Height: 500}), "pdfinfo", "FILE")
	if !bytes.Contains(wide, []byte("750.75 x 375 pts")) {
		t.Errorf("pdfinfo of 1001 x 500 px says\n%s, want 750.75 x 375 pts", wide)
	}
}

// Both fonts are in the file, and of them only the letters used: one whole font
// is more than ten times as large as the file.
func TestPDFEmbedsItsFonts(t *testing.T) {
	lines := strings.Split(strings.TrimSpace(poppler(t, "pdffonts", "FILE")), "\n")
	embedded := regexp.MustCompile(`^utf8notosansB? +CID TrueType +Identity-H +yes`)
	if len(lines) != 4 || !embedded.MatchString(lines[2]) || !embedded.MatchString(lines[3]) {
		t.Errorf("pdffonts says\n%s\nwant two embedded fonts", strings.Join(lines, "\n"))
	}
	if size, font := len(writeBytes(t, "PDF", sampler{}, nil)), len(look.TTF(false)); size*10 > font {
		t.Errorf("the file has %d bytes, want less than a tenth of the whole font's %d", size, font)
	}
}

// Texts can be searched and copied, also where they are kerned.
func TestPDFText(t *testing.T) {
	got := poppler(t, "pdftotext", "-layout", "FILE", "-")
	for _, want := range []string{`Fault & <volley> "in" kitchen`, "Señal: ¿quién tapa? ÁÉÍÓÚÜ", "AVATAR, To, Te. 4-7-2", "Ελλάδα Жучок Tiếng Việt", "1.20 s"} {
		if !strings.Contains(got, want) {
			t.Errorf("pdftotext gives\n%s\nwant %q in it", got, want)
		}
	}
}

// Letters that stand as the font has them are one piece; kerned and missing ones
// and marks without a width begin another.
func TestPieces(t *testing.T) {
	for text, want := range map[string][]string{
		"serve": {"serve"}, "AVA": {"A", "V", "A"}, "a→b": {"a", "→", "b"}, "e\u0301te": {"e\u0301", "te"}, "→→": {"→", "→"},
	} {
		line, _ := look.Glyphs(text, false)
		for i, w := range want {
			n := piece(line)
			got := ""
			for _, g := range line[:n] {
				got += string(g.Rune)
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
