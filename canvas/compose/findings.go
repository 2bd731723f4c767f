package compose

import (
	"slices"
	"strconv"

	"homeside/canvas"
	"homeside/model/court"
	"homeside/model/finding"
	"homeside/model/lesson"
	"homeside/model/units"
	"homeside/words"
)

// Where a finding's sign stands, in points.
const (
	warnRight canvas.Points = 20 // from the place to the sign's middle, clear of a player's disc
	warnUp    canvas.Points = 9
	warnStep  canvas.Points = 16 // to the next finding at the same place
)

// warnTogether is how near to one another findings stand in one row: the feet of
// one player do.
const warnTogether feet = 3

// findingShown is how long before and after its moment a finding is marked: our
// choice, long enough to be seen at match speed.
const findingShown units.Seconds = 0.75

// findings marks what was found about the court near this moment: a small
// sign beside the place with the number it has in the list of checks. Advice is not marked. Findings of the serve also show before it.
func (p Picture) findings(g *canvas.Panel, now units.Seconds) {
	p.findingsThat(g, func(f finding.Finding) bool { return findingLive(f, now) })
}

// findingsSince marks what is found from one moment, itself left out, to another.
func (p Picture) findingsSince(g *canvas.Panel, from, to units.Seconds) {
	p.findingsThat(g, func(f finding.Finding) bool { return f.When > from && f.When <= to })
}

func (p Picture) findingsThat(g *canvas.Panel, live func(finding.Finding) bool) {
	var marked []spot
	for i, f := range p.Findings {
		if f.Severity == finding.Advice || !f.Where.Finite() || !live(f) {
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

func findingLive(f finding.Finding, now units.Seconds) bool {
	return now <= f.When+findingShown && (now >= f.When-findingShown || f.When <= 0)
}

// warning is the sign of a finding about a place with its number from 1.
func (p Picture) warning(g *canvas.Panel, i int, at canvas.Pos, f finding.Finding) {
	name := "finding." + strconv.Itoa(i+1)
	sign := findingSign(p.look(), name, strconv.Itoa(i+1), at, f.Severity)
	sign[0].Label = words.Check(f, lesson.Lesson{Teams: p.Rally.Teams})
	g.Add(sign...)
}
