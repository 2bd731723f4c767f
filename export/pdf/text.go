package pdf

import (
	"encoding/binary"
	"unicode/utf16"

	"golang.org/x/image/font/sfnt"

	"homeside/canvas"
	"homeside/canvas/look"
)

const fontFamily = "NotoSans"

func fontStyle(bold bool) string {
	if bold {
		return "B"
	}
	return ""
}

// Text implements canvas.Surface. fpdf knows no kerning: a line is written in
// pieces, each where the screen has it.
func (p *page) Text(_ canvas.Info, t canvas.PxText) {
	line, width := look.Glyphs(t.Text, t.Bold)
	at := canvas.Px{X: t.Start(width * t.Size / look.Em), Y: t.At.Y}
	p.fill(t.Colour)
	p.doc.pdf.SetTextColor(int(t.Colour.R), int(t.Colour.G), int(t.Colour.B))
	p.doc.pdf.SetFont(fontFamily, fontStyle(t.Bold), t.Size*p.scale)
	for len(line) > 0 {
		n := piece(line)
		p.piece(line[:n], canvas.Px{X: at.X + line[0].X*t.Size/look.Em, Y: at.Y}, t)
		line = line[n:]
	}
}

// lacking is whether the font has no letter for a glyph.
func lacking(g look.Glyph) bool { return g.Index == 0 }

// piece is how many glyphs at the head of a line, 1 at least, stand side by side
// as the font has them. A lacking letter is a piece of its own.
func piece(line []look.Glyph) int {
	for i := 1; i < len(line); i++ {
		a, b := line[i-1], line[i]
		if lacking(a) || lacking(b) || a.Advance == 0 || a.X+a.Advance != b.X {
			return i
		}
	}
	return len(line)
}

func (p *page) piece(glyphs []look.Glyph, at canvas.Px, t canvas.PxText) {
	if lacking(glyphs[0]) {
		p.doc.lacking[glyphs[0].Rune] = true
		p.box(at, t)
		return
	}
	letters := make([]rune, len(glyphs))
	for i, g := range glyphs {
		letters[i] = g.Rune
	}
	to := p.points(at)
	p.doc.pdf.Text(to.X, to.Y, string(letters))
}

// box draws the fonts' own box for a letter that they lack, which fpdf leaves out.
func (p *page) box(at canvas.Px, t canvas.PxText) {
	outline, err := look.GlyphOutline(0, t.Bold)
	if err != nil && p.doc.err == nil {
		p.doc.err = err
	}
	p.outline(placed(outline, at, t.Size/look.Em))
	p.doc.pdf.DrawPath("F")
}

// placed is a glyph's outline at a place in pixels; the box has straight sides.
func placed(outline sfnt.Segments, at canvas.Px, scale float64) []canvas.PxStep {
	steps := make([]canvas.PxStep, len(outline))
	for i, s := range outline {
		to := canvas.Px{X: at.X + float64(s.Args[0].X)/64*scale, Y: at.Y + float64(s.Args[0].Y)/64*scale}
		steps[i] = canvas.PxStep{Op: canvas.Line, P: [3]canvas.Px{to}}
		if s.Op == sfnt.SegmentOpMoveTo {
			steps[i].Op = canvas.Move
		}
	}
	return steps
}

// utf16BE is a text as PDF keeps it beside the page (ISO 32000-1, 7.9.2.2). The
// one of fpdf fails on signs beyond the first plane and on broken UTF-8.
func utf16BE(s string) string {
	out := []byte{0xFE, 0xFF}
	for _, unit := range utf16.Encode([]rune(s)) {
		out = binary.BigEndian.AppendUint16(out, unit)
	}
	return string(out)
}
