package rules

import (
	"homeside/model/court"
	"homeside/model/finding"
	"homeside/model/flight"
)

// landed judges a serve to end e from a right or left court that lands at p
// (7.E, 3.A.4.f); empty if it is good. Courts of the same name face each other
// diagonally.
func landed(e court.End, from court.Side, p court.Point) finding.ID {
	p = settled(p)
	switch {
	case court.InServiceCourt(e, from, p):
		return ""
	case court.KitchenOf(e).Contains(p):
		return finding.ServeInKitchen
	case court.InServiceCourt(e, from.Other(), p):
		return finding.ServeElsewhere
	default:
		return finding.ServeOut
	}
}

// serveLands: the serve clears the net (touching it is no fault) and lands in the
// diagonal court, whose lines are good but for the kitchen line.
func serveLands(s *sheet) []finding.Finding {
	serve := s.Strokes[0]
	at, where := serve.At+serve.Flown.Duration, serve.Flown.End.Ground()
	id := landed(s.server.Team().Other(), s.courtMeant(), where)
	switch {
	case serve.Stopped():
		id = finding.ServeIntoNet
	case serve.Volleyed:
		return nil
	case serve.Flown.Outcome != flight.Landed:
		id = finding.ServeOut
	}
	if id == "" {
		return nil
	}
	return one(finding.New(id, at, where, finding.Is("court", s.courtMeant()), finding.Is("end", s.server.Team().Other())).About(s.server))
}

// shotsLand: a later shot into the net or outside the court ends the rally. It may
// be drawn on purpose, so it is a caution.
func shotsLand(s *sheet) []finding.Finding {
	var all []finding.Finding
	for i := 1; i < len(s.Strokes) && s.live(i); i++ {
		stroke := s.Strokes[i]
		to := stroke.By.Team().Other()
		at, where := stroke.At+stroke.Flown.Duration, stroke.Flown.End.Ground()
		id := finding.ShotOut
		switch {
		case stroke.Stopped():
			id = finding.ShotIntoNet
		case stroke.Volleyed || court.Half(to).Contains(settled(where)):
			continue
		}
		all = append(all, finding.New(id, at, where, finding.Is("shot", finding.Shot(i)), finding.Is("end", to)).About(stroke.By))
	}
	return all
}

// shotsPossible: a shot that cannot be done as asked is flown as best it can, and
// the reason told. One that the net stops is told by where it ends.
func shotsPossible(s *sheet) []finding.Finding {
	var all []finding.Finding
	for i, stroke := range s.Strokes {
		if stroke.Trouble == flight.Possible || stroke.Trouble == flight.IntoNet && stroke.Stopped() {
			continue
		}
		all = append(all, s.ofStroke(finding.ShotImpossible, i, finding.Is("reason", stroke.Trouble)))
	}
	return all
}

// ofStroke is a finding about the one who strikes shot i, at the contact.
func (s *sheet) ofStroke(id finding.ID, i int, args ...finding.Arg) finding.Finding {
	stroke := s.Strokes[i]
	where := flight.State{At: stroke.From}.Ground()
	return finding.New(id, stroke.At, where, append(args, finding.Is("shot", finding.Shot(i)))...).About(stroke.By)
}
