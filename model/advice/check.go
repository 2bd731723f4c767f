package advice

import (
	"homeside/model/court"
	"homeside/model/finding"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
)

// Shown is the least lateness that counts: what two decimals of a second show.
const Shown units.Seconds = 0.005

// sheet is a rally with what the checks ask for again and again.
type sheet struct {
	*rally.Rally
	found []finding.Finding
}

// checks are all checks. None looks beyond the ball that ends the rally.
var checks = [...]func(*sheet){
	lateArrivals, serversInPlace, returnerSet, returnerAtThird, strikers, crossings, backward, obstacles,
}

// Check says what a rally asks of the legs as run, the worst finding first and then the earliest.
// It answers for every solved rally.
func Check(r *rally.Rally) []finding.Finding {
	if r == nil || len(r.Strokes) == 0 {
		return nil
	}
	s := &sheet{Rally: r}
	for _, check := range checks {
		check(s)
	}
	finding.Sort(s.found)
	return s.found
}

func (s *sheet) add(f finding.Finding) { s.found = append(s.found, f) }

// about adds a finding about one player at a moment of the rally.
func (s *sheet) about(id game.Player, f finding.ID, when units.Seconds, where court.Point, args ...finding.Arg) {
	s.add(finding.New(f, when, where, args...).About(id))
}

// struck is the stroke of shot i, if the rally gets that far.
func (s *sheet) struck(i int) (rally.Stroke, bool) {
	if i >= len(s.Strokes) || !s.Reached(s.Strokes[i].At) {
		return rally.Stroke{}, false
	}
	return s.Strokes[i], true
}

// ends is when leg i of a track is over: done or broken off for the next.
func ends(t rally.Track, i int) units.Seconds {
	end := t.Legs[i].To
	if i+1 < len(t.Legs) {
		end = min(end, t.Legs[i+1].From)
	}
	return end
}

// under is the leg that a player is running at a time; false for one who stands.
func under(t rally.Track, at units.Seconds) (int, bool) {
	for i, l := range t.Legs {
		if l.From < at && at < ends(t, i) && l.Run.Distance > 0 {
			return i, true
		}
	}
	return 0, false
}

// toGo is how far it still is to the end of a leg.
func toGo(l rally.Leg, at units.Seconds) units.Feet {
	done, _ := l.Profile.At(at - l.Push())
	return (l.Run.Distance - done).Feet()
}

// shotOf names the shot whose contact a place stands for; false for any other place.
func shotOf(s *sheet, id game.Player, stop rally.Stop) (int, bool) {
	e := stop.Keyframe.At.Event
	ok := stop.Keyframe.At.Offset == 0 && e.Moment == lesson.Contact && e.Shot < len(s.Strokes) && s.Strokes[e.Shot].By == id
	return e.Shot, ok
}
