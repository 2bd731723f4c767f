package compose

import (
	"image/color"
	"slices"
	"strconv"

	"homeside/canvas"
	"homeside/canvas/look"
	"homeside/model/court"
	"homeside/model/finding"
	"homeside/model/lesson"
	"homeside/model/units"
	"homeside/words"
)

// A finding's mark in points.
const (
	warnHalf   canvas.Points = 7.5 // half the triangle's width
	warnHeight canvas.Points = 13.5
	warnRight  canvas.Points = 20 // from the place to the triangle's middle, clear of a player's disc
	warnUp     canvas.Points = 9
	warnStep   canvas.Points = 16 // to the next finding at the same place
	warnLetter canvas.Points = 8
)

// warnTogether is how near to one another findings stand in one row: the feet of
// one player do.
const warnTogether feet = 3

// findingShown is how long before and after its moment a finding is marked: our
// choice, long enough to be seen at match speed.
const findingShown units.Seconds = 0.75

// findings marks what was found about the court near this moment: a small
// warning triangle beside the place with the number it has in the list of
// checks. Advice is not marked. Findings of the serve also show before it.
func (p Picture) findings(g *canvas.Panel, now units.Seconds) {
	var marked []spot
	for i, f := range p.Findings {
		if f.Severity == finding.Advice || !f.Where.Finite() || !findingLive(f, now) {
			continue
		}
		n := slices.IndexFunc(marked, func(m spot) bool { return m.at.Distance(f.Where) < warnTogether })
		if n < 0 {
			n = len(marked)
			marked = append(marked, spot{at: f.Where})
		}
		m := &marked[n]
		p.warning(g, i, canvas.On(m.at).Shift(warnRight+warnStep*m.count, -warnUp), f)
		m.count++
	}
}

// spot is a place with findings beside it.
type spot struct {
	at    court.Point
	count canvas.Points
}

// FindingColour fills the mark of a finding, on the court and in the list; its
// words say the severity too.
func FindingColour(s finding.Severity) color.NRGBA {
	switch s {
	case finding.Fault:
		return look.Rust
	case finding.Advice:
		return look.Sky
	default:
		return look.Yellow
	}
}

func findingLive(f finding.Finding, now units.Seconds) bool {
	return now <= f.When+findingShown && (now >= f.When-findingShown || f.When <= 0)
}

// warning is a triangle about a place with the finding's number from 1.
func (p Picture) warning(g *canvas.Panel, i int, at canvas.Pos, f finding.Finding) {
	ink := p.look().Ink
	name := "finding." + strconv.Itoa(i+1)
	g.Add(canvas.Shape{
		ID: name, Layer: canvas.Labels, Label: words.Check(f, lesson.Lesson{Teams: p.Rally.Teams}),
		Path:  canvas.Path{}.Move(at.Shift(0, -warnHeight/2)).Line(at.Shift(warnHalf, warnHeight/2)).Line(at.Shift(-warnHalf, warnHeight/2)).Close(),
		Style: canvas.Style{Fill: FindingColour(f.Severity), Stroke: ink, Width: canvas.Pts(look.Outline), Round: true},
	}, canvas.Shape{
		ID: name + ".number", Layer: canvas.Labels,
		Text: &canvas.Text{At: at.Shift(0, warnHeight/2-1.5), Text: strconv.Itoa(i + 1), Size: warnLetter, Bold: true, Colour: ink},
	})
}
