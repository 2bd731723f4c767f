package look

import (
	"slices"
	"sync"

	"github.com/go-text/typesetting/di"
	"github.com/go-text/typesetting/font"
	"github.com/go-text/typesetting/font/opentype"
	"github.com/go-text/typesetting/language"
	"github.com/go-text/typesetting/shaping"
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"
)

// lines keeps the lines that were set: pictures of one play say the same words
// again and again.
var lines keptLines

// maxLines bounds the lines that are kept.
const maxLines = 4096

type lineKey struct {
	text string
	bold bool
}

type keptLines struct {
	mu     sync.Mutex
	known  map[lineKey]*Line
	setter setter
}

// Set sets a line of text: letters run as their script does (Unicode Standard
// Annex 9), join, carry accents and kern as the font says. The same text gives the
// same line, which is shared: it is not to be changed.
func Set(text string, bold bool) *Line {
	lines.mu.Lock()
	defer lines.mu.Unlock()
	key := lineKey{text, bold}
	if l, ok := lines.known[key]; ok {
		return l
	}
	if lines.known == nil || len(lines.known) >= maxLines {
		lines.known = map[lineKey]*Line{}
	}
	l := lines.setter.set([]rune(text), bold)
	lines.known[key] = l
	return l
}

// setter sets lines; it is not safe for two goroutines at once.
type setter struct {
	segments shaping.Segmenter
	shaper   shaping.HarfbuzzShaper
}

func (s *setter) set(text []rune, bold bool) *Line {
	l := &Line{}
	if len(text) == 0 {
		return l
	}
	for _, r := range text {
		if _, ok := ofLetter(r, bold); !ok && !slices.Contains(l.Lacks, r) && !unseen(r) {
			l.Lacks = append(l.Lacks, r)
		}
	}
	var pieces []piece
	for _, run := range runsOf(text) {
		input := shaping.Input{
			Text: text, RunStart: run.from, RunEnd: run.to, Direction: run.direction(),
			Size: fixed.I(Em), Language: language.NewLanguage("en"),
		}
		for _, part := range s.segments.Split(input, weight(bold)) {
			part.FontFeatures = featuresOf(part.Face)
			pieces = append(pieces, piece{run.level, s.shaper.Shape(part)})
		}
	}
	for _, p := range inSight(pieces) {
		l.add(text, p.shaped)
	}
	return l
}

// piece is a part of a line in one font and one direction.
type piece struct {
	level  int
	shaped shaping.Output
}

// weight finds fonts for the segmenter.
type weight bool

// ResolveFace implements shaping.Fontmap.
func (w weight) ResolveFace(r rune) *font.Face {
	f, _ := ofLetter(r, bool(w))
	return parsed[f]().setting
}

// fontOf is the font of a face that ResolveFace gave.
func fontOf(face *font.Face) Font {
	for f := range fontCount {
		if parsed[f]().setting == face {
			return f
		}
	}
	return Latin
}

// noLigatures keeps Latin letters apart: a document has each by itself.
var noLigatures = []shaping.FontFeature{
	{Tag: opentype.MustNewTag("liga")}, {Tag: opentype.MustNewTag("clig")},
}

func featuresOf(face *font.Face) []shaping.FontFeature {
	if fontOf(face) <= LatinBold {
		return noLigatures
	}
	return nil
}

// add puts glyphs at the end of the line.
func (l *Line) add(text []rune, out shaping.Output) {
	f, before := fontOf(out.Face), -1
	for _, g := range out.Glyphs {
		at := g.TextIndex()
		letters := ""
		if at != before {
			letters = string(text[at : at+g.RunesCount()])
		}
		before = at
		nominal, _ := out.Face.NominalGlyph(text[at])
		l.Glyphs = append(l.Glyphs, Glyph{
			Rune: text[at], Letters: letters, Plain: g.RunesCount() == 1 && g.GlyphsCount() == 1 && nominal == g.GlyphID,
			Back: out.Direction == di.DirectionRTL, Font: f, Index: sfnt.GlyphIndex(g.GlyphID),
			X: l.Width + units(g.XOffset), Y: -units(g.YOffset), Advance: float64(out.Face.HorizontalAdvance(g.GlyphID)), pen: l.Width, at: at,
		})
		l.Width += units(g.Advance)
	}
}

func units(v fixed.Int26_6) float64 { return float64(v) / 64 }
