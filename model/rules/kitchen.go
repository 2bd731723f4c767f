package rules

import (
	"slices"

	"homeside/model/court"
	"homeside/model/finding"
)

// volleyOutside: neither foot touches the kitchen or its lines at a volley (11.A).
// Of a wheelchair only the rear wheels count.
func volleyOutside(s *sheet) []finding.Finding {
	var all []finding.Finding
	for i, stroke := range s.Strokes {
		if !s.volleys(i) {
			continue
		}
		if foot, ok := kitchenFoot(stroke.By.Team(), s.At(stroke.At).Players[stroke.By].Feet); ok {
			f := s.ofStroke(finding.KitchenVolley, i, finding.Is("support", s.support(stroke.By)))
			f.Where = foot
			all = append(all, f)
		}
	}
	return all
}

// kitchenFoot is a foot that touches the kitchen of end e, its lines included (3.A.4.c).
func kitchenFoot(e court.End, feet [2]court.Point) (court.Point, bool) {
	i := slices.IndexFunc(feet[:], func(foot court.Point) bool { return court.KitchenOf(e).Contains(settled(foot)) })
	if i < 0 {
		return court.Point{}, false
	}
	return feet[i], true
}
