package session

import (
	"reflect"

	"homeside/model/edit"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/reel"
	"homeside/model/units"
	"homeside/words"
)

// Picks of a reel that are not takes.
const (
	TitleCard = -1
	EndCard   = -2
)

// reels is which reel is worked on, what of it is picked, and the reel solved.
type reels struct {
	reel, pick int
	solved     *reel.Reel // nil after a change
	rallies    map[int]*rally.Rally
}

// forget drops what was solved.
func (r *reels) forget() { r.solved, r.rallies = nil, nil }

// ReelIndex is the number of the reel worked on, from 0.
func (s *Session) ReelIndex() int {
	return min(s.reels.reel, max(len(s.Lesson().Reels)-1, 0))
}

// Reel is the reel worked on; false if the lesson has none.
func (s *Session) Reel() (lesson.Reel, bool) {
	if all := s.Lesson().Reels; len(all) > 0 {
		return all[s.ReelIndex()], true
	}
	return lesson.Reel{}, false
}

// SelectReel works on reel i.
func (s *Session) SelectReel(i int) {
	if i < 0 || i >= len(s.Lesson().Reels) || i == s.ReelIndex() {
		return
	}
	s.Cancel()
	s.reels.reel, s.reels.pick = i, 0
	s.forget()
	s.touch()
}

// ReelPick is what of the reel is picked: the number of a take, from 0, or TitleCard or EndCard.
func (s *Session) ReelPick() int {
	r, _ := s.Reel()
	if s.reels.pick >= len(r.Takes) {
		return max(len(r.Takes)-1, TitleCard)
	}
	return s.reels.pick
}

// PickTake picks a take, TitleCard or EndCard.
func (s *Session) PickTake(i int) {
	r, _ := s.Reel()
	if i == s.ReelPick() || i >= len(r.Takes) || i < EndCard {
		return
	}
	s.reels.pick = i
	s.forget()
	s.touch()
}

// Take is the take picked; false if a card is.
func (s *Session) Take() (lesson.Take, bool) {
	r, _ := s.Reel()
	if i := s.ReelPick(); i >= 0 && i < len(r.Takes) {
		return r.Takes[i], true
	}
	return lesson.Take{}, false
}

// SolvedReel is the reel worked on, solved; one of nothing if there is none.
func (s *Session) SolvedReel() *reel.Reel {
	if s.reels.solved == nil {
		of, _ := s.Reel()
		s.reels.solved = reel.SolveWith(of, s.filmed)
	}
	return s.reels.solved
}

// filmed solves a play once for all its takes.
func (s *Session) filmed(play int) (*rally.Rally, error) {
	if r, ok := s.reels.rallies[play]; ok {
		return r, nil
	}
	r, err := rally.Solve(s.Lesson(), play)
	if err != nil {
		return nil, err
	}
	if s.reels.rallies == nil {
		s.reels.rallies = map[int]*rally.Rally{}
	}
	s.reels.rallies[play] = r
	return r, nil
}

// AddReel puts a reel of the play shown behind the lesson's others and works on it.
func (s *Session) AddReel() {
	s.Cancel()
	l := s.history.Lesson()
	r := lesson.Reel{}
	if p, ok := s.Play(); ok {
		r.Name, r.Takes = p.Title, []lesson.Take{{Play: s.play + 1}}
		if p.Title != "" {
			r.Title.Heading = p.Title
		}
	}
	s.reels.reel, s.reels.pick = len(l.Reels), 0
	s.Do(words.T("add a reel"), edit.AddReel(l, r))
}

// DeleteReel takes the reel worked on out of the lesson.
func (s *Session) DeleteReel() {
	if _, ok := s.Reel(); ok {
		s.Cancel()
		i := s.ReelIndex()
		s.reels.reel, s.reels.pick = max(i-1, 0), 0
		s.Do(words.T("delete a reel"), edit.RemoveReel(s.history.Lesson(), i))
	}
}

// ChangeReel changes the reel worked on as one named step; nothing happens where
// the change makes no difference.
func (s *Session) ChangeReel(step string, change func(lesson.Reel) lesson.Reel) {
	s.Cancel()
	old, ok := s.Reel()
	if !ok {
		return
	}
	if r := change(old); !reflect.DeepEqual(r, old) {
		s.Do(step, edit.ReplaceReel(s.history.Lesson(), s.ReelIndex(), r))
	}
}

// ChangeTake changes the take picked as one named step.
func (s *Session) ChangeTake(step string, change func(lesson.Take) lesson.Take) {
	if t, ok := s.Take(); ok {
		i := s.ReelPick()
		s.ChangeReel(step, func(r lesson.Reel) lesson.Reel { return edit.ReplaceTake(r, i, change(t)) })
	}
}

// AddTake puts a take of the play shown behind the one picked, and picks it.
func (s *Session) AddTake() { s.insertTake(words.T("add a take"), lesson.Take{Play: s.play + 1}) }

// DuplicateTake puts a copy of the take picked behind it, and picks it.
func (s *Session) DuplicateTake() {
	if t, ok := s.Take(); ok {
		s.insertTake(words.T("duplicate a take"), t)
	}
}

func (s *Session) insertTake(step string, t lesson.Take) {
	r, ok := s.Reel()
	if !ok || len(s.Lesson().Plays) == 0 {
		return
	}
	at := s.ReelPick() + 1
	if s.ReelPick() == EndCard {
		at = len(r.Takes)
	}
	s.reels.pick = at
	s.ChangeReel(step, func(r lesson.Reel) lesson.Reel { return edit.InsertTake(r, at, t) })
}

// DeleteTake takes the take picked out of the reel.
func (s *Session) DeleteTake() {
	if _, ok := s.Take(); ok {
		i := s.ReelPick()
		s.ChangeReel(words.T("delete a take"), func(r lesson.Reel) lesson.Reel { return edit.RemoveTake(r, i) })
	}
}

// MoveTake moves the take picked by so many places, as far as there are any.
func (s *Session) MoveTake(by int) {
	r, _ := s.Reel()
	i := s.ReelPick()
	to := min(max(i+by, 0), len(r.Takes)-1)
	if i < 0 || to == i {
		return
	}
	s.reels.pick = to
	s.ChangeReel(words.T("move a take"), func(r lesson.Reel) lesson.Reel { return edit.MoveTake(r, i, to) })
}

// FitReel makes the takes of the reel worked on anew from the play shown, so that
// it lasts n with its end card. The reel's name, end card and logo stay. It says
// what there is no time for; an error wraps a *reel.LengthError where n is why.
func (s *Session) FitReel(n units.Seconds, o reel.FitOptions) ([]reel.Part, error) {
	s.Cancel()
	old, ok := s.Reel()
	if !ok {
		s.AddReel()
		old, _ = s.Reel()
	}
	l := s.history.Lesson()
	o.Say = func(r *rally.Rally, shot int) string { return words.FreezeAt(l, r, shot) }
	f, err := reel.Fit(l, s.play, n-old.End.Lasts(), o)
	if err != nil {
		return nil, err
	}
	f.Reel.Name, f.Reel.End, f.Reel.Logo = old.Name, old.End, old.Logo
	s.reels.pick = 0
	s.ChangeReel(words.T("fit a reel"), func(lesson.Reel) lesson.Reel { return f.Reel })
	return f.Left, nil
}

// SetLogo gives the lesson another logo; an empty one takes it away.
func (s *Session) SetLogo(g lesson.Logo) {
	s.Cancel()
	if l := s.history.Lesson(); l.Logo != g {
		s.Do(words.T("change the logo"), edit.ReplaceLogo(l, g))
	}
}
