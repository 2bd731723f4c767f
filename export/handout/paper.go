package handout

import (
	"fmt"
	"strings"

	"homeside/export/pdf"
	"homeside/model/units"
)

// Paper is a size of paper, upright.
type Paper struct {
	Name          string // in options, lower case
	Title         string // for people
	Width, Height units.Metres
}

const inch units.Metres = 0.0254 // exact since 1959

// The papers.
var (
	A4     = Paper{"a4", "A4", 0.210, 0.297}                  // ISO 216
	Letter = Paper{"letter", "Letter", 8.5 * inch, 11 * inch} // ANSI/ASME Y14.1, size A
)

// Papers are all papers, the usual one first.
var Papers = []Paper{A4, Letter}

// PaperByName is the paper of a name in any case; the error lists those there are.
func PaperByName(name string) (Paper, error) {
	var known []string
	for _, p := range Papers {
		if strings.EqualFold(p.Name, name) {
			return p, nil
		}
		known = append(known, p.Name)
	}
	return Paper{}, fmt.Errorf("paper %q: want %s", name, strings.Join(known, " or "))
}

// size is the paper in points.
func (p Paper) size() pdf.Size { return pdf.Size{Width: points(p.Width), Height: points(p.Height)} }

// points is a length on paper in points, 72 to the inch.
func points(m units.Metres) float64 { return float64(m/inch) * 72 }

// mm is a length on paper in points.
func mm(v float64) float64 { return points(units.Metres(v / 1000)) }
