package raster

import (
	"image"
	"image/draw"
	"math"

	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"
	"golang.org/x/image/vector"

	"homeside/canvas"
	"homeside/canvas/look"
)

// places is how many places a letter can have within a pixel, across and down:
// letters that move by quarters of a pixel do not jitter.
const places = 4

// maxMasks bounds the bytes of the masks that are kept.
const maxMasks = 32 << 20

// glyphs keeps the masks of letters by font, size, letter and place within a
// pixel. Its zero value is ready; it is not safe for two goroutines at once.
type glyphs struct {
	masks map[maskKey]glyph
	bytes int
	area  vector.Rasterizer
}

type maskKey struct {
	font   look.Font
	letter sfnt.GlyphIndex
	size   float64
	x, y   uint8 // the place within a pixel, of places
}

// glyph is a letter's mask and where its corner is from the pixel of the dot.
type glyph struct {
	mask *image.Alpha // nil for a blank
	from image.Point
}

// placed is a mask in a picture.
type placed struct {
	mask *image.Alpha
	box  image.Rectangle
}

// lay appends the letters of a text to line.
func (g *glyphs) lay(line []placed, t canvas.PxText) []placed {
	set := look.Set(t.Text, t.Bold)
	scale := t.Size / look.Em
	x := t.Start(set.Width * scale)
	for i := range set.Glyphs {
		l := &set.Glyphs[i]
		if p := g.place(l, t.Size, canvas.Px{X: x + l.X*scale, Y: t.At.Y + l.Y*scale}); p.mask != nil {
			line = append(line, p)
		}
	}
	return line
}

// place is a letter at the nearest place to a dot.
func (g *glyphs) place(l *look.Glyph, size float64, dot canvas.Px) placed {
	px, fx := split(toFixed(dot.X))
	py, fy := split(toFixed(dot.Y))
	key := maskKey{l.Font, l.Index, size, fx, fy}
	m, ok := g.masks[key]
	if !ok {
		m = g.draw(key)
		g.keep(key, m)
	}
	if m.mask == nil {
		return placed{}
	}
	return placed{m.mask, m.mask.Rect.Add(m.from).Add(image.Pt(px, py))}
}

func (g *glyphs) keep(key maskKey, m glyph) {
	if g.masks == nil || g.bytes > maxMasks {
		g.masks, g.bytes = map[maskKey]glyph{}, 0
	}
	g.masks[key] = m
	if m.mask != nil {
		g.bytes += len(m.mask.Pix)
	}
}

// split is a coordinate in whole pixels and places, to the nearest place.
func split(v fixed.Int26_6) (px int, place uint8) {
	n := (int(v)*places + 32) >> 6
	return n >> 2, uint8(n & (places - 1))
}

// largest is the size in pixels of the largest letters that are drawn: outlines
// are counted in fixed point.
const largest = 1 << 14

// draw makes a letter's mask; one without ink has none.
func (g *glyphs) draw(key maskKey) glyph {
	if key.size > largest {
		return glyph{}
	}
	outline, err := look.OutlineAt(key.font, key.letter, key.size)
	if err != nil || len(outline) == 0 {
		return glyph{}
	}
	dot := fixed.Point26_6{X: fixed.Int26_6(key.x) * 64 / places, Y: fixed.Int26_6(key.y) * 64 / places}
	reach := outline.Bounds().Add(dot)
	box := image.Rect(reach.Min.X.Floor(), reach.Min.Y.Floor(), reach.Max.X.Ceil(), reach.Max.Y.Ceil())
	if box.Empty() {
		return glyph{}
	}
	g.area.Reset(box.Dx(), box.Dy())
	g.area.DrawOp = draw.Src
	at := func(p fixed.Point26_6) (x, y float32) {
		return float32(p.X+dot.X)/64 - float32(box.Min.X), float32(p.Y+dot.Y)/64 - float32(box.Min.Y)
	}
	g.trace(outline, at)
	mask := image.NewAlpha(image.Rect(0, 0, box.Dx(), box.Dy()))
	g.area.Draw(mask, mask.Rect, image.Opaque, image.Point{})
	return glyph{mask, box.Min}
}

// trace adds an outline of closed parts.
func (g *glyphs) trace(outline sfnt.Segments, at func(fixed.Point26_6) (x, y float32)) {
	for _, s := range outline {
		ax, ay := at(s.Args[0])
		bx, by := at(s.Args[1])
		cx, cy := at(s.Args[2])
		switch s.Op {
		case sfnt.SegmentOpMoveTo:
			g.area.ClosePath()
			g.area.MoveTo(ax, ay)
		case sfnt.SegmentOpLineTo:
			g.area.LineTo(ax, ay)
		case sfnt.SegmentOpQuadTo:
			g.area.QuadTo(ax, ay, bx, by)
		case sfnt.SegmentOpCubeTo:
			g.area.CubeTo(ax, ay, bx, by, cx, cy)
		}
	}
	g.area.ClosePath()
}

func toFixed(v float64) fixed.Int26_6 { return fixed.Int26_6(math.Round(v * 64)) }
