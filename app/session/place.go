package session

import (
	"homeside/model/court"
	"homeside/model/edit"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
)

// sameKeyframe is how near a keyframe's time has to be to the moment shown for
// a drag to move it instead of making a new one: less than two frames of a clip.
const sameKeyframe units.Seconds = 0.04

// PlaceAt is the lesson as it is saved with a player at a place at the moment
// shown: the keyframe of that moment is moved or, where there is none, made,
// hanging on the last contact.
func (s *Session) PlaceAt(id game.Player, to court.Point) (lesson.Lesson, bool) {
	l := s.history.Lesson()
	if s.play >= len(l.Plays) {
		return l, false
	}
	r, err := rally.Solve(l, s.play)
	if err != nil {
		return l, false
	}
	return edit.ReplacePlay(l, s.play, place(r, l.Plays[s.play], id, s.now, to)), true
}

func place(r *rally.Rally, p lesson.Play, id game.Player, now units.Seconds, to court.Point) lesson.Play {
	before := 0 // keyframes of the track that come first
	for _, stop := range r.Tracks[id].Stops {
		near := stop.At-now <= sameKeyframe && now-stop.At <= sameKeyframe
		switch {
		case near && stop.Index != rally.Implied:
			return edit.MoveKeyframe(p, id, stop.Index, to)
		case near: // an implied place becomes a stated one
			k := stop.Keyframe
			k.Place = to
			return edit.InsertKeyframe(p, id, before, k)
		case stop.At < now && stop.Index != rally.Implied:
			before = stop.Index + 1
		}
	}
	pose := r.Tracks[id].At(now)
	k := lesson.Keyframe{At: r.AnchorAt(now), Place: to, Facing: pose.Facing}
	return edit.InsertKeyframe(p, id, before, k)
}
