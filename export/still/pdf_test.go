package still

import (
	"bytes"
	"regexp"
	"slices"
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
	for size, want := range map[[2]int]string{{1001, 500}: "750.75 x 375 pts", {16, 16}: "12 x 12 pts", {8192, 8192}: "6144 x 6144 pts"} {
		info := tool(t, "poppler-utils", writeBytes(t, "PDF", sampler{}, &export.Options{Width: size[0], Height: size[1]}), "pdfinfo", "FILE")
		if !bytes.Contains(info, []byte(want)) {
			t.Errorf("pdfinfo of %v px says\n%s, want %s", size, info, want)
		}
	}
}

// All fonts that are used are in the file, and of them only the letters used: one
// whole font is more than ten times as large as the file.
func TestPDFEmbedsItsFonts(t *testing.T) {
	lines := strings.Split(strings.TrimSpace(poppler(t, "pdffonts", "FILE")), "\n")
	embedded, found := regexp.MustCompile(`^utf8(notosans\w*) +CID TrueType +Identity-H +yes`), []string{}
	for _, line := range lines[2:] {
		if m := embedded.FindStringSubmatch(line); m != nil {
			found = append(found, m[1])
		}
	}
	slices.Sort(found)
	if want := []string{"notosans", "notosansB", "notosansarabic", "notosanshebrew"}; !slices.Equal(found, want) || len(lines) != 2+len(want) {
		t.Errorf("pdffonts says\n%s\nwant embedded %v", strings.Join(lines, "\n"), want)
	}
	if size, font := len(writeBytes(t, "PDF", sampler{}, nil)), len(look.Latin.TTF()); size*10 > font {
		t.Errorf("the file has %d bytes, want less than a tenth of the whole font's %d", size, font)
	}
}

// Texts can be searched and copied, also where they are kerned.
func TestPDFText(t *testing.T) {
	got := poppler(t, "pdftotext", "-layout", "FILE", "-")
	for _, want := range []string{`Fault & <volley> "in" kitchen`, "Señal: ¿quién tapa? ÁÉÍÓÚÜ", "AVATAR, To, Te. 4-7-2", "Ελλάδα Жучок Tiếng Việt", "(Щука č) \\ Шќ", "1.20 s", "קו", "7-2", "لا"} {
		if !strings.Contains(got, want) {
			t.Errorf("pdftotext gives\n%s\nwant %q in it", got, want)
		}
	}
}

// Titles come back as they went in, signs beyond the first plane, brackets and
// line ends in their codes included.
func TestPDFTitle(t *testing.T) {
	for title, want := range map[string]string{
		"Señal (č) \\ \U0001F3D3 → 4-7-2": "Señal (č) \\ \U0001F3D3 → 4-7-2", "a\xffb": "a\uFFFDb", "Щ)(": "Щ)(",
	} {
		info := tool(t, "poppler-utils", writeBytes(t, "PDF", worded{words: title}, &export.Options{Width: 36, Height: 64}), "pdfinfo", "-enc", "UTF-8", "FILE")
		if got := regexp.MustCompile(`Title: +(.*)`).FindSubmatch(info); got == nil || string(got[1]) != want {
			t.Errorf("the title %q is read as\n%s, want %q", title, info, want)
		}
	}
	if info := tool(t, "poppler-utils", writeBytes(t, "PDF", play, nil), "pdfinfo", "FILE"); bytes.Contains(info, []byte("Title")) {
		t.Errorf("a scene without a title has one:\n%s", info)
	}
}
