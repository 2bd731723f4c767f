package rules

import (
	"homeside/model/court"
	"homeside/model/finding"
	"homeside/model/game"
	"homeside/model/rally"
	"homeside/model/units"
)

// ownSide: at the serve partners stand on their own side of the net (5.B.4), and
// in the rally nobody steps over its plane.
func ownSide(s *sheet) []finding.Finding {
	return s.firsts(0, s.over(), func(f *rally.Frame, id game.Player) (finding.Finding, bool) {
		foot, over := overNet(id.Team(), f.Players[id].Feet)
		if !over {
			return finding.Finding{}, false
		}
		kind := finding.OverNet
		if f.T == 0 && id != s.server {
			kind = finding.WrongSide
		}
		return finding.New(kind, f.T, foot, finding.Is("support", s.support(id))).About(id), true
	})
}

// overNet is a foot beyond the net's plane.
func overNet(e court.End, feet [2]court.Point) (court.Point, bool) {
	for _, foot := range feet {
		if settled(foot).Y*e.Sign() < 0 {
			return foot, true
		}
	}
	return court.Point{}, false
}

// onSurface: the playing surface (3.A.3), or the room the coach has measured, is
// all that is known to be free of fences and benches.
func onSurface(s *sheet) []finding.Finding {
	surface := s.lesson.Venue.Surface()
	return s.firsts(s.From, s.To, func(f *rally.Frame, id game.Player) (finding.Finding, bool) {
		for _, foot := range f.Players[id].Feet {
			if foot = settled(foot); !surface.Contains(foot) {
				return finding.New(finding.OffSurface, f.T, foot, finding.Is("beyond", beyond(surface, foot))).About(id), true
			}
		}
		return finding.Finding{}, false
	})
}

// beyond is how far p is outside r.
func beyond(r court.Rect, p court.Point) units.Feet { return p.Distance(nearest(r, p)) }

// nearest is the point of r nearest to p.
func nearest(r court.Rect, p court.Point) court.Point {
	return court.Pt(min(max(p.X, r.Min.X), r.Max.X), min(max(p.Y, r.Min.Y), r.Max.Y))
}

// serversBack: the return must bounce before the serving side may play it (10.A),
// so who stands inside the court until then can only be passed or hit by it.
// The server's feet at the serve are the serve's own rule.
func serversBack(s *sheet) []finding.Finding {
	until := units.Seconds(0)
	if len(s.Strokes) > 1 {
		until = min(s.bounce(1), s.Stopped())
	}
	team := s.server.Team()
	return s.firsts(0, until, func(f *rally.Frame, id game.Player) (finding.Finding, bool) {
		place := f.Players[id].Run.Place
		if id.Team() != team || id == s.server && f.T == 0 || !court.Half(team).Contains(settled(place)) {
			return finding.Finding{}, false
		}
		return finding.New(finding.PartnerInside, f.T, place, finding.Is("bounce", until)).About(id), true
	})
}

// firsts is the first finding for each player in the frames of a time.
func (s *sheet) firsts(from, to units.Seconds, find func(*rally.Frame, game.Player) (finding.Finding, bool)) []finding.Finding {
	var all []finding.Finding
	for _, id := range game.Players {
		for k := range s.frames {
			f := &s.frames[k]
			if f.T < from || f.T > to {
				continue
			}
			if found, ok := find(f, id); ok {
				all = append(all, found)
				break
			}
		}
	}
	return all
}
