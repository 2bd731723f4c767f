package session_test

import (
	"testing"

	"homeside/app/session"
	"homeside/model/lesson"
)

// The play shown moves with the order, and comes back with undo.
func TestMovePlayKeepsWhatIsShown(t *testing.T) {
	l := drill()
	l.Plays = []lesson.Play{l.Plays[0], l.Plays[0], l.Plays[0]}
	for i := range l.Plays {
		l.Plays[i].Title = string(rune('a' + i))
	}
	for _, c := range []struct {
		shown, i, to int
		order, title string
	}{{0, 0, 2, "bca", "a"}, {1, 0, 2, "bca", "b"}, {2, 2, 0, "cab", "c"}, {0, 2, 0, "cab", "a"}, {1, 1, 1, "abc", "b"}, {1, -1, 0, "abc", "b"}, {1, 0, 3, "abc", "b"}} {
		s := session.New(l, "", nil)
		s.SelectPlay(c.shown)
		s.MovePlay(c.i, c.to)
		order := ""
		for _, p := range s.Lesson().Plays {
			order += p.Title
		}
		if p, _ := s.Play(); order != c.order || p.Title != c.title {
			t.Errorf("MovePlay(%d, %d) with %d shown: %s, %q shown, want %s, %q", c.i, c.to, c.shown, order, p.Title, c.order, c.title)
		}
		if step, ok := s.CanUndo(); ok != (c.order != "abc") || ok && step != "move a play" {
			t.Errorf("MovePlay(%d, %d): step %q, %v", c.i, c.to, step, ok)
		}
	}
}

func TestDescribePlay(t *testing.T) {
	s := session.New(drill(), "", nil)
	d := session.Described{Title: "T", Notes: "N", Tags: []string{"a", "b"}}
	s.DescribePlay(d)
	s.DescribePlay(d)
	if p, _ := s.Play(); p.Title != "T" || p.Notes != "N" || len(p.Tags) != 2 {
		t.Errorf("described: %q, %q, %v, want T, N, a and b", p.Title, p.Notes, p.Tags)
	}
	s.Undo()
	if _, ok := s.CanUndo(); ok || s.Modified() {
		t.Error("describing twice the same took more than one step")
	}
}
