package pdf

import (
	"image/color"

	"homeside/canvas"
)

// page is the Surface: a scene's place on the last page.
type page struct {
	doc   *Document
	at    canvas.Px // of the scene's corner, in points
	scale float64   // points for a pixel
}

var _ canvas.Surface = (*page)(nil)

// Path implements canvas.Surface. Fill and stroke are two paths, as on the
// screen, where a stroke that shines through shows the fill under its inner half.
func (p *page) Path(_ canvas.Info, path []canvas.PxStep, s canvas.PxStyle) {
	if s.Fill.A > 0 {
		p.fill(s.Fill)
		p.outline(path)
		p.doc.pdf.DrawPath("F")
	}
	if s.Stroke.A > 0 && s.Width > 0 {
		p.pen(s)
		p.outline(path)
		p.doc.pdf.DrawPath("D")
	}
}

// fill and pen come before the outline: PDF allows no change of state in a path.
func (p *page) fill(c color.NRGBA) {
	p.doc.pdf.SetAlpha(float64(c.A)/255, "Normal")
	p.doc.pdf.SetFillColor(int(c.R), int(c.G), int(c.B))
}

func (p *page) pen(s canvas.PxStyle) {
	p.doc.pdf.SetAlpha(float64(s.Stroke.A)/255, "Normal")
	p.doc.pdf.SetDrawColor(int(s.Stroke.R), int(s.Stroke.G), int(s.Stroke.B))
	p.doc.pdf.SetLineWidth(s.Width * p.scale)
	dash := make([]float64, len(s.Dash))
	for i, d := range s.Dash {
		dash[i] = d * p.scale
	}
	p.doc.pdf.SetDashPattern(dash, 0)
	if s.Round {
		p.doc.pdf.SetLineCapStyle("round")
		p.doc.pdf.SetLineJoinStyle("round")
	} else {
		p.doc.pdf.SetLineCapStyle("butt")
		p.doc.pdf.SetLineJoinStyle("bevel")
	}
}

func (p *page) outline(path []canvas.PxStep) {
	for _, s := range path {
		a, b, c := p.points(s.P[0]), p.points(s.P[1]), p.points(s.P[2])
		switch s.Op {
		case canvas.Move:
			p.doc.pdf.MoveTo(a.X, a.Y)
		case canvas.Line:
			p.doc.pdf.LineTo(a.X, a.Y)
		case canvas.Curve:
			p.doc.pdf.CurveBezierCubicTo(a.X, a.Y, b.X, b.Y, c.X, c.Y)
		case canvas.Close:
			p.doc.pdf.ClosePath()
		}
	}
}

// points is a place on the page, y down as fpdf has it.
func (p *page) points(q canvas.Px) canvas.Px {
	return canvas.Px{X: p.at.X + q.X*p.scale, Y: p.at.Y + q.Y*p.scale}
}
