package session_test

import (
	"testing"

	"homeside/app/session"
	"homeside/model/court"
	"homeside/model/edit"
	"homeside/model/formation"
	"homeside/model/game"
	"homeside/model/lesson"
)

// A written play is known again, its kind and its serve, also under another title
// and in a session that did not write it; so is a sibling. One changed is not.
func TestWrittenIsKnownAgain(t *testing.T) {
	for _, r := range []session.Request{
		{Kind: lesson.Ordinary},
		{Kind: lesson.Stacked, Serve: formation.ServeWide},
		{Kind: lesson.Switched, Returns: true},
		{Kind: lesson.Poached, Returns: true, Serve: formation.ServeTee, WalkOn: true},
	} {
		s := session.New(started(), "", nil)
		w := written(t, s, r)
		again := session.New(retitled(s.Lesson(), 1), "", nil)
		again.SelectPlay(1)
		got, ok := again.Written()
		if !ok || got.Kind != w.Kind || got.Situation.Team != w.Situation.Team || got.Situation.Serve != w.Situation.Serve {
			t.Errorf("%+v: Written() = %v for %v, %v, %v; want %v for %v", r, got.Kind, got.Situation.Team, got.Situation.Serve, ok, w.Kind, w.Situation.Team)
		}
		moved := again.Lesson().Plays[1]
		moved = edit.MoveKeyframe(moved, game.Near1, moved.ServeIndex(game.Near1), court.Pt(2.5, -23))
		again.Do("move", edit.ReplacePlay(again.Lesson(), 1, moved))
		if got, ok := again.Written(); ok {
			t.Errorf("%+v: after a change it is still known as %v", r, got.Kind)
		}
	}
}

func retitled(l lesson.Lesson, i int) lesson.Lesson {
	p := l.Plays[i]
	p.Title, p.Notes = "ours", "look at the middle"
	return edit.ReplacePlay(l, i, p)
}

// Siblings come in as one step and are known as what they are.
func TestInsertSiblings(t *testing.T) {
	s := session.New(started(), "", nil)
	w := written(t, s, session.Request{Kind: lesson.Switched})
	siblings, err := w.WhatIf()
	must(t, err)
	plays := make([]lesson.Play, len(siblings))
	for i, other := range siblings {
		plays[i] = other.Play
	}
	must(t, s.InsertPlays("what if", plays...))
	if got, want := len(s.Lesson().Plays), 2+len(formation.Changes); got != want || s.PlayIndex() != 2 {
		t.Fatalf("%d plays with %d shown, want %d with 2", got, s.PlayIndex(), want)
	}
	for i, other := range siblings {
		s.SelectPlay(2 + i)
		got, ok := s.Written()
		if !ok || got.Kind != lesson.Switched || got.Situation.Return != other.Situation.Return || got.Situation.Lob != other.Situation.Lob {
			t.Errorf("%v: Written() = %v with the return %v, lob %v, %v; want a switch with %v, %v", other.Change, got.Kind, got.Situation.Return, got.Situation.Lob, ok, other.Situation.Return, other.Situation.Lob)
		}
	}
	s.Undo()
	if len(s.Lesson().Plays) != 2 || s.PlayIndex() != 1 {
		t.Errorf("undone: %d plays with %d shown, want 2 with 1", len(s.Lesson().Plays), s.PlayIndex())
	}
}

// A play drawn by hand is not the program's.
func TestDrawnIsNotWritten(t *testing.T) {
	s := session.New(started(), "", nil)
	if got, ok := s.Written(); ok {
		t.Errorf("a play drawn by hand is known as %v", got.Kind)
	}
	if got, ok := session.New(lesson.Lesson{}, "", nil).Written(); ok {
		t.Errorf("no play is known as %v", got.Kind)
	}
}
