package raster_test

import (
	"image"
	"math"
	"testing"

	"github.com/fogleman/gg"
	"golang.org/x/image/font"
	"golang.org/x/image/math/fixed"

	"homeside/canvas"
	"homeside/canvas/raster"
)

// ggSurface draws paths with gg, a rasteriser of another make (freetype's
// cells), to compare pictures and speeds with.
type ggSurface struct {
	img     *image.RGBA
	dc      *gg.Context
	faces   faces
	letters *raster.Raster // nil to draw every letter anew
}

func newGG(img *image.RGBA, keepLetters bool) *ggSurface {
	s := &ggSurface{img: img, dc: gg.NewContextForRGBA(img)}
	if keepLetters {
		s.letters = raster.New(img)
	}
	return s
}

func (g *ggSurface) Path(_ canvas.Info, path []canvas.PxStep, s canvas.PxStyle) {
	for _, s := range path {
		switch p := s.P; s.Op {
		case canvas.Move:
			g.dc.MoveTo(p[0].X, p[0].Y)
		case canvas.Line:
			g.dc.LineTo(p[0].X, p[0].Y)
		case canvas.Curve:
			g.dc.CubicTo(p[0].X, p[0].Y, p[1].X, p[1].Y, p[2].X, p[2].Y)
		case canvas.Close:
			g.dc.ClosePath()
		}
	}
	if s.Fill.A > 0 {
		g.dc.SetColor(s.Fill)
		g.dc.FillPreserve()
	}
	if s.Stroke.A > 0 && s.Width > 0 {
		g.pen(s)
		g.dc.StrokePreserve()
	}
	g.dc.ClearPath()
}

func (g *ggSurface) pen(s canvas.PxStyle) {
	g.dc.SetColor(s.Stroke)
	g.dc.SetLineWidth(s.Width)
	g.dc.SetDash(s.Dash...)
	if s.Round {
		g.dc.SetLineCapRound()
		g.dc.SetLineJoinRound()
	} else {
		g.dc.SetLineCapButt()
		g.dc.SetLineJoinBevel()
	}
}

func (g *ggSurface) Text(info canvas.Info, t canvas.PxText) {
	if g.letters != nil {
		g.letters.Text(info, t)
		return
	}
	d := font.Drawer{Dst: g.img, Src: image.NewUniform(t.Colour), Face: g.faces.face(t.Size, t.Bold)}
	width := d.MeasureString(t.Text)
	shift := map[canvas.Align]fixed.Int26_6{canvas.Start: 0, canvas.Centre: width / 2, canvas.Finish: width}[t.Align]
	d.Dot = fixed.Point26_6{X: fixed.Int26_6(math.Round(t.At.X*64)) - shift, Y: fixed.Int26_6(math.Round(t.At.Y * 64))}
	d.DrawString(t.Text)
}

// The pictures are those that gg draws (github.com/fogleman/gg 1.3.0 over
// freetype's rasteriser): hardly a pixel is off by much, and those are at the
// seams of outlines and where letters stand at quarters of a pixel.
func TestPicturesAreThoseOfGG(t *testing.T) {
	const w, h = 360, 640
	for k, p := range pictures(t, canvas.Upright) {
		from, to := p.Span()
		for _, scene := range []*canvas.Scene{p.Static(w, h), p.Moving(w, h, from), p.Moving(w, h, (from+to)/2), p.Moving(w, h, to)} {
			got, want := white(w, h), white(w, h)
			canvas.Draw(raster.New(got), scene)
			canvas.Draw(newGG(want, true), scene)
			off, sum := 0, 0.0
			for i := range got.Pix {
				d := math.Abs(float64(got.Pix[i]) - float64(want.Pix[i]))
				sum += d * d
				if d > 32 {
					off++
				}
			}
			db := 10 * math.Log10(255*255/(sum/float64(len(got.Pix))))
			if share := float64(off) / float64(len(got.Pix)); share > 0.001 || db < 50 {
				t.Errorf("play %d: %.4f of the pixels are off by more than 32, PSNR %.1f dB, want at most 0.001 and 50 dB", k+1, share, db)
			}
		}
	}
}

func white(w, h int) *image.RGBA {
	img := image.NewRGBA(image.Rect(0, 0, w, h))
	for i := range img.Pix {
		img.Pix[i] = 255
	}
	return img
}

func (g *ggSurface) Image(info canvas.Info, img canvas.PxImage) { raster.New(g.img).Image(info, img) }
