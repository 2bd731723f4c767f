package session

import (
	"slices"

	"homeside/model/edit"
	"homeside/model/game"
	"homeside/model/rally"
)

// PickNext picks the next thing on the court, or the previous one where by is
// below 0: each player with the player's places and the runs to them, then the
// aims of the shots, then the marks. After the last comes the first. False
// without a play.
func (s *Session) PickNext(by int) (edit.Part, bool) {
	r := s.Current()
	if r == nil {
		return edit.Part{}, false
	}
	all := partsOf(r)
	i := -1
	if n := len(s.picked); n > 0 {
		i = slices.Index(all, s.picked[n-1])
	}
	switch {
	case i < 0 && by > 0:
		i = 0
	case i < 0:
		i = len(all) - 1
	default:
		i = (i + by + len(all)) % len(all)
	}
	s.Pick(all[i])
	return all[i], true
}

// partsOf lists what can be picked on the court of a play.
func partsOf(r *rally.Rally) []edit.Part {
	var all []edit.Part
	for _, id := range game.Players {
		all = append(all, edit.Part{Kind: edit.PlayerPart, Player: id})
		for i, stop := range r.Tracks[id].Stops {
			if i > 0 && r.Tracks[id].Runs[i-1].Shown() {
				all = append(all, edit.Part{Kind: edit.RunPart, Player: id, Index: stop.Number()})
			}
			all = append(all, edit.Part{Kind: edit.KeyframePart, Player: id, Index: stop.Number()})
		}
	}
	for i := range r.Strokes {
		all = append(all, edit.Part{Kind: edit.AimPart, Index: i})
	}
	for i := range r.Play.Marks {
		all = append(all, edit.Part{Kind: edit.MarkPart, Index: i})
	}
	return all
}
