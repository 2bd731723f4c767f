package session

import (
	"homeside/model/edit"
	"homeside/model/lesson"
)

// WithMark is the lesson as it is saved with one more mark in the play shown.
func (s *Session) WithMark(m lesson.Mark) lesson.Lesson {
	l := s.history.Lesson()
	if s.play >= len(l.Plays) {
		return l
	}
	return edit.ReplacePlay(l, s.play, edit.AddMark(l.Plays[s.play], m))
}

// AddMark puts a mark into the play shown and picks it, as one step; false where
// there is no play or no room (see lesson.MaxMarks).
func (s *Session) AddMark(name string, m lesson.Mark) bool {
	p, ok := s.saved()
	if !ok || len(p.Marks) >= lesson.MaxMarks {
		return false
	}
	s.Do(name, s.WithMark(m))
	s.Pick(edit.Part{Kind: edit.MarkPart, Index: len(p.Marks)})
	return true
}

// ChangeMark changes a mark of the play shown, as one step; nothing happens if
// the change makes no difference.
func (s *Session) ChangeMark(name string, i int, change func(lesson.Mark) lesson.Mark) {
	p, ok := s.saved()
	if !ok || i < 0 || i >= len(p.Marks) {
		return
	}
	if m := change(p.Marks[i]); m != p.Marks[i] {
		s.Do(name, edit.ReplacePlay(s.history.Lesson(), s.play, edit.ReplaceMark(p, i, m)))
	}
}
