package advice

import (
	"homeside/model/court"
	"homeside/model/finding"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

// serversInPlace: until the return has bounced it cannot be played, and then the
// serving pair should stand. The run of the one who strikes the third to the ball
// does not count.
func serversInPlace(s *sheet) {
	at, ok := s.TimeOf(lesson.Event{Shot: 1, Moment: lesson.Bounce})
	if !ok || s.Strokes[1].Volleyed || !s.Reached(at) {
		return
	}
	server := s.Strokes[0].By
	for _, id := range [2]game.Player{server, server.Partner()} {
		t := s.Tracks[id]
		i, running := under(t, at)
		if !running || ends(t, i)-at < Shown {
			continue
		}
		if shot, strikes := shotOf(s, id, t.Stops[i+1]); strikes && shot == 2 {
			continue
		}
		s.about(id, finding.NotInPlace, at, t.RunAt(at).Place,
			finding.Is("after", t.Legs[i].To-at), finding.Is("short", toGo(t.Legs[i], at)), finding.Is("stop", i+1))
	}
}

// returnerSet: the returner should stand when the third reaches him. A run that
// starts at third contact or later answers the third and does not count.
func returnerSet(s *sheet) {
	third, ok := s.struck(2)
	if !ok || third.Stopped() {
		return
	}
	id := s.Strokes[1].By
	t := s.Tracks[id]
	at := s.thirdReaches(id)
	i, running := under(t, at)
	if !running || t.Legs[i].From >= third.At || t.Legs[i].To-at < Shown {
		return
	}
	s.about(id, finding.NotSet, at, t.RunAt(at).Place,
		finding.Is("after", t.Legs[i].To-at), finding.Is("short", toGo(t.Legs[i], at)), finding.Is("stop", i+1))
}

// thirdReaches is when the third passes the place the returner is going to, or is
// struck again before it gets there.
func (s *sheet) thirdReaches(id game.Player) units.Seconds {
	third := s.Strokes[2]
	y := s.goal(id, third.At).Y.Metres()
	at := third.Met
	if t, ok := third.Planned.Reaches(y); ok {
		at = min(at, t)
	} else if t, ok := third.Rebound.Reaches(y); ok {
		at = min(at, third.Planned.Duration+t)
	}
	return third.At + at
}

// goal is where a player is going to at a time: the end of the last run begun
// before it.
func (s *sheet) goal(id game.Player, at units.Seconds) court.Point {
	t := s.Tracks[id]
	goal := t.Stops[0].Keyframe.Place
	for i, l := range t.Legs {
		if l.From < at {
			goal = t.Stops[i+1].Keyframe.Place
		}
	}
	return goal
}

// AtLine is how far behind the kitchen line a player still counts as at it: the
// base position is 0.5-1 ft behind the line (common practice).
const AtLine units.Feet = 1

// goesToLine is how far from the line the end of a run may be that is meant to
// lead there: our assumption.
const goesToLine units.Feet = 3

// returnerAtThird says where a returner who runs to the line is at third contact:
// a few feet short, moving or balanced, is normal.
func returnerAtThird(s *sheet) {
	third, ok := s.struck(2)
	if !ok {
		return
	}
	id := s.Strokes[1].By
	pose := s.Tracks[id].RunAt(third.At)
	short := behindLine(id, pose.Place)
	if short <= AtLine || behindLine(id, s.goal(id, third.At)) > goesToLine {
		return
	}
	args := []finding.Arg{finding.Is("short", short)}
	if pose.Speed > Balanced {
		args = append(args, finding.Is("speed", pose.Speed))
	}
	s.about(id, finding.ShortOfLine, third.At, pose.Place, args...)
}

func behindLine(id game.Player, p court.Point) units.Feet {
	return p.Y*id.Team().Sign() - court.Kitchen
}

// Balanced is the speed below which a player counts as balanced rather than
// moving: a slow step, our assumption.
const Balanced units.MetresPerSecond = 0.5
