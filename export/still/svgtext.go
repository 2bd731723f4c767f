package still

import (
	"bytes"
	"encoding/xml"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"

	"homeside/canvas"
	"homeside/canvas/look"
)

// Text implements canvas.Surface: a group of uses of the glyphs' outlines.
func (s *svg) Text(info canvas.Info, t canvas.PxText) {
	line, width := look.Glyphs(t.Text, t.Bold)
	s.lack(look.Lacking(t.Text))
	scale := t.Size / look.Em
	fmt.Fprintf(&s.body, `<g%s%s%s transform="translate(%s %s) scale(%s)">`, s.dark.class(hue{fill: t.Colour}), s.labels.of(spoken(info.Label, t.Text)), paint("fill", t.Colour),
		decimal(t.Start(width*t.Size/look.Em), 2), decimal(t.At.Y, 2), decimal(scale, 6))
	for _, g := range line {
		id, err := s.glyphs.id(g.Font, g.Index)
		switch {
		case err != nil && s.err == nil:
			s.err = err
		case id != "":
			fmt.Fprintf(&s.body, `<use xlink:href="#%s" x="%s"`, id, decimal(g.X, 2))
			if g.Y != 0 {
				fmt.Fprintf(&s.body, ` y="%s"`, decimal(g.Y, 2))
			}
			s.body.WriteString("/>")
		}
	}
	s.body.WriteString("</g>\n")
}

// lack notes letters that no font has, each once.
func (s *svg) lack(letters []rune) {
	for _, r := range letters {
		if !slices.Contains(s.lacks, r) {
			s.lacks = append(s.lacks, r)
		}
	}
}

// spoken is what to read out for a text: its label, and its words if the label
// does not say them.
func spoken(label, text string) string {
	switch {
	case strings.Contains(label, text):
		return label
	case label == "":
		return text
	default:
		return label + ": " + text
	}
}

// svgLabels are the labels in the order of drawing, each once.
type svgLabels struct{ all []string }

// of notes a label and gives its attributes: "" for none.
func (l *svgLabels) of(label string) string {
	if label == "" {
		return ""
	}
	if !slices.Contains(l.all, label) {
		l.all = append(l.all, label)
	}
	return ` role="img" aria-label="` + escaped(label) + `"`
}

// escaped is s for an attribute or a text of XML; what XML cannot say at all
// becomes U+FFFD.
func escaped(s string) string {
	var b strings.Builder
	_ = xml.EscapeText(&b, []byte(s)) // a Builder takes everything
	return b.String()
}

// svgGlyphs are the outlines that are used. Their names and sizes do not depend
// on the picture, so that several pictures can stand in one page.
type svgGlyphs struct {
	defs bytes.Buffer
	ids  map[string]bool // whether it has an outline
}

// fontLetters begin the names of glyphs, by look.Font.
const fontLetters = "rbhiac"

// id names a glyph's outline; "" if it has none, like a space.
func (g *svgGlyphs) id(font look.Font, index sfnt.GlyphIndex) (string, error) {
	id := string(fontLetters[font]) + strconv.Itoa(int(index))
	if inked, known := g.ids[id]; known {
		return named(id, inked), nil
	}
	outline, err := look.GlyphOutline(font, index)
	if err != nil {
		return "", err
	}
	if g.ids == nil {
		g.ids = map[string]bool{}
	}
	g.ids[id] = len(outline) > 0
	if len(outline) > 0 {
		fmt.Fprintf(&g.defs, "<path id=\"%s\" d=\"%s\"/>\n", id, outlinePath(outline))
	}
	return named(id, len(outline) > 0), nil
}

func named(id string, inked bool) string {
	if inked {
		return id
	}
	return ""
}

func outlinePath(outline sfnt.Segments) string {
	var b bytes.Buffer
	for i, s := range outline {
		if s.Op == sfnt.SegmentOpMoveTo && i > 0 {
			b.WriteByte('Z')
		}
		b.WriteByte("MLQC"[s.Op])
		for j, p := range s.Args[:[...]int{1, 1, 2, 3}[s.Op]] {
			if j > 0 {
				b.WriteByte(' ')
			}
			b.WriteString(decimal(em(p.X), 2) + " " + decimal(em(p.Y), 2))
		}
	}
	b.WriteByte('Z')
	return b.String()
}

func em(v fixed.Int26_6) float64 { return float64(v) / 64 }

// decimal is v with at most so many digits behind the point.
func decimal(v float64, digits int) string {
	s := strconv.FormatFloat(v, 'f', digits, 64)
	if strings.Contains(s, ".") {
		s = strings.TrimRight(strings.TrimRight(s, "0"), ".")
	}
	if s == "-0" {
		return "0"
	}
	return s
}
