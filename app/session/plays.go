package session

import (
	"reflect"
	"slices"

	"homeside/model/edit"
	"homeside/model/lesson"
	"homeside/words"
)

// DuplicatePlay puts a copy of the play shown behind it and shows it, as one step.
func (s *Session) DuplicatePlay() {
	p, ok := s.saved()
	if !ok {
		return
	}
	s.Do(words.T("duplicate a play"), edit.InsertPlays(s.history.Lesson(), s.play+1, p))
	s.SelectPlay(s.play + 1)
}

// DeletePlay takes the play shown out of the lesson, as one step.
func (s *Session) DeletePlay() {
	if _, ok := s.saved(); ok {
		s.Do(words.T("delete a play"), edit.RemovePlay(s.history.Lesson(), s.play))
	}
}

// RenamePlay gives the play shown another title, as one step.
func (s *Session) RenamePlay(title string) {
	p, ok := s.saved()
	if !ok || p.Title == title {
		return
	}
	p.Title = title
	s.Do(words.T("rename a play"), edit.ReplacePlay(s.history.Lesson(), s.play, p))
}

// MovePlay puts play i where play to stands, as one step. The play shown stays
// shown, wherever it comes to stand.
func (s *Session) MovePlay(i, to int) {
	s.Cancel()
	l := s.history.Lesson()
	if n := len(l.Plays); i == to || i < 0 || to < 0 || i >= n || to >= n {
		return
	}
	s.play, s.compare.play = moved(s.play, i, to), moved(s.compare.play, i, to)
	s.Do(words.T("move a play"), edit.MovePlay(l, i, to))
}

// moved is where play n stands when play i has been put where to stood.
func moved(n, i, to int) int {
	switch {
	case n == i:
		return to
	case i < n && n <= to:
		return n - 1
	case to <= n && n < i:
		return n + 1
	}
	return n
}

// Described is what is said of a play.
type Described struct {
	Title, Notes string
	Tags         []string
}

// DescribePlay changes what is said of the play shown, as one step.
func (s *Session) DescribePlay(d Described) {
	p, ok := s.saved()
	if !ok || p.Title == d.Title && p.Notes == d.Notes && slices.Equal(p.Tags, d.Tags) {
		return
	}
	p.Title, p.Notes, p.Tags = d.Title, d.Notes, d.Tags
	s.Do(words.T("describe a play"), edit.ReplacePlay(s.history.Lesson(), s.play, p))
}

// saved is the play shown without the draft of a gesture, which is dropped;
// false if there is none.
func (s *Session) saved() (lesson.Play, bool) {
	s.Cancel()
	return s.Play()
}

// ReplacePlay makes p the play shown, as one step; nothing happens if it is the
// same.
func (s *Session) ReplacePlay(name string, p lesson.Play) {
	if old, ok := s.saved(); ok && !reflect.DeepEqual(old, p) {
		s.Do(name, edit.ReplacePlay(s.history.Lesson(), s.play, p))
	}
}
