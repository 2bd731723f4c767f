package session

import (
	"homeside/model/edit"
	"homeside/model/lesson"
)

// DuplicatePlay puts a copy of the play shown behind it and shows it, as one step.
func (s *Session) DuplicatePlay() {
	p, ok := s.saved()
	if !ok {
		return
	}
	s.Do("duplicate a play", edit.InsertPlays(s.history.Lesson(), s.play+1, p))
	s.SelectPlay(s.play + 1)
}

// DeletePlay takes the play shown out of the lesson, as one step.
func (s *Session) DeletePlay() {
	if _, ok := s.saved(); ok {
		s.Do("delete a play", edit.RemovePlay(s.history.Lesson(), s.play))
	}
}

// RenamePlay gives the play shown another title, as one step.
func (s *Session) RenamePlay(title string) {
	p, ok := s.saved()
	if !ok || p.Title == title {
		return
	}
	p.Title = title
	s.Do("rename a play", edit.ReplacePlay(s.history.Lesson(), s.play, p))
}

// saved is the play shown without the draft of a gesture, which is dropped;
// false if there is none.
func (s *Session) saved() (lesson.Play, bool) {
	s.Cancel()
	return s.Play()
}
