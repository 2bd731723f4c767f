package session

import (
	"reflect"

	"homeside/model/lesson"
)

// Preview shows a draft until Commit or Cancel.
func (s *Session) Preview(l lesson.Lesson) {
	s.draft = &l
	s.forget()
	s.touch()
}

// Commit makes the draft one named step; nothing happens without a draft.
func (s *Session) Commit(name string) {
	if s.draft == nil {
		return
	}
	l := *s.draft
	s.draft = nil
	s.Do(name, l)
}

// Cancel drops the draft.
func (s *Session) Cancel() {
	if s.draft == nil {
		return
	}
	s.draft = nil
	s.forget()
	s.touch()
}

// Previewing says whether a draft is shown.
func (s *Session) Previewing() bool { return s.draft != nil }

// Do makes l the lesson as one named step; a draft gives way to it.
func (s *Session) Do(name string, l lesson.Lesson) {
	s.draft = nil
	s.history = s.history.Do(name, l)
	s.refresh()
}

// Undo takes the last step back.
func (s *Session) Undo() {
	before := s.history.Lesson()
	s.draft = nil
	s.history = s.history.Undo()
	s.showChange(before)
	s.refresh()
}

// Redo does the last undone step again.
func (s *Session) Redo() {
	before := s.history.Lesson()
	s.draft = nil
	s.history = s.history.Redo()
	s.showChange(before)
	s.refresh()
}

// showChange shows the play that differs from what it was, so that undo and
// redo never change one that is out of sight. Where plays have gone it shows the
// one before them, where some have come the first.
func (s *Session) showChange(before lesson.Lesson) {
	after := s.history.Lesson()
	same := func(i int) bool { return reflect.DeepEqual(before.Plays[i], after.Plays[i]) }
	n := min(len(before.Plays), len(after.Plays))
	if len(before.Plays) == len(after.Plays) && s.play < n && !same(s.play) {
		return
	}
	first := 0
	for first < n && same(first) {
		first++
	}
	switch {
	case first < len(after.Plays) && len(after.Plays) >= len(before.Plays):
		s.play = first
	case len(after.Plays) < len(before.Plays):
		s.play = max(first-1, 0)
	}
}

// CanUndo is the name of the step Undo would take back.
func (s *Session) CanUndo() (string, bool) { return s.history.CanUndo() }

// CanRedo is the name of the step Redo would do again.
func (s *Session) CanRedo() (string, bool) { return s.history.CanRedo() }

// Modified says whether the lesson differs from its file.
func (s *Session) Modified() bool { return s.history.Modified() }

// Saved marks the present lesson as written to path.
func (s *Session) Saved(path string) {
	s.path = path
	s.history = s.history.Save()
	s.touch()
}

func (s *Session) refresh() {
	s.forget()
	s.play = min(s.play, max(len(s.history.Lesson().Plays)-1, 0))
	s.compare.follow(len(s.history.Lesson().Plays))
	s.followMatch()
	s.clampNow()
	s.touch()
}
