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
	p, i := stated(r, p, id, now)
	return edit.MoveKeyframe(p, id, i, to)
}

// stated is the play with a keyframe of a player at a moment, and its number: the
// one that is there, an implied place made a stated one, or a new one where the
// player then is.
func stated(r *rally.Rally, p lesson.Play, id game.Player, now units.Seconds) (lesson.Play, int) {
	stops := r.Tracks[id].Stops
	i, ok := nearest(stops, now)
	if ok && stops[i].Index != rally.Implied {
		return p, stops[i].Index
	}
	k := lesson.Keyframe{At: r.AnchorAt(now), Place: r.Tracks[id].At(now).Place, Facing: r.Tracks[id].At(now).Facing}
	if ok {
		k = stops[i].Keyframe
	}
	n := listed(stops[:i])
	if len(p.Tracks[id]) >= lesson.MaxKeyframes {
		return p, min(n, lesson.MaxKeyframes-1)
	}
	return edit.InsertKeyframe(p, id, n, k), n
}

// nearest is the stop that counts as the one at now: the nearest, the later of
// two at one time, as that is the one shown. If none is near enough it is false,
// with the number of stops that come before now.
func nearest(stops []rally.Stop, now units.Seconds) (int, bool) {
	found, best, before := -1, sameKeyframe, 0
	for i, stop := range stops {
		if d := max(stop.At-now, now-stop.At); d <= best {
			found, best = i, d
		}
		if stop.At < now {
			before = i + 1
		}
	}
	if found >= 0 {
		return found, true
	}
	return before, false
}

// listed is how many keyframes of the track the first stops take.
func listed(first []rally.Stop) (n int) {
	for _, stop := range first {
		if stop.Index != rally.Implied {
			n = stop.Index + 1
		}
	}
	return n
}

// StopAt is the stop that a player is at at a moment, if it is a keyframe of the
// play; false on the way, and at a place that a hit implies.
func StopAt(r *rally.Rally, id game.Player, now units.Seconds) (rally.Stop, bool) {
	stops := r.Tracks[id].Stops
	i, ok := nearest(stops, now)
	if !ok || stops[i].Index == rally.Implied {
		return rally.Stop{}, false
	}
	return stops[i], true
}
