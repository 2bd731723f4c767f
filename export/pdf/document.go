package pdf

import (
	"image/color"
	"io"
	"slices"
	"time"

	"github.com/go-pdf/fpdf"

	"homeside/canvas"
	"homeside/canvas/look"
)

// Size is a page's in points, 72 to the inch.
type Size struct{ Width, Height float64 }

// Document is a PDF under construction.
type Document struct {
	pdf     *fpdf.Fpdf
	size    Size  // of the last page
	err     error // the first one; fpdf keeps its own
	lacking map[rune]bool
	fonts   map[look.Font]bool // that the document has
}

// made is written as the date of every PDF, so that the same pictures have the
// same bytes.
var made = time.Date(2000, 1, 1, 0, 0, 0, 0, time.UTC)

// New is a document without pages. An empty title is none.
func New(title string) *Document {
	pdf := fpdf.NewCustom(&fpdf.InitType{OrientationStr: "P", UnitStr: "pt"})
	pdf.SetCatalogSort(true)
	pdf.SetCreationDate(made)
	pdf.SetModificationDate(made)
	if title != "" {
		pdf.SetTitle(utf16BE(title), false)
	}
	pdf.SetProducer("Homeside", true)
	pdf.SetAutoPageBreak(false, 0)
	return &Document{pdf: pdf, lacking: map[rune]bool{}, fonts: map[look.Font]bool{}}
}

// AddPage begins a page.
func (d *Document) AddPage(s Size) {
	d.size = s
	d.pdf.AddPageFormat("P", fpdf.SizeType{Wd: s.Width, Ht: s.Height})
}

// Fill gives the last page a ground; a colour that cannot be seen gives none.
func (d *Document) Fill(c color.NRGBA) {
	if c.A > 0 {
		(&page{doc: d}).fill(c)
		d.pdf.Rect(0, 0, d.size.Width, d.size.Height, "F")
	}
}

// Draw draws the shapes of a scene on the last page: its corner at a place in
// points, its pixels so many points wide. Nothing is drawn outside it.
func (d *Document) Draw(s *canvas.Scene, at canvas.Px, pointsPerPx float64) {
	d.pdf.ClipRect(at.X, at.Y, float64(s.Width)*pointsPerPx, float64(s.Height)*pointsPerPx, false)
	canvas.Draw(&page{d, at, pointsPerPx}, s)
	d.pdf.ClipEnd()
}

// Lacking are the letters drawn so far that the fonts lack, in order.
func (d *Document) Lacking() []rune {
	var all []rune
	for r := range d.lacking {
		all = append(all, r)
	}
	slices.Sort(all)
	return all
}

// Write ends the document and writes it.
func (d *Document) Write(w io.Writer) error {
	if d.err != nil {
		return d.err
	}
	return d.pdf.Output(w)
}
