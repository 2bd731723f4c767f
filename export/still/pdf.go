package still

import (
	"context"
	"image/color"
	"io"
	"time"

	"github.com/go-pdf/fpdf"

	"homeside/canvas"
	"homeside/canvas/look"
	"homeside/export"
)

// pointsPerPx is the size of a pixel of the Options on a PDF page: that of a CSS
// pixel, 96 to the inch of 72 points (CSS Values and Units 3, 5.2). 720 x 1280
// px is a page of 7.5 x 13.33 in; nothing is rasterised, so it prints at any size.
const pointsPerPx = 72.0 / 96

// made is written as the date of every PDF, so that the same picture has the
// same bytes.
var made = time.Date(2000, 1, 1, 0, 0, 0, 0, time.UTC)

// WritePDF writes the moment o.At of a play as a PDF page: paths, and text that
// can be searched, in an embedded font of the letters used. A letter that the
// fonts lack is an empty box. o may be nil.
func WritePDF(ctx context.Context, w io.Writer, src export.Source, o *export.Options) error {
	m, err := momentOf(ctx, src, o)
	if err != nil {
		return err
	}
	p := newPage(m)
	m.draw(p)
	if p.err == nil {
		p.err = p.pdf.Output(export.Writer(ctx, w))
	}
	return m.written(ctx, "PDF", p.err)
}

// page is the Surface.
type page struct {
	pdf *fpdf.Fpdf
	err error // the first one; fpdf keeps its own
}

var _ canvas.Surface = (*page)(nil)

func newPage(m moment) *page {
	size := fpdf.SizeType{Wd: float64(m.options.Width) * pointsPerPx, Ht: float64(m.options.Height) * pointsPerPx}
	pdf := fpdf.NewCustom(&fpdf.InitType{OrientationStr: "P", UnitStr: "pt", Size: size})
	pdf.SetCatalogSort(true)
	pdf.SetCreationDate(made)
	pdf.SetModificationDate(made)
	if title := m.title(); title != "" {
		pdf.SetTitle(utf16BE(title), false)
	}
	pdf.SetProducer("Homeside", true)
	pdf.SetAutoPageBreak(false, 0)
	pdf.AddUTF8FontFromBytes(fontFamily, fontStyle(false), look.TTF(false))
	pdf.AddUTF8FontFromBytes(fontFamily, fontStyle(true), look.TTF(true))
	pdf.AddPage()
	p := &page{pdf: pdf}
	if bg := m.static.Background; bg.A > 0 {
		p.fill(bg)
		pdf.Rect(0, 0, size.Wd, size.Ht, "F")
	}
	return p
}

// Path implements canvas.Surface. Fill and stroke are two paths, as on the
// screen, where a stroke that shines through shows the fill under its inner half.
func (p *page) Path(_ canvas.Info, path []canvas.PxStep, s canvas.PxStyle) {
	if s.Fill.A > 0 {
		p.fill(s.Fill)
		p.outline(path)
		p.pdf.DrawPath("F")
	}
	if s.Stroke.A > 0 && s.Width > 0 {
		p.pen(s)
		p.outline(path)
		p.pdf.DrawPath("D")
	}
}

// fill and pen come before the outline: PDF allows no change of state in a path.
func (p *page) fill(c color.NRGBA) {
	p.pdf.SetAlpha(float64(c.A)/255, "Normal")
	p.pdf.SetFillColor(int(c.R), int(c.G), int(c.B))
}

func (p *page) pen(s canvas.PxStyle) {
	p.pdf.SetAlpha(float64(s.Stroke.A)/255, "Normal")
	p.pdf.SetDrawColor(int(s.Stroke.R), int(s.Stroke.G), int(s.Stroke.B))
	p.pdf.SetLineWidth(s.Width * pointsPerPx)
	dash := make([]float64, len(s.Dash))
	for i, d := range s.Dash {
		dash[i] = d * pointsPerPx
	}
	p.pdf.SetDashPattern(dash, 0)
	if s.Round {
		p.pdf.SetLineCapStyle("round")
		p.pdf.SetLineJoinStyle("round")
	} else {
		p.pdf.SetLineCapStyle("butt")
		p.pdf.SetLineJoinStyle("bevel")
	}
}

func (p *page) outline(path []canvas.PxStep) {
	for _, s := range path {
		a, b, c := points(s.P[0]), points(s.P[1]), points(s.P[2])
		switch s.Op {
		case canvas.Move:
			p.pdf.MoveTo(a.X, a.Y)
		case canvas.Line:
			p.pdf.LineTo(a.X, a.Y)
		case canvas.Curve:
			p.pdf.CurveBezierCubicTo(a.X, a.Y, b.X, b.Y, c.X, c.Y)
		case canvas.Close:
			p.pdf.ClosePath()
		}
	}
}

// points is a place on the page, y down as fpdf has it.
func points(p canvas.Px) canvas.Px { return canvas.Px{X: p.X * pointsPerPx, Y: p.Y * pointsPerPx} }
