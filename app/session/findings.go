package session

import (
	"slices"

	"homeside/model/advice"
	"homeside/model/edit"
	"homeside/model/finding"
	"homeside/model/lesson"
	"homeside/model/rules"
	"homeside/words"
)

// checked is what is found in the play shown.
type checked struct {
	done     bool
	findings []finding.Finding
	mends    map[int]mend // by finding, as far as they have been asked for
}

// mend is the play without a finding, where a way is known.
type mend struct {
	play  lesson.Play
	known bool
}

// Findings is what the rules and the legs say of the play as shown, the worst
// first; a gesture's draft is checked while one is under way. It is worked out
// at most once for each change.
func (s *Session) Findings() []finding.Finding {
	if !s.checked.done {
		s.checked = checked{done: true, mends: map[int]mend{}}
		if r := s.Current(); r != nil {
			s.checked.findings = slices.Concat(rules.Check(r, s.Lesson()), advice.Check(r))
			if f, ok := advice.Stack(r, 0); ok && !s.Previewing() { // it solves many returns: not under the hand
				s.checked.findings = append(s.checked.findings, f)
			}
			finding.Sort(s.checked.findings)
		}
	}
	return s.checked.findings
}

// CanFix says whether a way is known to mend finding i. The ways are tried out,
// so none is known while a gesture is under way.
func (s *Session) CanFix(i int) bool { return !s.Previewing() && s.mend(i).known }

// Fix mends finding i as one step; nothing happens where no way is known.
func (s *Session) Fix(i int) {
	s.Cancel()
	if m := s.mend(i); m.known {
		s.Do(words.T("fix check %d", i+1), edit.ReplacePlay(s.history.Lesson(), s.play, m.play))
	}
}

// mend is worked out once for each change.
func (s *Session) mend(i int) mend {
	all := s.Findings()
	if i >= len(all) {
		return mend{}
	}
	m, done := s.checked.mends[i]
	if !done {
		m = tried(all[i], s.Lesson(), s.play)
		s.checked.mends[i] = m
	}
	return m
}

// tried is the referee's way to mend a finding or else the legs'.
func tried(f finding.Finding, l lesson.Lesson, play int) mend {
	if p, ok := rules.Fix(f, l, play); ok {
		return mend{p, true}
	}
	p, ok := advice.Fix(f, l, play)
	return mend{p, ok}
}
