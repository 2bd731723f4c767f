package pdf

import (
	"encoding/binary"
	"slices"
	"unicode/utf16"

	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"

	"homeside/canvas"
	"homeside/canvas/look"
)

// families are the names of the fonts, two of look.Font each.
var families = [...]string{"NotoSans", "NotoSansHebrew", "NotoSansArabic"}

// setFont takes a font for what comes next; the document has those that it needs.
func (p *page) setFont(f look.Font, size float64) {
	family, style := families[f/2], ""
	if f.Bold() {
		style = "B"
	}
	if !p.doc.fonts[f] {
		p.doc.pdf.AddUTF8FontFromBytes(family, style, f.TTF())
		p.doc.fonts[f] = true
	}
	p.doc.pdf.SetFont(family, style, size*p.scale)
}

// Text implements canvas.Surface. fpdf knows no kerning and sets no script: a
// line is written in pieces, each where the screen has it, and what is not just
// the font's letter is drawn, with the letters unseen under it.
func (p *page) Text(_ canvas.Info, t canvas.PxText) {
	line, width := look.Glyphs(t.Text, t.Bold)
	scale := t.Size / look.Em
	at := canvas.Px{X: t.Start(width * scale), Y: t.At.Y}
	p.fill(t.Colour)
	p.doc.pdf.SetTextColor(int(t.Colour.R), int(t.Colour.G), int(t.Colour.B))
	for len(line) > 0 {
		n := piece(line)
		p.piece(line[:n], canvas.Px{X: at.X + line[0].X*scale, Y: at.Y + line[0].Y*scale}, t)
		line = line[n:]
	}
}

// lacking is whether the fonts have no letter for a glyph.
func lacking(g look.Glyph) bool { return g.Index == 0 }

// written is whether fpdf can write a glyph as a letter.
func written(g look.Glyph) bool { return g.Plain && !lacking(g) }

// piece is how many glyphs at the head of a line, 1 at least, can be written side
// by side as the font has them.
func piece(line []look.Glyph) int {
	for i := 1; i < len(line); i++ {
		a, b := line[i-1], line[i]
		if !written(a) || !written(b) || a.Font != b.Font || a.Advance == 0 || a.Y != b.Y || a.X+a.Advance != b.X {
			return i
		}
	}
	return len(line)
}

func (p *page) piece(glyphs []look.Glyph, at canvas.Px, t canvas.PxText) {
	first := glyphs[0]
	if lacking(first) {
		p.doc.lacking[first.Rune] = true
	}
	if !written(first) {
		p.draw(first, at, t)
		return
	}
	letters := ""
	for _, g := range glyphs {
		letters += g.Letters
	}
	to := p.points(at)
	p.setFont(first.Font, t.Size)
	p.doc.pdf.Text(to.X, to.Y, letters)
}

// unseen is PDF's way to write what is only searched and copied (ISO 32000-1, 9.3.6).
const unseen = 3

// draw draws a glyph as an outline. What the fonts lack has no letters under it.
func (p *page) draw(g look.Glyph, at canvas.Px, t canvas.PxText) {
	outline, err := look.GlyphOutline(g.Font, g.Index)
	if err != nil && p.doc.err == nil {
		p.doc.err = err
	}
	if len(outline) > 0 {
		p.outline(placed(outline, at, t.Size/look.Em))
		p.doc.pdf.DrawPath("F")
	}
	if lacking(g) || g.Letters == "" {
		return
	}
	to := p.points(at)
	p.setFont(g.Font, t.Size)
	p.doc.pdf.SetTextRenderingMode(unseen)
	p.doc.pdf.Text(to.X, to.Y, seen(g))
	p.doc.pdf.SetTextRenderingMode(0)
}

// seen are a glyph's letters from left to right, as readers of PDF expect them.
func seen(g look.Glyph) string {
	letters := []rune(g.Letters)
	if g.Back {
		slices.Reverse(letters)
	}
	return string(letters)
}

// placed is a glyph's outline at a place in pixels.
func placed(outline sfnt.Segments, at canvas.Px, scale float64) []canvas.PxStep {
	var steps []canvas.PxStep
	to := func(p fixed.Point26_6) canvas.Px {
		return canvas.Px{X: at.X + float64(p.X)/64*scale, Y: at.Y + float64(p.Y)/64*scale}
	}
	var pen canvas.Px
	for _, s := range outline {
		a, b, c := to(s.Args[0]), to(s.Args[1]), to(s.Args[2])
		switch s.Op {
		case sfnt.SegmentOpMoveTo:
			steps, pen = append(steps, canvas.PxStep{Op: canvas.Move, P: [3]canvas.Px{a}}), a
		case sfnt.SegmentOpLineTo:
			steps, pen = append(steps, canvas.PxStep{Op: canvas.Line, P: [3]canvas.Px{a}}), a
		case sfnt.SegmentOpQuadTo: // as a cubic: its inner points are two thirds of the way to the middle one
			steps = append(steps, canvas.PxStep{Op: canvas.Curve, P: [3]canvas.Px{between(pen, a), between(b, a), b}})
			pen = b
		case sfnt.SegmentOpCubeTo:
			steps, pen = append(steps, canvas.PxStep{Op: canvas.Curve, P: [3]canvas.Px{a, b, c}}), c
		}
	}
	return steps
}

// between is two thirds of the way from a to b.
func between(a, b canvas.Px) canvas.Px {
	return canvas.Px{X: a.X + (b.X-a.X)*2/3, Y: a.Y + (b.Y-a.Y)*2/3}
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
