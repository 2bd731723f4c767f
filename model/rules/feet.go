package rules

import (
	"homeside/model/court"
	"homeside/model/finding"
)

// footing judges one foot of a server of end e who serves from side s (7.A);
// empty if it is in the serving area. A foot on the extension's own two inches
// is inside: our reading.
func footing(e court.End, s court.Side, foot court.Point) finding.ID {
	foot = settled(foot)
	switch {
	case court.Bounds.Contains(foot):
		return finding.FootOnCourt
	case court.InServingArea(e, s, foot):
		return ""
	default:
		return finding.FootOutside
	}
}

// serverFeet: at the contact one foot is on the ground in the serving area, and
// neither touches the court or the ground outside the extensions (7.A). Only
// feet matter: reaching over the line is legal.
func serverFeet(s *sheet) []finding.Finding {
	support := finding.Is("support", s.support(s.server))
	if s.Play.Shots[0].Airborne {
		return one(s.ofServer(finding.FeetOffGround, support))
	}
	var all []finding.Finding
	for _, foot := range s.serve.Players[s.server].Feet {
		id := footing(s.server.Team(), s.from, foot)
		if id == "" || len(all) > 0 && all[0].ID == id { // both feet in one wrong place are one fault
			continue
		}
		all = append(all, finding.New(id, 0, foot, support, finding.Is("court", s.from)).About(s.server))
	}
	return all
}
