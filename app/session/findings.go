package session

import (
	"homeside/model/edit"
	"homeside/model/finding"
	"homeside/model/lesson"
	"homeside/model/rules"
)

// checked is what the rules find in the play shown.
type checked struct {
	done     bool
	findings []finding.Finding
}

// Findings is what the rules find in the play as shown, the worst first; a
// gesture's draft is checked while one is under way. It is worked out at most
// once for each change.
func (s *Session) Findings() []finding.Finding {
	if !s.checked.done {
		s.checked = checked{done: true}
		if r := s.Current(); r != nil {
			s.checked.findings = rules.Check(r, s.Lesson())
		}
	}
	return s.checked.findings
}

// CanFix says whether the rules know how to mend finding i.
func (s *Session) CanFix(i int) bool {
	_, ok := s.fixed(i)
	return ok
}

// Fix mends finding i as one step; nothing happens where the rules know no way.
func (s *Session) Fix(i int) {
	s.Cancel()
	if p, ok := s.fixed(i); ok {
		s.Do("fix "+string(s.Findings()[i].ID), edit.ReplacePlay(s.history.Lesson(), s.play, p))
	}
}

// fixed is the play shown without finding i.
func (s *Session) fixed(i int) (lesson.Play, bool) {
	return lesson.Play{}, false
}
