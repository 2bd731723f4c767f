package session

import (
	"fmt"
	"slices"

	"homeside/model/court"
	"homeside/model/edit"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
)

// Exists says whether a rally has a part: its play has or, for a keyframe and
// the run to it, a hit implies it (see rally.ImpliedAt).
func Exists(r *rally.Rally, a edit.Part) bool {
	switch a.Kind {
	case edit.KeyframePart:
		return r.Tracks[a.Player&3].StopOf(a.Index) >= 0
	case edit.RunPart, edit.BendPart:
		return r.Tracks[a.Player&3].StopOf(a.Index) >= 1
	}
	return a.In(r.Play)
}

// RunOf is the run of a part of kind RunPart, BendPart or KeyframePart: the one
// that leads there; false if there is none.
func RunOf(r *rally.Rally, a edit.Part) (rally.Run, bool) {
	t := r.Tracks[a.Player&3]
	i := t.StopOf(a.Index)
	if i < 1 {
		return rally.Run{}, false
	}
	return t.Runs[i-1], true
}

// Picked are the parts that are picked, in the order they were: what the arrow
// keys move and Delete deletes. Parts that have gone are left out.
func (s *Session) Picked() []edit.Part {
	r := s.Current()
	if r == nil {
		return nil
	}
	var out []edit.Part
	for _, a := range s.picked {
		if Exists(r, a) {
			out = append(out, a)
		}
	}
	return out
}

// IsPicked says whether a part is picked.
func (s *Session) IsPicked(a edit.Part) bool { return slices.Contains(s.picked, a) }

// Pick picks these parts and no others; none clears what is picked. The player
// of the last one is the one selected.
func (s *Session) Pick(parts ...edit.Part) {
	if slices.Equal(parts, s.picked) {
		return
	}
	s.picked = slices.Clone(parts)
	s.selectPicked()
	s.touch()
}

// PickAlso adds a part to those picked, or takes it out.
func (s *Session) PickAlso(a edit.Part) {
	if i := slices.Index(s.picked, a); i >= 0 {
		s.picked = slices.Delete(slices.Clone(s.picked), i, i+1)
	} else {
		s.picked = append(slices.Clip(s.picked), a)
	}
	s.selectPicked()
	s.touch()
}

func (s *Session) selectPicked() {
	s.choosePicked()
	if n := len(s.picked); n > 0 {
		switch a := s.picked[n-1]; a.Kind {
		case edit.PlayerPart, edit.KeyframePart, edit.RunPart:
			s.selected, s.pointed = a.Player, false
		}
	}
}

// Within are the parts that a rectangle of the court holds at the moment shown:
// players, keyframes that none of these players stands at, marks.
func (s *Session) Within(area court.Rect) []edit.Part {
	r := s.Current()
	if r == nil {
		return nil
	}
	var out []edit.Part
	f := r.At(s.now)
	for _, id := range game.Players {
		inside := area.Contains(f.Players[id].Drawn.Place)
		if inside {
			out = append(out, edit.Part{Kind: edit.PlayerPart, Player: id})
		}
		for _, stop := range r.Tracks[id].Stops {
			if stop.Index != rally.Implied && area.Contains(stop.Keyframe.Place) && !(inside && s.isNow(r, id, stop)) {
				out = append(out, edit.Part{Kind: edit.KeyframePart, Player: id, Index: stop.Index})
			}
		}
	}
	for _, i := range f.Marks {
		if m := r.Play.Marks[i]; area.Contains(m.Place) && (!m.Kind.HasTip() || area.Contains(m.Tip)) {
			out = append(out, edit.Part{Kind: edit.MarkPart, Index: i})
		}
	}
	return out
}

// isNow says whether a stop is the one that a player held at the moment is at.
func (s *Session) isNow(r *rally.Rally, id game.Player, stop rally.Stop) bool {
	stops := r.Tracks[id].Stops
	i, ok := nearest(stops, s.now)
	return ok && stops[i].Index == stop.Index
}

// Nudge moves what is picked by a way, as one step; nudges of the same things
// that follow one another are one together. False if nothing is picked.
func (s *Session) Nudge(name string, by court.Point) bool {
	s.Cancel()
	picked := s.Picked()
	g, ok := s.Grasp(picked...)
	if !ok {
		return false
	}
	s.doMore(fmt.Sprint("nudge ", g.Parts()), name, g.Shifted(by))
	s.Repick(picked, g)
	return true
}

// Repick keeps what was picked while places that were implied have become
// keyframes.
func (s *Session) Repick(picked []edit.Part, g Grasp) {
	for _, a := range picked {
		if a.Index < 0 {
			s.Pick(g.Parts()...)
			return
		}
	}
}

// Delete takes the keyframes and marks among the parts out of the play shown, as
// one step; of a player the keyframe at the moment, of a run the one it leads
// to. False if nothing of them can go.
func (s *Session) Delete(name string, parts ...edit.Part) bool {
	s.Cancel()
	p, ok := s.Play()
	r := s.Current()
	if !ok || r == nil {
		return false
	}
	var gone []edit.Part
	for _, a := range parts {
		if a.Kind == edit.PlayerPart {
			stops := r.Tracks[a.Player].Stops
			i, at := nearest(stops, s.now)
			if !at {
				continue
			}
			a = edit.Part{Kind: edit.KeyframePart, Player: a.Player, Index: stops[i].Index}
		}
		gone = append(gone, a)
	}
	after := edit.Remove(p, gone)
	if samePlay(p, after) {
		return false
	}
	s.picked = nil
	s.Do(name, edit.ReplacePlay(s.history.Lesson(), s.play, after))
	return true
}

// samePlay says whether removing left everything where it was.
func samePlay(a, b lesson.Play) bool {
	for id := range a.Tracks {
		if len(a.Tracks[id]) != len(b.Tracks[id]) {
			return false
		}
	}
	return len(a.Marks) == len(b.Marks)
}

// State gives a player of the play shown a keyframe at a moment, where the
// player then is, as one step, and picks it; nothing happens where there is one.
func (s *Session) State(name string, id game.Player, t units.Seconds) {
	p, ok := s.saved()
	r := s.Current()
	if !ok || r == nil {
		return
	}
	with, i := stated(r, p, id, t)
	if len(with.Tracks[id]) > len(p.Tracks[id]) {
		s.Do(name, edit.ReplacePlay(s.history.Lesson(), s.play, with))
	}
	s.Pick(edit.Part{Kind: edit.KeyframePart, Player: id, Index: i})
}
