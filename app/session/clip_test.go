package session_test

import (
	"reflect"
	"testing"

	"homeside/app/session"
	"homeside/model/court"
	"homeside/model/edit"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

func copied(t *testing.T, s *session.Session, parts ...edit.Part) lesson.Clip {
	t.Helper()
	c, ok := s.Copied(parts)
	if !ok {
		t.Fatalf("Copied(%v) gives nothing", parts)
	}
	return c
}

// With nothing picked the play is copied; it is pasted behind the play shown,
// also into another lesson.
func TestCopyAPlay(t *testing.T) {
	s := session.New(drill(), "", nil)
	c := copied(t, s)
	if len(c.Plays) != 1 || c.Plays[0].Title != "first" {
		t.Fatalf("copied %d plays, want the first", len(c.Plays))
	}
	other := session.New(lesson.Lesson{Title: "other"}, "", nil)
	for range 2 {
		if !other.Paste("paste", c) {
			t.Fatal("Paste of a play does nothing")
		}
	}
	if got := other.Lesson(); len(got.Plays) != 2 || other.PlayIndex() != 1 || !reflect.DeepEqual(got.Plays[1], drill().Plays[0]) {
		t.Errorf("pasted twice there are %d plays and %d is shown", len(got.Plays), other.PlayIndex())
	}
	other.Undo()
	other.Undo()
	if len(other.Lesson().Plays) != 0 || other.Modified() {
		t.Error("two undos do not take both plays back")
	}
}

// Keyframes come at the moment shown and keep their distances; at the same
// moment they keep their anchors and take the places of those there.
func TestPasteKeyframes(t *testing.T) {
	s := session.New(drill(), "", nil)
	c := copied(t, s, toMid, toEnd)
	if len(c.Tracks[game.Near2]) != 2 || len(c.Plays) != 0 {
		t.Fatalf("copied %+v, want near2's two places", c)
	}
	s.SelectPlay(1)
	s.ReplacePlay("clear", edit.Remove(drill().Plays[1], []edit.Part{toMid, toEnd}))
	s.Seek(1)
	if !s.Paste("paste", c) {
		t.Fatal("Paste does nothing")
	}
	p, _ := s.Play()
	if want := drill().Plays[0].Tracks[game.Near2]; !reflect.DeepEqual(p.Tracks[game.Near2], want) {
		t.Errorf("pasted at the same time: %+v, want as copied %+v", p.Tracks[game.Near2], want)
	}
	before := s.Lesson()
	s.Seek(1)
	if s.Paste("paste", c); !reflect.DeepEqual(s.Lesson(), before) {
		t.Errorf("pasted over itself: %+v, want no change", s.Lesson().Plays[1].Tracks[game.Near2])
	}
	s.Seek(0.25)
	r := s.Current()
	length := r.To - 1
	s.Paste("paste", c)
	p, _ = s.Play()
	got := p.Tracks[game.Near2]
	if len(got) != 5 || got[1].Place != court.Pt(-5, -20) {
		t.Fatalf("pasted earlier: %+v, want two more places, the first of them second", got)
	}
	r = s.Current()
	for i, want := range []units.Seconds{0, 0.25, 1, 0.25 + length, r.To} {
		if at := r.TimeAt(got[i].At); at-want > 1e-6 || want-at > 1e-6 {
			t.Errorf("pasted earlier: place %d at %v, want at %v", i, at, want)
		}
	}
	if n := len(s.Picked()); n != 2 {
		t.Errorf("%d of what was pasted are picked, want both", n)
	}
}

// Marks keep their spans as far as the play has their events, and an equal one is
// put beside.
func TestPasteMarks(t *testing.T) {
	l := drill()
	m := lesson.Mark{Kind: lesson.ZoneMark, Place: court.Pt(1, 1), Tip: court.Pt(3, 3), Span: lesson.Span{From: lesson.At(lesson.ContactOf(1)), To: lesson.At(lesson.TheEnd)}}
	l.Plays[0] = edit.AddMark(l.Plays[0], m)
	s := session.New(l, "", nil)
	c := copied(t, s, edit.Part{Kind: edit.MarkPart})
	s.Paste("paste", c)
	p, _ := s.Play()
	if len(p.Marks) != 2 || p.Marks[1].Place != court.Pt(2, 0) || p.Marks[1].Tip != court.Pt(4, 2) || p.Marks[1].Span != m.Span {
		t.Errorf("pasted beside itself the mark is %+v", p.Marks)
	}
	short := drill()
	short.Plays[1].Shots = short.Plays[1].Shots[:1]
	s = session.New(short, "", nil)
	s.SelectPlay(1)
	s.Paste("paste", c)
	p, _ = s.Play()
	if got := p.Marks[0].Span.From; got != lesson.At(lesson.TheEnd) {
		t.Errorf("in a play without a return the mark begins at %+v, want the end", got)
	}
	if bad := lesson.Validate(s.Lesson()); bad != nil {
		t.Errorf("the lesson is out of bounds: %v", bad)
	}
}

func TestPasteWithoutRoom(t *testing.T) {
	s := session.New(lesson.Lesson{}, "", nil)
	if _, ok := s.Copied(nil); ok {
		t.Error("a lesson without plays gives something to copy")
	}
	if s.Paste("paste", lesson.Clip{Marks: []lesson.Mark{{}}}) || s.Paste("paste", lesson.Clip{}) || s.Modified() {
		t.Error("a mark was pasted into no play")
	}
	full := drill()
	for len(full.Plays) < lesson.MaxPlays {
		full.Plays = append(full.Plays, full.Plays[0])
	}
	s = session.New(full, "", nil)
	if s.Paste("paste", lesson.Clip{Plays: drill().Plays}) {
		t.Error("a play was pasted into a full lesson")
	}
}
