package still

import (
	"bytes"
	"encoding/xml"
	"errors"
	"io"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"homeside/canvas"
	"homeside/canvas/look"
	"homeside/export"
	_ "homeside/internal/fixedseed"
	"homeside/model/units"
)

// element is an element of a document with its text.
type element struct {
	name string
	attr map[string]string
	text string
}

// elements reads a document strictly, as the standard library's XML decoder has it.
func elements(t *testing.T, doc []byte) (all []element) {
	t.Helper()
	d := xml.NewDecoder(bytes.NewReader(doc))
	for {
		token, err := d.Token()
		switch {
		case errors.Is(err, io.EOF):
			return all
		case err != nil:
			t.Fatalf("not well formed: %v", err)
		}
		switch token := token.(type) {
		case xml.StartElement:
			e := element{name: token.Name.Local, attr: map[string]string{}}
			for _, a := range token.Attr {
				e.attr[a.Name.Local] = a.Value
			}
			all = append(all, e)
		case xml.CharData:
			if len(all) > 0 {
				all[len(all)-1].text += strings.TrimSpace(string(token))
			}
		}
	}
}

func byName(all []element, name string) (found []element) {
	for _, e := range all {
		if e.name == name {
			found = append(found, e)
		}
	}
	return found
}

func TestSVGIsADocumentWithTitle(t *testing.T) {
	all := elements(t, writeBytes(t, "SVG", sampler{}, &export.Options{Width: 90, Height: 160}))
	root := all[0]
	for attribute, want := range map[string]string{
		"xmlns": "http://www.w3.org/2000/svg", "width": "90", "height": "160", "viewBox": "0 0 90 160",
		"role": "graphics-document document", "aria-label": `One <of> "each" & more`,
	} {
		if got := root.attr[attribute]; root.name != "svg" || got != want {
			t.Errorf("<%s %s=%q>, want %q", root.name, attribute, got, want)
		}
	}
	if title := byName(all, "title"); len(title) != 1 || title[0].text != `One <of> "each" & more` {
		t.Errorf("titles %v, want that of the scene", title)
	}
	desc := byName(all, "desc")
	if len(desc) != 1 || !strings.HasPrefix(desc[0].text, `box; glass over the box; ring with a "hole" & <more>; disc; bend; Fault & <volley>`) {
		t.Errorf("descriptions %v, want the labels in the order of drawing", desc)
	}
	if untitled := writeBytes(t, "SVG", play, nil); len(byName(elements(t, untitled), "title")) != 0 || bytes.Contains(untitled, []byte(`aria-label=""`)) {
		t.Error("a scene without a title has one")
	}
}

// samplerLabels are all labels of the sampler.
var samplerLabels = []string{"box", "glass over the box", `ring with a "hole" & <more>`, "disc", "bend",
	`Fault & <volley> "in" kitchen`, "Señal: ¿quién tapa? ÁÉÍÓÚÜ", "AVATAR, To, Te. 4-7-2", "Ελλάδα Жучок Tiếng Việt", apart, missing, joined,
	"time since the serve: 1.20 s"}

// Every label of what is drawn, and every text, can be read out; what draws
// nothing is not there.
func TestSVGLabels(t *testing.T) {
	var got []string
	for _, e := range elements(t, writeBytes(t, "SVG", sampler{}, nil))[1:] {
		label, labelled := e.attr["aria-label"]
		if labelled != (e.attr["role"] == "img") || labelled && label == "" {
			t.Errorf("<%s> has role %q and label %q", e.name, e.attr["role"], label)
		}
		if labelled {
			got = append(got, label)
		}
	}
	if !slices.Equal(got, samplerLabels) {
		t.Errorf("labels\n got %q\nwant %q", got, samplerLabels)
	}
}

func TestSpoken(t *testing.T) {
	for _, c := range []struct{ label, text, want string }{
		{"", "Ma", "Ma"}, {"Mara", "Ma", "Mara"}, {"time", "1 s", "time: 1 s"}, {"1 s left", "1 s", "1 s left"},
	} {
		if got := spoken(c.label, c.text); got != c.want {
			t.Errorf("spoken(%q, %q) = %q, want %q", c.label, c.text, got, c.want)
		}
	}
}

// Each letter's outline stands once, is used by its name, and no font is asked for.
func TestSVGSharesGlyphs(t *testing.T) {
	doc := writeBytes(t, "SVG", sampler{}, nil)
	all := elements(t, doc)
	ids, uses := map[string]int{}, map[string]int{}
	for _, e := range all {
		if id := e.attr["id"]; id != "" {
			ids[id]++
		}
		if e.name == "use" {
			uses[strings.TrimPrefix(e.attr["href"], "#")]++
		}
	}
	letters := 0
	for id, n := range ids {
		if n != 1 || uses[id] == 0 {
			t.Errorf("outline %s stands %d times and is used %d times, want once, and at least once", id, n, uses[id])
		}
		letters += uses[id]
		delete(uses, id)
	}
	if len(uses) != 0 || letters < len(ids)+20 {
		t.Errorf("%d uses of %d outlines, and of %v that are not there", letters, len(ids), uses)
	}
	for _, foreign := range []string{"<text", "font", "http://www.w3.org/2000/svg\" href", "url(", "<image", "<style", "<script"} {
		if bytes.Contains(doc, []byte(foreign)) {
			t.Errorf("the picture has %s", foreign)
		}
	}
}

// Four letters that the fonts lack are four boxes (glyph 0), in both weights.
func TestSVGShowsMissingLetters(t *testing.T) {
	doc := string(writeBytes(t, "SVG", sampler{}, nil))
	if got := strings.Count(doc, `xlink:href="#b0"`); got != 4 {
		t.Errorf("%d boxes for the 4 letters that are missing in %q", got, missing)
	}
}

func TestSVGTransparent(t *testing.T) {
	for transparent, want := range map[bool]int{false: 1, true: 0} {
		if got := byName(elements(t, writeBytes(t, "SVG", sampler{transparent}, nil)), "rect"); len(got) != want {
			t.Errorf("transparent %v: backgrounds %v, want %d", transparent, got, want)
		}
	}
	glass := byName(elements(t, writeBytes(t, "SVG", sampler{}, nil)), "path")
	i := slices.IndexFunc(glass, func(e element) bool { return strings.HasPrefix(e.attr["aria-label"], "glass") })
	if got := glass[i].attr["fill-opacity"] + " " + glass[i].attr["stroke-opacity"]; got != "0.502 0.502" { // 128/255
		t.Errorf("glass has opacities %s, want 0.502 0.502", got)
	}
}

// What XML cannot say is replaced, and the document stays one.
func TestEscaped(t *testing.T) {
	for s, want := range map[string]string{
		"a<b>&\"c'": "a&lt;b&gt;&amp;&#34;c&#39;", "\x00\x0b\x1b": "\uFFFD\uFFFD\uFFFD", "\xff": "\uFFFD", "a\nb": "a&#xA;b", "ñ🏓": "ñ🏓",
	} {
		if got := escaped(s); got != want {
			t.Errorf("escaped(%q) = %q, want %q", s, got, want)
		}
	}
}

func TestDecimal(t *testing.T) {
	for _, c := range []struct {
		v      float64
		digits int
		want   string
	}{
		{0, 2, "0"}, {-0.001, 2, "0"}, {1.5, 2, "1.5"}, {100, 2, "100"}, {100, 0, "100"}, {-2.346, 2, "-2.35"}, {1e6, 2, "1000000"}, {0.018, 6, "0.018"},
	} {
		if got := decimal(c.v, c.digits); got != c.want {
			t.Errorf("decimal(%v, %d) = %q, want %q", c.v, c.digits, got, c.want)
		}
	}
}

// The outline of a letter without curves, in numbers: Noto Sans draws a capital
// I as straight sides from the baseline to its height of 714 units.
func TestOutlinePath(t *testing.T) {
	line, _ := look.Glyphs("I", false)
	outline, err := look.GlyphOutline(look.Latin, line[0].Index)
	if err != nil {
		t.Fatal(err)
	}
	path := outlinePath(outline)
	if !regexp.MustCompile(`^M-?\d+ -?\d+(L-?\d+ -?\d+)+Z$`).MatchString(path) {
		t.Errorf("I is %q, want straight sides in whole units", path)
	}
	for _, y := range []int{0, -714} {
		if !strings.Contains(path, " "+strconv.Itoa(y)) {
			t.Errorf("I is %q, want it to reach %d", path, y)
		}
	}
}

// worded is a sampler with a title, a label and a text of somebody's own.
type worded struct {
	sampler
	words string
}

func (w worded) Static(width, height int) *canvas.Scene {
	s := w.sampler.Static(width, height)
	s.Title, s.Panels[0].Shapes[0].Label = w.words, w.words
	return s
}

func (w worded) Moving(width, height int, t units.Seconds) *canvas.Scene {
	s := w.sampler.Moving(width, height, t)
	s.Title, s.Panels[0].Shapes[0].Text.Text = w.words, w.words
	return s
}

// Whatever the words, the SVG is a document that says them, and the PDF is
// written; what XML has no way to say (XML 1.0, 2.2) is replaced.
func TestAnyWords(t *testing.T) {
	o := &export.Options{Width: 36, Height: 64}
	rapid.Check(t, func(rt *rapid.T) {
		w := worded{words: rapid.String().Draw(rt, "words")}
		all := elements(t, writeBytes(t, "SVG", w, o))
		want := strings.Map(func(r rune) rune {
			if r < ' ' && r != '\t' && r != '\n' && r != '\r' || r == 0xFFFE || r == 0xFFFF {
				return '\uFFFD'
			}
			return r
		}, w.words)
		if got := all[0].attr["aria-label"]; got != want {
			rt.Errorf("title %q is read as %q, want %q", w.words, got, want)
		}
	})
	for _, words := range []string{"", " ", "\x00\n\r\t", "\\", "((", "))", strings.Repeat("W", 5000), "\U0010FFFF\uFFFF\uFEFF", "\xff\xfe"} {
		if pdf := writeBytes(t, "PDF", worded{words: words}, o); !bytes.HasSuffix(bytes.TrimSpace(pdf), []byte("%%EOF")) {
			t.Errorf("the PDF of %q has no end", words)
		}
	}
}
