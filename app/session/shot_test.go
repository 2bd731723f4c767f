package session

import (
	"testing"

	"homeside/assets"
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
	"homeside/model/lessonfile"
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

// fourShots is the first play of a lesson with a fourth shot, by the team whose turn it is.
func fourShots(l lesson.Lesson, aim court.Point) lesson.Lesson {
	p := l.Plays[0]
	third := p.Shots[len(p.Shots)-1]
	fourth := lesson.Shot{By: game.PlayerOf(third.By.Team().Other(), 2), Aim: aim, Intent: lesson.Apex(6)}
	p.Shots = append(p.Shots[:len(p.Shots):len(p.Shots)], fourth)
	return l.WithPlay(0, p)
}

// A four-shot play resolved with all its findings, as at every paint of a drag:
// the built-in one, and one in wind with a shot that is said by its speed, for
// which both arcs are searched.
func BenchmarkFindings(b *testing.B) {
	data, err := assets.Lessons.Open(assets.FirstLesson)
	if err != nil {
		b.Fatal(err)
	}
	defer data.Close()
	usual, err := lessonfile.Read(data)
	if err != nil {
		b.Fatal(err)
	}
	for _, c := range []struct {
		name   string
		lesson lesson.Lesson
	}{{"usual", fourShots(usual, court.Pt(3, -15))}, {"wind", fourShots(lessontest.Long(1), court.Pt(3, 15))}} {
		b.Run(c.name, func(b *testing.B) {
			s := New(c.lesson, "", nil)
			for b.Loop() {
				s.Preview(c.lesson)
				if s.Findings(); s.Problem() != nil {
					b.Fatal(s.Problem())
				}
			}
		})
	}
}
