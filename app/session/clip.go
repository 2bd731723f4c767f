package session

import (
	"slices"

	"homeside/model/court"
	"homeside/model/edit"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
)

// Copied is what of the play shown is to be copied: the keyframes and marks
// among the parts, of a player the place at the moment; where there are none of
// these the whole play. False if there is no play.
func (s *Session) Copied(parts []edit.Part) (lesson.Clip, bool) {
	s.Cancel()
	p, ok := s.Play()
	if !ok {
		return lesson.Clip{}, false
	}
	var c lesson.Clip
	if g, ok := s.Grasp(parts...); ok {
		c = clipOf(g.play, g.parts)
	}
	if c.Empty() {
		c.Plays = []lesson.Play{p}
	}
	return c, true
}

// clipOf are the keyframes and marks of a play that are among the parts, in
// their order there.
func clipOf(p lesson.Play, parts []edit.Part) (c lesson.Clip) {
	for id, track := range p.Tracks {
		for i, k := range track {
			if slices.ContainsFunc(parts, func(a edit.Part) bool {
				return (a.Kind == edit.KeyframePart || a.Kind == edit.RunPart) && a.Player == game.Player(id) && a.Index == i
			}) {
				c.Tracks[id] = append(c.Tracks[id], k)
			}
		}
	}
	for i, m := range p.Marks {
		if slices.Contains(parts, edit.Part{Kind: edit.MarkPart, Index: i}) {
			c.Marks = append(c.Marks, m)
		}
	}
	return c
}

// Paste puts a clip into the lesson, as one step, and picks what came: plays
// behind the one shown; keyframes so that the first is at the moment shown and
// the others keep their distances in time, each with its own player, in place of
// one at the same time; marks with their spans. False if nothing can come: there
// is no play, or no room.
func (s *Session) Paste(name string, c lesson.Clip) bool {
	s.Cancel()
	l := s.history.Lesson()
	if n := len(c.Plays); n > 0 {
		if len(l.Plays)+n > lesson.MaxPlays {
			return false
		}
		at := min(s.play+1, len(l.Plays))
		s.Do(name, edit.InsertPlays(l, at, c.Plays...))
		s.SelectPlay(at)
		return true
	}
	r := s.Current()
	if r == nil || c.Empty() {
		return false
	}
	p, parts := paste(r, l.Plays[s.play], c, s.now)
	if len(parts) == 0 {
		return false
	}
	s.Do(name, edit.ReplacePlay(l, s.play, p))
	s.Pick(parts...)
	return true
}

// paste is the play with the keyframes and marks of a clip, and these.
func paste(r *rally.Rally, p lesson.Play, c lesson.Clip, now units.Seconds) (lesson.Play, []edit.Part) {
	var parts []edit.Part
	shift := shiftTo(r, c, now)
	for id, track := range c.Tracks {
		var came []int
		p.Tracks[id], came = merge(r, p.Tracks[id], track, shift)
		for _, i := range came {
			parts = append(parts, edit.Part{Kind: edit.KeyframePart, Player: game.Player(id), Index: i})
		}
	}
	for _, m := range c.Marks {
		if len(p.Marks) >= lesson.MaxMarks {
			break
		}
		m.Span = lesson.Span{From: fit(r, m.Span.From), To: fit(r, m.Span.To)}
		for slices.Contains(p.Marks, m) {
			m.Place, m.Tip = m.Place.Add(aside), m.Tip.Add(aside)
		}
		parts = append(parts, edit.Part{Kind: edit.MarkPart, Index: len(p.Marks)})
		p = edit.AddMark(p, m)
	}
	return p, parts
}

// aside is how far beside an equal mark a pasted one is put, so that it is seen.
var aside = court.Pt(1, -1)

// shiftTo is how much later than its anchors say a clip's keyframes come, so that
// the first of them comes at a moment; nothing where it nearly does already.
func shiftTo(r *rally.Rally, c lesson.Clip, now units.Seconds) units.Seconds {
	first, any := units.Seconds(0), false
	for _, track := range c.Tracks {
		for _, k := range track {
			if t := r.TimeAt(fit(r, k.At)); !any || t < first {
				first, any = t, true
			}
		}
	}
	if shift := now - first; shift > sameKeyframe || shift < -sameKeyframe {
		return shift
	}
	return 0
}

// fit is an anchor in a play that may have fewer shots: later events are its end.
func fit(r *rally.Rally, a lesson.Anchor) lesson.Anchor {
	if a.Event.Moment != lesson.End && a.Event.Shot >= len(r.Play.Shots) {
		return lesson.At(lesson.TheEnd)
	}
	return a
}

// merge is a track with keyframes put in where their times, later by shift, are,
// and the numbers that these then have. A full track takes no more.
func merge(r *rally.Rally, track, from []lesson.Keyframe, shift units.Seconds) ([]lesson.Keyframe, []int) {
	track = slices.Clone(track)
	var came []int
	for _, k := range from {
		t := min(max(r.TimeAt(fit(r, k.At))+shift, r.From), r.To)
		k.At = later(r, k.At, shift)
		if k.Leave != nil {
			k.Leave = new(later(r, *k.Leave, shift))
		}
		i, same := placeIn(r, track, t)
		switch {
		case same:
			track[i] = k
		case len(track) < lesson.MaxKeyframes:
			track = slices.Insert(track, i, k)
			for n := range came {
				if came[n] >= i {
					came[n]++
				}
			}
		default:
			continue
		}
		if !slices.Contains(came, i) {
			came = append(came, i)
		}
	}
	return track, came
}

// later is an anchor moved by a time, hung on the last contact before it; one
// that is not moved stays as it is.
func later(r *rally.Rally, a lesson.Anchor, by units.Seconds) lesson.Anchor {
	a = fit(r, a)
	if by == 0 {
		return a
	}
	return r.AnchorAt(min(max(r.TimeAt(a)+by, r.From), r.To))
}

// placeIn is where in a track a time belongs, or the keyframe that is there
// already.
func placeIn(r *rally.Rally, track []lesson.Keyframe, t units.Seconds) (i int, same bool) {
	for i, k := range track {
		at := r.TimeAt(k.At)
		if d := at - t; d <= sameKeyframe && d >= -sameKeyframe {
			return i, true
		}
		if at > t {
			return i, false
		}
	}
	return len(track), false
}
