package session

import (
	"homeside/model/court"
	"homeside/model/edit"
	"homeside/model/lesson"
	"homeside/words"
)

// Tally is what is noted of the rally at the walk; false where there is none to
// come, after the end of the game.
func (s *Session) Tally() (lesson.MatchRally, bool) {
	if s.MatchState().Over() {
		return lesson.MatchRally{}, false
	}
	return s.rallyOf(s.history.Lesson()), true
}

// rallyOf is the rally at the walk, or what has been noted of one still to be played.
func (s *Session) rallyOf(l lesson.Lesson) lesson.MatchRally {
	if s.walk.at < len(l.Match.Rallies) {
		return l.Match.Rallies[s.walk.at]
	}
	return s.walk.pending
}

// NoteFormation notes what a pair did in the rally at the walk.
func (s *Session) NoteFormation(team court.End, f lesson.Formation) {
	r, ok := s.Tally()
	if ok && r.Formations[team] != f {
		r.Formations[team] = f
		s.note(r)
	}
}

// NoteReturn notes where the return went in the rally at the walk.
func (s *Session) NoteReturn(to lesson.ReturnTo) {
	if r, ok := s.Tally(); ok && r.Return != to {
		r.Return = to
		s.note(r)
	}
}

// note is one step for a rally that has been played; what is noted of one still
// to be played waits for its winner.
func (s *Session) note(r lesson.MatchRally) {
	l := s.history.Lesson()
	if s.walk.at >= len(l.Match.Rallies) {
		s.walk.pending = r
		s.forget()
		s.touch()
		return
	}
	s.doMatch(words.T("note a rally"), edit.ReplaceMatch(l, l.Match.WithRally(s.walk.at, r)), s.walk.at)
}
