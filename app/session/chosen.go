package session

import (
	"cmp"
	"slices"

	"homeside/model/edit"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
)

// Choose makes a thing of the play the one that keys move in time. A place of a
// player shows its moment and that player's card. What is on the court as well, a
// place or a run, is picked there.
func (s *Session) Choose(what rally.Timed) {
	s.chosen, s.picked = &what, nil
	if a, ok := partOf(what); ok {
		s.picked = []edit.Part{a}
	}
	if e, ok := s.Chosen(); ok && (what.Kind == rally.Arrival || what.Kind == rally.AtContact) {
		s.selected, s.pointed = what.Player, false
		s.now = e.From
		s.clampNow()
	}
	s.touch()
}

// partOf is a place or a run as a part of the court; false for other things.
func partOf(what rally.Timed) (edit.Part, bool) {
	switch what.Kind {
	case rally.Arrival:
		return edit.Part{Kind: edit.KeyframePart, Player: what.Player, Index: what.Index}, true
	case rally.AtContact:
		return edit.Part{Kind: edit.KeyframePart, Player: what.Player, Index: rally.ImpliedAt(what.Index)}, true
	case rally.Start, rally.Running:
		return edit.Part{Kind: edit.RunPart, Player: what.Player, Index: what.Index}, true
	}
	return edit.Part{}, false
}

// timedOf is a part of the court as a thing in time; false for one that has no
// time of its own.
func timedOf(a edit.Part) (rally.Timed, bool) {
	shot, implied := rally.ShotOfImplied(a.Index)
	switch {
	case a.Kind == edit.KeyframePart && implied:
		return rally.Timed{Kind: rally.AtContact, Player: a.Player, Index: shot}, true
	case a.Kind == edit.KeyframePart:
		return rally.Timed{Kind: rally.Arrival, Player: a.Player, Index: a.Index}, true
	case a.Kind == edit.RunPart && !implied:
		return rally.Timed{Kind: rally.Running, Player: a.Player, Index: a.Index}, true
	}
	return rally.Timed{}, false
}

// choosePicked chooses in time what was picked last on the court.
func (s *Session) choosePicked() {
	s.chosen = nil
	if n := len(s.picked); n > 0 {
		if what, ok := timedOf(s.picked[n-1]); ok {
			s.chosen = &what
		}
	}
}

// Unchoose leaves nothing chosen, nor picked on the court.
func (s *Session) Unchoose() {
	if s.chosen != nil {
		s.chosen, s.picked = nil, nil
		s.touch()
	}
}

// Chosen is the thing that keys move in time; false if none is chosen or it has gone.
func (s *Session) Chosen() (rally.Entry, bool) {
	r := s.Current()
	if s.chosen == nil || r == nil {
		return rally.Entry{}, false
	}
	return r.EntryOf(*s.chosen)
}

// ChooseNext chooses the next thing along the lane of the one chosen, or the
// previous one where by is below 0; at the lane's end it stays. With nothing
// chosen it is the one nearest to the moment in the ball's lane.
func (s *Session) ChooseNext(by int) {
	r := s.Current()
	if r == nil {
		return
	}
	now, ok := s.Chosen()
	if !ok {
		s.chooseNearest(r, rally.BallLane)
		return
	}
	lane := laneOf(r, r.LaneOf(now.What))
	i := slices.Index(lane, now)
	s.Choose(lane[min(max(i+by, 0), len(lane)-1)].What)
}

// ChooseLane chooses the thing nearest to the moment in the next lane below
// that has any, above where by is below 0.
func (s *Session) ChooseLane(by int) {
	r := s.Current()
	if r == nil {
		return
	}
	now, ok := s.Chosen()
	lane := rally.BallLane - 1
	if ok {
		lane = r.LaneOf(now.What)
	} else if by < 0 {
		lane = rally.Lanes
	}
	for lane += by; lane >= 0 && lane < rally.Lanes; lane += by {
		if s.chooseNearest(r, lane) {
			return
		}
	}
}

// chooseNearest chooses what is nearest to the moment in a lane; false if the
// lane is empty.
func (s *Session) chooseNearest(r *rally.Rally, lane int) bool {
	things := laneOf(r, lane)
	if len(things) == 0 {
		return false
	}
	s.Choose(slices.MinFunc(things, func(a, b rally.Entry) int { return cmp.Compare(off(a, s.now), off(b, s.now)) }).What)
	return true
}

// off is how far a thing is from a moment.
func off(e rally.Entry, now units.Seconds) units.Seconds { return max(e.From-now, now-e.To, 0) }

// laneOf lists the things of a lane in the order of their times.
func laneOf(r *rally.Rally, lane int) []rally.Entry {
	var all []rally.Entry
	for _, e := range r.Timeline() {
		if r.LaneOf(e.What) == lane {
			all = append(all, e)
		}
	}
	slices.SortStableFunc(all, func(a, b rally.Entry) int { return cmp.Compare(a.From, b.From) })
	return all
}

// MoveChosen moves the thing chosen by a time as one step; moves of one thing
// that follow one another are one step together. The error says for people why
// it cannot be moved; nothing happens with nothing chosen.
func (s *Session) MoveChosen(name string, by units.Seconds) error {
	return s.retimeChosen(name, func(m Retime) (units.Seconds, units.Seconds) { return m.At() + by, 0 })
}

// SnapChosen moves the thing chosen to the next event, or to the previous one
// where by is below 0. See MoveChosen.
func (s *Session) SnapChosen(name string, by int) error {
	return s.retimeChosen(name, func(m Retime) (units.Seconds, units.Seconds) {
		return eventBeside(m.rally, m.At(), by), sameMoment
	})
}

// eventBeside is the time of the next event after a time or of the last before it.
func eventBeside(r *rally.Rally, t units.Seconds, by int) units.Seconds {
	to := r.From
	for _, e := range r.Events {
		if by > 0 && e.At > t+sameMoment {
			return e.At
		}
		if by < 0 && e.At < t-sameMoment {
			to = e.At
		}
	}
	if by > 0 {
		return r.To
	}
	return to
}

func (s *Session) retimeChosen(name string, to func(Retime) (t, reach units.Seconds)) error {
	s.Cancel()
	e, ok := s.Chosen()
	if !ok {
		return nil
	}
	m, err := s.Retime(e.What)
	if err != nil {
		return err
	}
	t, reach := to(m)
	moved := m.To(t, reach)
	if moved.At == m.At() {
		return nil
	}
	s.doMore(e.What, name, moved.Lesson)
	s.Choose(e.What)
	return nil
}

// doMore is Do for a change that goes on: the step before it, if it was of the
// same thing and is not what the file holds, becomes this one.
func (s *Session) doMore(of any, name string, l lesson.Lesson) {
	if s.more.of == of && s.more.state == s.history.State() && s.history.Modified() {
		s.history = s.history.Undo()
	}
	s.Do(name, l)
	s.more = more{of, s.history.State()}
}

// more is the last change that may go on.
type more struct {
	of    any
	state edit.State
}
