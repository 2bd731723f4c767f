package still

import (
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"homeside/canvas"
	"homeside/export"
	"homeside/export/exporttest"
	"homeside/model/units"
)

// Chromium, where most people see an SVG, draws the same picture as the PNG,
// knows its title and asks the network for nothing. Its letters are smoothed
// otherwise than ours.
func TestChromiumDrawsTheSVG(t *testing.T) {
	at, most := units.Seconds(1.2), tolerance{mean: 0.6, block: 10}
	for name, c := range map[string]struct {
		src   export.Source
		o     export.Options
		title string
	}{
		"sampler":         {sampler{}, export.Options{Width: 363, Height: 641}, `One <of> "each" & more`},
		"built-in lesson": {builtIn(t, 0, canvas.Upright), export.Options{Width: 360, Height: 640, At: &at}, ""},
	} {
		path := filepath.Join(t.TempDir(), "x.svg")
		if err := os.WriteFile(path, writeBytes(t, "SVG", c.src, &c.o), 0o600); err != nil {
			t.Fatal(err)
		}
		page := exporttest.OpenPage(t, path, c.o.Width, c.o.Height)
		if got := difference(t, page.Picture(), decoded(t, writeBytes(t, "PNG", c.src, &c.o))); got.exceeds(most) {
			t.Errorf("%s in Chromium differs from the PNG by %+.2f, want at most %+.2f", name, got, most)
		}
		if got := exporttest.Eval[string](page, `document.documentElement.querySelector("title").textContent`); c.title != "" && got != c.title {
			t.Errorf("%s: Chromium reads the title %q, want %q", name, got, c.title)
		}
		if len(page.Errors()) != 0 || len(page.Requests()) != 1 {
			t.Errorf("%s: errors %q, requests %q, want none but the picture itself", name, page.Errors(), page.Requests())
		}
	}
}

// Chromium tells screen readers the picture's title and description, and every
// label, in the order of drawing.
func TestChromiumReadsTheSVGOut(t *testing.T) {
	path := filepath.Join(t.TempDir(), "x.svg")
	if err := os.WriteFile(path, writeBytes(t, "SVG", sampler{}, nil), 0o600); err != nil {
		t.Fatal(err)
	}
	var root exporttest.Spoken
	var labels []string
	for _, s := range exporttest.OpenPage(t, path, 360, 640).Spoken() {
		switch {
		case s.Role == "image" || s.Role == "img":
			labels = append(labels, s.Name)
		case root.Name == "":
			root = s
		}
	}
	if root.Name != `One <of> "each" & more` || !strings.HasPrefix(root.Description, "box; glass over the box; ") {
		t.Errorf("the picture is read out as %+v", root)
	}
	if !slices.Equal(labels, samplerLabels) {
		t.Errorf("labels are read out as\n%q, want\n%q", labels, samplerLabels)
	}
}

// libxml2's xmllint finds well-formed XML, whatever the words are.
func TestSVGIsXML(t *testing.T) {
	for _, doc := range [][]byte{
		writeBytes(t, "SVG", sampler{}, nil), writeBytes(t, "SVG", worded{words: "<&>\"' ]]> \x00\x0b\ufffe \xff 中 שלום"}, nil),
		writeBytes(t, "SVG", builtIn(t, 0, canvas.Lying), &export.Options{Width: 640, Height: 360}),
	} {
		tool(t, "libxml2-utils", doc, "xmllint", "--nonet", "--noout", "FILE")
	}
}
