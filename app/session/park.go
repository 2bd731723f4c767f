package session

import (
	"homeside/model/edit"
	"homeside/model/lesson"
)

// Parked is a lesson put aside with everything that belongs to it: its steps to
// undo, its play and moment. Its zero value is an empty lesson without a file.
type Parked struct{ s Session }

// Park is the session's lesson as it is now, without the draft of a gesture.
// The session goes on with it until Resume.
func (s *Session) Park() Parked {
	s.Cancel()
	s.Pause()
	return Parked{*s}
}

// Resume shows a lesson that was put aside as it was left.
func (s *Session) Resume(p Parked) {
	kept := s.shared
	*s = p.s
	s.shared = kept
	s.forget()
	s.touch()
}

// parked is a lesson put aside before it was ever shown.
func parked(l lesson.Lesson, path string) Parked {
	return Parked{*New(l, path, nil)}
}

// parkedUnsaved is a lesson that is to be saved first; path is the file it
// belongs to, if it has one.
func parkedUnsaved(l lesson.Lesson, path string) Parked {
	p := parked(l, path)
	p.s.history = edit.BeginUnsaved(l)
	return p
}
