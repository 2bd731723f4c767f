package session_test

import (
	"slices"
	"testing"

	"homeside/app/session"
	"homeside/model/court"
	"homeside/model/finding"
	"homeside/model/game"
)

func finds(s *session.Session, id finding.ID) bool {
	return slices.ContainsFunc(s.Findings(), func(f finding.Finding) bool { return f.ID == id })
}

// What is found follows the hand: the draft of a drag over the baseline is a
// fault (7.A.2), Escape takes it away, and undo takes back one that was dropped.
func TestFindingsFollowTheDraft(t *testing.T) {
	s := session.New(served(game.SideOut), "", nil)
	if finding.Faults(s.Findings()) {
		t.Fatalf("an ordinary serve has faults: %+v", s.Findings())
	}
	over := court.Pt(3.5, -21)
	l, ok := s.PlaceAt(game.Near1, over)
	if !ok {
		t.Fatal("PlaceAt = false, want true")
	}
	s.Preview(l)
	if !finds(s, finding.FootOnCourt) {
		t.Errorf("dragged over the baseline: %+v, want %s", s.Findings(), finding.FootOnCourt)
	}
	s.Cancel()
	if finds(s, finding.FootOnCourt) {
		t.Error("cancelled: the fault is still there")
	}
	s.Preview(l)
	s.Commit("move")
	if !finds(s, finding.FootOnCourt) {
		t.Error("dropped: the fault is gone, want it")
	}
	s.Undo()
	if finds(s, finding.FootOnCourt) {
		t.Error("undone: the fault is still there")
	}
}

// They are worked out once for each change.
func TestFindingsAreKept(t *testing.T) {
	l := served(game.SideOut)
	l.Plays[0].Tracks[game.Near1][0].Place = court.Pt(3.5, -21)
	s := session.New(l, "", nil)
	first := s.Findings()
	s.Seek(1)
	if again := s.Findings(); len(first) == 0 || &again[0] != &first[0] {
		t.Errorf("Findings() after Seek are worked out again, want those kept: %d findings", len(first))
	}
}
