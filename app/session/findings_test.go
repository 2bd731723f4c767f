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

// A fix is one step after which the fault is gone; undo brings it back.
func TestFix(t *testing.T) {
	l := served(game.SideOut)
	l.Plays[0].Tracks[game.Near1][0].Place = court.Pt(3.5, -21)
	s := session.New(l, "", nil)
	if s.Findings()[0].ID != finding.FootOnCourt || !s.CanFix(0) {
		t.Fatalf("Findings() = %+v, CanFix(0) = %v, want a foot on the court that can be mended", s.Findings(), s.CanFix(0))
	}
	s.Fix(0)
	if name, _ := s.CanUndo(); name != "fix check 1" || finding.Faults(s.Findings()) {
		t.Errorf("after Fix the step is %q and the findings %+v, want \"fix check 1\" and no fault", name, s.Findings())
	}
	s.Undo()
	if !finds(s, finding.FootOnCourt) || s.Modified() {
		t.Errorf("undone: fault there %v, modified %v, want true, false", finds(s, finding.FootOnCourt), s.Modified())
	}
}

func TestFixOfNothing(t *testing.T) {
	s := session.New(served(game.SideOut), "", nil)
	n := len(s.Findings())
	s.Fix(n)
	if s.CanFix(n) || s.Modified() {
		t.Errorf("CanFix and Fix of a finding that is not there: %v, modified %v, want false, false", s.CanFix(n), s.Modified())
	}
}
