package session

import (
	"homeside/model/edit"
	"homeside/model/lesson"
)

// ShotWith is the lesson as it is saved with shot i of the play shown changed.
func (s *Session) ShotWith(i int, change func(lesson.Shot) lesson.Shot) (lesson.Lesson, bool) {
	l := s.history.Lesson()
	if s.play >= len(l.Plays) || i < 0 || i >= len(l.Plays[s.play].Shots) {
		return l, false
	}
	p := l.Plays[s.play]
	return edit.ReplacePlay(l, s.play, p.WithShot(i, change(p.Shots[i]))), true
}

// PreviewShot shows shot i changed; Commit makes it a step.
func (s *Session) PreviewShot(i int, change func(lesson.Shot) lesson.Shot) {
	if l, ok := s.ShotWith(i, change); ok {
		s.Preview(l)
	}
}

// Define makes the manner of shot i what its word means in this lesson, as one
// named step. Shots that are there stay as they are.
func (s *Session) Define(i int, name string) {
	s.Cancel()
	l := s.history.Lesson()
	if s.play >= len(l.Plays) || i >= len(l.Plays[s.play].Shots) {
		return
	}
	shot := l.Plays[s.play].Shots[i]
	l.Vocabulary[shot.Kind] = &lesson.Manner{Intent: shot.Intent, Arc: shot.Arc, Spin: shot.Spin, Side: shot.Side}
	s.Do(name, l) // Vocabulary is an array: l is a copy
}
