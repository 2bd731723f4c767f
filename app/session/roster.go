package session

import (
	"homeside/model/court"
	"homeside/model/roster"
	"homeside/words"
)

// PutPair makes a pair of a roster the near or far team, as one step; nothing
// happens where it is that team already. Who started stays as the lesson says.
func (s *Session) PutPair(p roster.Pair, e court.End) {
	before := s.history.Lesson()
	if after := p.In(before, e); after.Teams != before.Teams {
		s.Do(words.T("put in %s as %s", words.Team(after, e), words.End(e)), after)
	}
}
