package session

import (
	"testing"

	"homeside/model/court"
	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
)

// What a word means is changed as one step and taken back as one.
func TestDefine(t *testing.T) {
	s := New(lessontest.Long(1), "", nil)
	s.PreviewShot(1, func(shot lesson.Shot) lesson.Shot {
		shot.Kind, shot.Intent, shot.Spin = lesson.DeepReturn, lesson.Apex(11), -250
		return shot
	})
	s.Commit("change the return")
	before := s.Lesson().Manner(lesson.DeepReturn)
	s.Define(1, "change what a deep return is here")
	want := lesson.Manner{Intent: lesson.Apex(11), Arc: s.Lesson().Plays[0].Shots[1].Arc, Spin: -250, Side: s.Lesson().Plays[0].Shots[1].Side}
	if got := s.Lesson().Manner(lesson.DeepReturn); got != want {
		t.Errorf("after Define Manner(DeepReturn) = %+v, want %+v", got, want)
	}
	s.Undo()
	if got := s.Lesson().Manner(lesson.DeepReturn); got != before {
		t.Errorf("after Undo Manner(DeepReturn) = %+v, want %+v", got, before)
	}
	s.Define(99, "nothing")
	if name, _ := s.CanUndo(); name != "change the return" {
		t.Errorf("Define of a shot that is not there left the step %q", name)
	}
}

// A four-shot play resolved with all its findings.
func BenchmarkFindings(b *testing.B) {
	l := lessontest.Long(1)
	third := l.Plays[0].Shots[2]
	fourth := lesson.Shot{By: third.By.Partner() ^ 2, Aim: court.Pt(3, 15), Intent: lesson.Apex(6)}
	l.Plays[0].Shots = append(l.Plays[0].Shots, fourth)
	s := New(l, "", nil)
	s.PreviewShot(0, func(shot lesson.Shot) lesson.Shot { return shot })
	draft := s.Lesson()
	for b.Loop() {
		s.Preview(draft)
		s.Findings()
	}
}
