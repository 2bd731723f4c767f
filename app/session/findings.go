package session

import (
	"homeside/model/finding"
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
