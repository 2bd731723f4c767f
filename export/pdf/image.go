package pdf

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"image/png"

	"github.com/go-pdf/fpdf"

	"homeside/canvas"
)

// Image implements canvas.Surface. The same image is in the document once.
func (p *page) Image(_ canvas.Info, g canvas.PxImage) {
	var file bytes.Buffer
	if err := png.Encode(&file, g.Pix); err != nil {
		if p.doc.err == nil {
			p.doc.err = err
		}
		return
	}
	sum := sha256.Sum256(file.Bytes())
	name, kind := hex.EncodeToString(sum[:]), fpdf.ImageOptions{ImageType: "PNG"}
	if p.doc.pdf.GetImageInfo(name) == nil {
		p.doc.pdf.RegisterImageOptionsReader(name, kind, &file)
	}
	a, b := p.points(g.Min), p.points(g.Max)
	p.doc.pdf.SetAlpha(1, "Normal")
	p.doc.pdf.ImageOptions(name, a.X, a.Y, b.X-a.X, b.Y-a.Y, false, kind, 0, "")
}
