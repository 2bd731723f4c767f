package still

import (
	"context"
	"io"

	"homeside/canvas"
	"homeside/export"
	"homeside/export/pdf"
)

// pointsPerPx is the size of a pixel of the Options on a PDF page: that of a CSS
// pixel, 96 to the inch of 72 points (CSS Values and Units 3, 5.2). 720 x 1280
// px is a page of 7.5 x 13.33 in; nothing is rasterised, so it prints at any size.
const pointsPerPx = 72.0 / 96

// WritePDF writes the moment o.At of a play as a PDF page: paths, and text that
// can be searched, in an embedded font of the letters used. A letter that the
// fonts lack is an empty box. o may be nil.
func WritePDF(ctx context.Context, w io.Writer, src export.Source, o *export.Options) error {
	m, err := momentOf(ctx, src, o)
	if err != nil {
		return err
	}
	d := pdf.New(m.title())
	d.AddPage(pdf.Size{Width: float64(m.options.Width) * pointsPerPx, Height: float64(m.options.Height) * pointsPerPx})
	d.Fill(m.static.Background)
	d.Draw(m.static, canvas.Px{}, pointsPerPx)
	d.Draw(m.moving, canvas.Px{}, pointsPerPx)
	return m.written(ctx, "PDF", d.Write(export.Writer(ctx, w)))
}
