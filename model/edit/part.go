package edit

import (
	"slices"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
)

// PartKind is what a Part is.
type PartKind uint8

// The kinds of part. Those before BendPart can be moved along with others.
const (
	NoPart       PartKind = iota
	PlayerPart            // a player at the moment shown
	KeyframePart          // a player's keyframe
	AimPart               // where a shot is meant to land
	MarkPart              // a mark, whole
	RunPart               // the run that leads to a keyframe, with both its ends
	BendPart              // the middle of that run
	FacingPart            // where a player looks at the moment shown
	TipPart               // the tip of a mark
)

// Part is something of a play that a hand can take hold of. The zero value is
// nothing.
type Part struct {
	Kind   PartKind
	Player game.Player
	Index  int // of the keyframe, shot or mark; below 0 see rally.ImpliedAt
}

// In says whether the play has the part. A player is always there.
func (a Part) In(p lesson.Play) bool {
	n := 0
	switch a.Kind {
	case PlayerPart, FacingPart:
		return a.Player < 4
	case KeyframePart, RunPart, BendPart:
		n = len(p.Tracks[a.Player&3])
	case AimPart:
		n = len(p.Shots)
	case MarkPart, TipPart:
		n = len(p.Marks)
	}
	return a.Index >= 0 && a.Index < n
}

// Shift is the play with its parts moved together: keyframes, runs, aims and
// marks. A bend moves with the run it bends, half as far if only one end moves.
// Nothing leaves the bounds of a lesson: all move less far instead. Parts of
// other kinds stay.
func Shift(p lesson.Play, parts []Part, by court.Point) lesson.Play {
	s := shift{play: p, room: court.RectOf(bounds.Min, bounds.Max), keyframes: keyframesOf(p, parts)}
	s.each(parts, func(at court.Point, _ float64) court.Point { s.keep(at); return at })
	by = within(by, s.room)
	s.play = p
	s.each(parts, func(at court.Point, share float64) court.Point { return at.Add(by.Times(share)) })
	return s.play
}

// bounds is where the places of a lesson may be.
var bounds = court.RectOf(court.Pt(-lesson.MaxCoordinate, -lesson.MaxCoordinate), court.Pt(lesson.MaxCoordinate, lesson.MaxCoordinate))

// shift rewrites the places of some parts of a play.
type shift struct {
	play      lesson.Play
	room      court.Rect // how far all of them may move
	keyframes [4][]int   // that move, in order
}

// keep takes from the room what would move a place out of bounds.
func (s *shift) keep(at court.Point) {
	s.room.Min = court.Pt(max(s.room.Min.X, bounds.Min.X-at.X), max(s.room.Min.Y, bounds.Min.Y-at.Y))
	s.room.Max = court.Pt(min(s.room.Max.X, bounds.Max.X-at.X), min(s.room.Max.Y, bounds.Max.Y-at.Y))
}

func within(p court.Point, r court.Rect) court.Point {
	return court.Pt(min(max(p.X, r.Min.X), r.Max.X), min(max(p.Y, r.Min.Y), r.Max.Y))
}

// each changes every place that moves, told how much of the way it goes.
func (s *shift) each(parts []Part, change func(court.Point, float64) court.Point) {
	for id, moving := range s.keyframes {
		s.track(game.Player(id), moving, change)
	}
	done := map[Part]bool{}
	for _, a := range parts {
		if !a.In(s.play) || done[a] {
			continue
		}
		done[a] = true
		switch a.Kind {
		case AimPart:
			s.play = AimAt(s.play, a.Index, change(s.play.Shots[a.Index].Aim, 1))
		case MarkPart:
			m := s.play.Marks[a.Index]
			m.Place = change(m.Place, 1)
			if m.Kind.HasTip() {
				m.Tip = change(m.Tip, 1)
			}
			s.play = ReplaceMark(s.play, a.Index, m)
		}
	}
}

func (s *shift) track(id game.Player, moving []int, change func(court.Point, float64) court.Point) {
	if len(moving) == 0 {
		return
	}
	track := slices.Clone(s.play.Tracks[id])
	for i := range track {
		share := 0.0
		if slices.Contains(moving, i) {
			track[i].Place = change(track[i].Place, 1)
			share = 0.5
		}
		if slices.Contains(moving, i-1) {
			share += 0.5
		}
		if track[i].Via != nil && share > 0 {
			track[i].Via = new(change(*track[i].Via, share))
		}
	}
	s.play = s.play.WithTrack(id, track)
}

// keyframesOf are the keyframes that parts move, by game.Player.
func keyframesOf(p lesson.Play, parts []Part) (moving [4][]int) {
	add := func(id game.Player, i int) {
		if i >= 0 && !slices.Contains(moving[id], i) {
			moving[id] = append(moving[id], i)
		}
	}
	for _, a := range parts {
		if !a.In(p) {
			continue
		}
		switch a.Kind {
		case KeyframePart:
			add(a.Player, a.Index)
		case RunPart:
			add(a.Player, a.Index-1)
			add(a.Player, a.Index)
		}
	}
	return moving
}

// Remove is the play without its keyframes and marks among the parts. Everybody
// keeps a place: of a track that would be empty the keyframe at the serve stays.
// Runs go with the keyframe they lead to. Parts of other kinds stay.
func Remove(p lesson.Play, parts []Part) lesson.Play {
	var gone [4][]int
	marks := []int{}
	for _, a := range parts {
		switch {
		case !a.In(p):
		case a.Kind == KeyframePart || a.Kind == RunPart:
			gone[a.Player] = append(gone[a.Player], a.Index)
		case a.Kind == MarkPart:
			marks = append(marks, a.Index)
		}
	}
	for _, id := range game.Players {
		if len(gone[id]) > 0 {
			p = p.WithTrack(id, without(p.Tracks[id], gone[id], p.ServeIndex(id)))
		}
	}
	if len(marks) > 0 {
		p.Marks = without(p.Marks, marks, -1)
	}
	return p
}

// without is a list without some of its entries; the entry keep stays if nothing
// else does. An empty list is nil.
func without[T any](list []T, gone []int, keep int) []T {
	var out []T
	for i, v := range list {
		if !slices.Contains(gone, i) {
			out = append(out, v)
		}
	}
	if len(out) == 0 && keep >= 0 && keep < len(list) {
		return list[keep : keep+1 : keep+1]
	}
	return out
}
