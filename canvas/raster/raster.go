package raster

import (
	"image"
	"image/color"
	"image/draw"
	"iter"
	"math"

	"github.com/golang/freetype/raster"
	"golang.org/x/image/math/fixed"

	"homeside/canvas"
	"homeside/internal/large"
)

// Raster draws on an image. It is not safe for two goroutines at once.
type Raster struct {
	img    *image.RGBA
	only   *Tiles // draws in these; nil means in all of the picture
	ink    ink
	glyphs glyphs
	images images

	line     []placed // what the methods work in, used again
	row      []byte
	straight polylines
	dashes   polylines
	spine    raster.Path
	sides    outlines
	strips   strips
}

var _ canvas.Surface = (*Raster)(nil)

// New is a Raster on img.
func New(img *image.RGBA) *Raster { return &Raster{img: img} }

// Scene draws a whole scene on a new image.
func Scene(s *canvas.Scene) *image.RGBA {
	img := large.RGBA(s.Width, s.Height)
	New(img).Draw(s)
	return img
}

// Draw draws a scene with its background.
func (r *Raster) Draw(s *canvas.Scene) {
	if s.Background.A > 0 {
		draw.Draw(r.img, r.img.Bounds(), image.NewUniform(s.Background), image.Point{}, draw.Src)
	}
	canvas.Draw(r, s)
}

// Path implements canvas.Surface.
func (r *Raster) Path(_ canvas.Info, path []canvas.PxStep, s canvas.PxStyle) {
	if s.Fill.A > 0 {
		r.fill(path, s)
	}
	if s.Stroke.A > 0 && s.Width > 0 && s.Width <= widest {
		r.stroke(path, s)
	}
}

// lay lays a colour on a box through a mask.
func (r *Raster) lay(box image.Rectangle, mask *image.Alpha, c color.NRGBA) {
	if r.only == nil {
		blend(r.img, box, box.Intersect(r.img.Rect), mask, c)
		return
	}
	for part := range r.only.Stretches(box) {
		blend(r.img, box, part, mask, c)
	}
}

// widest is the width in pixels of the widest stroke that is drawn: a wider one
// is a mistake, and strokes are counted in fixed point.
const widest = 1e6

func (r *Raster) fill(path []canvas.PxStep, s canvas.PxStyle) {
	box := reach(path, 0).Intersect(r.img.Rect)
	if box.Empty() {
		return
	}
	if q, ok := rectOf(path); ok {
		r.fillRect(q, box, s)
		return
	}
	r.straight.flatten(path, false)
	for band := range bands(box) {
		if r.only == nil || r.only.Touches(band) {
			r.ink.begin(band)
			r.straight.each(r.ink.outline)
			r.lay(band, r.ink.pour(), s.Fill)
		}
	}
}

// mostInk is how many pixels are filled at once: what they are worked out in stays
// near the processor, and a shape that fills the picture needs no more of it.
const mostInk = 1 << 17

// bands divide a box that is too large to be filled at once.
func bands(box image.Rectangle) iter.Seq[image.Rectangle] {
	height := max(mostInk/box.Dx(), 1)
	return func(yield func(image.Rectangle) bool) {
		for y := box.Min.Y; y < box.Max.Y; y += height {
			if !yield(image.Rect(box.Min.X, y, box.Max.X, min(y+height, box.Max.Y))) {
				return
			}
		}
	}
}

func (r *Raster) stroke(path []canvas.PxStep, s canvas.PxStyle) {
	box := reach(path, overhang(s)).Intersect(r.img.Rect)
	if box.Empty() {
		return
	}
	dashed := len(s.Dash) > 0
	r.straight.flatten(path, !dashed)
	lines := &r.straight
	if dashed {
		r.dashes.dash(&r.straight, s.Dash)
		lines = &r.dashes
	}
	r.sides.reset()
	lines.each(func(outline []canvas.Px) { r.strokeOne(outline, s) })
	for _, part := range r.strips.divide(box, &r.straight, overhang(s)) {
		if r.only == nil || r.only.Touches(part) {
			r.ink.begin(part)
			r.sides.in(part, r.ink.outline)
			r.lay(part, r.ink.pour(), s.Stroke)
		}
	}
}

// overhang is how far a stroke reaches beyond its path, with what is lost by
// counting in 64ths.
func overhang(s canvas.PxStyle) float64 {
	if s.Stroke.A == 0 || !(s.Width > 0 && s.Width <= widest) {
		return 0
	}
	return s.Width/2 + 1.0/8
}

// leastStep is the shortest step of a stroke in 64ths of a pixel: joints on
// shorter ones go astray.
const leastStep = 8

func (r *Raster) strokeOne(outline []canvas.Px, s canvas.PxStyle) {
	last := fixed.Point26_6{}
	r.spine = r.spine[:0]
	for i, p := range outline {
		f := fixed.Point26_6{X: toFixed(p.X), Y: toFixed(p.Y)}
		if i == 0 {
			r.spine.Start(f)
		} else if step := f.Sub(last); max(step.X, -step.X)+max(step.Y, -step.Y) <= leastStep && i < len(outline)-1 {
			continue
		} else {
			r.spine.Add1(f)
		}
		last = f
	}
	caps, joints := raster.ButtCapper, raster.BevelJoiner
	if s.Round {
		caps, joints = raster.RoundCapper, raster.RoundJoiner
	}
	raster.Stroke(stroked{&r.sides.polylines}, r.spine, toFixed(s.Width), caps, joints)
	r.sides.end()
}

// Text implements canvas.Surface. Glyphs stand at fractions of a pixel, so that
// moving letters do not jitter.
func (r *Raster) Text(_ canvas.Info, t canvas.PxText) {
	r.line = r.glyphs.lay(r.line[:0], t)
	for _, p := range r.line {
		r.lay(p.box, p.mask, t.Colour)
	}
}

// reach is the box round a path and a margin on all sides, in whole pixels.
func reach(path []canvas.PxStep, margin float64) image.Rectangle {
	low, high := canvas.Px{X: math.Inf(1), Y: math.Inf(1)}, canvas.Px{X: math.Inf(-1), Y: math.Inf(-1)}
	for _, s := range path {
		n := 1
		switch s.Op {
		case canvas.Curve:
			n = 3
		case canvas.Close:
			n = 0
		}
		for _, p := range s.P[:n] {
			low = canvas.Px{X: min(low.X, p.X), Y: min(low.Y, p.Y)}
			high = canvas.Px{X: max(high.X, p.X), Y: max(high.Y, p.Y)}
		}
	}
	if low.X > high.X {
		return image.Rectangle{}
	}
	return image.Rect(int(math.Floor(low.X-margin)), int(math.Floor(low.Y-margin)), int(math.Ceil(high.X+margin)), int(math.Ceil(high.Y+margin)))
}
