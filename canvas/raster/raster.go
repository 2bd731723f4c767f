package raster

import (
	"image"
	"image/draw"
	"math"

	"github.com/fogleman/gg"
	"golang.org/x/image/font"
	"golang.org/x/image/math/fixed"

	"homeside/canvas"
	"homeside/canvas/look"
)

// Raster draws on an image with gg. It is not safe for two goroutines at once.
type Raster struct {
	img   *image.RGBA
	dc    *gg.Context
	faces *look.Faces
}

var _ canvas.Surface = (*Raster)(nil)

// New is a Raster on img.
func New(img *image.RGBA) *Raster { return newShared(img, &look.Faces{}) }

func newShared(img *image.RGBA, faces *look.Faces) *Raster {
	return &Raster{img, gg.NewContextForRGBA(img), faces}
}

// Scene draws a whole scene on a new image.
func Scene(s *canvas.Scene) *image.RGBA {
	img := image.NewRGBA(image.Rect(0, 0, s.Width, s.Height))
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
	r.outline(path, len(s.Dash) > 0)
	if s.Fill.A > 0 {
		r.dc.SetColor(s.Fill)
		r.dc.FillPreserve()
	}
	if s.Stroke.A > 0 && s.Width > 0 {
		r.pen(s)
		r.dc.StrokePreserve()
	}
	r.dc.ClearPath()
}

func (r *Raster) outline(path []canvas.PxStep, dashed bool) {
	var corner, start canvas.Px
	for i, s := range path {
		switch p := s.P; s.Op {
		case canvas.Move:
			corner, start = p[0], p[0]
			if !dashed {
				start = seam(path[i:])
			}
			r.dc.MoveTo(start.X, start.Y)
		case canvas.Line:
			r.dc.LineTo(p[0].X, p[0].Y)
		case canvas.Curve:
			r.dc.CubicTo(p[0].X, p[0].Y, p[1].X, p[1].Y, p[2].X, p[2].Y)
		case canvas.Close:
			if start != corner {
				r.dc.LineTo(corner.X, corner.Y)
			}
			r.dc.ClosePath()
		}
	}
}

// seam is where to begin an outline: the middle of the first side of a closed
// one. gg ends a closed outline in two caps, which leave a notch at a corner and
// fit together on a side.
func seam(path []canvas.PxStep) canvas.Px {
	start := path[0].P[0]
	if len(path) < 2 || path[1].Op != canvas.Line {
		return start
	}
	for _, s := range path[1:] {
		switch s.Op {
		case canvas.Move:
			return start
		case canvas.Close:
			next := path[1].P[0]
			return canvas.Px{X: (start.X + next.X) / 2, Y: (start.Y + next.Y) / 2}
		}
	}
	return start
}

func (r *Raster) pen(s canvas.PxStyle) {
	r.dc.SetColor(s.Stroke)
	r.dc.SetLineWidth(s.Width)
	r.dc.SetDash(s.Dash...)
	if s.Round {
		r.dc.SetLineCapRound()
		r.dc.SetLineJoinRound()
	} else {
		r.dc.SetLineCapButt()
		r.dc.SetLineJoinBevel()
	}
}

// Text implements canvas.Surface. Glyphs stand at fractions of a pixel, so that
// moving letters do not jitter.
func (r *Raster) Text(_ canvas.Info, t canvas.PxText) {
	face := r.faces.Face(t.Size, t.Bold)
	d := font.Drawer{Dst: r.img, Src: image.NewUniform(t.Colour), Face: face}
	d.Dot = fixed.Point26_6{X: toFixed(t.At.X) - shift(t.Align, d.MeasureString(t.Text)), Y: toFixed(t.At.Y)}
	d.DrawString(t.Text)
}

func shift(a canvas.Align, width fixed.Int26_6) fixed.Int26_6 {
	switch a {
	case canvas.Start:
		return 0
	case canvas.Finish:
		return width
	default:
		return width / 2
	}
}

func toFixed(v float64) fixed.Int26_6 { return fixed.Int26_6(math.Round(v * 64)) }
