package session

import (
	"testing"

	"homeside/model/court"
	"homeside/model/edit"
	"homeside/model/game"
	"homeside/model/lesson"
)

// Keys go round everything on the court, either way, and meet each once.
func TestPickNextGoesRound(t *testing.T) {
	l := timed()
	l.Plays[0].Marks = []lesson.Mark{{Text: "here"}}
	for _, by := range []int{1, -1} {
		s := New(l, "", nil)
		seen := map[edit.Part]bool{}
		first, ok := s.PickNext(by)
		for a := first; ok && !seen[a]; a, ok = s.PickNext(by) {
			seen[a] = true
			if got := s.Picked(); len(got) != 1 || got[0] != a {
				t.Fatalf("picked %+v, want %+v", got, a)
			}
		}
		for _, want := range []edit.Part{
			{Kind: edit.PlayerPart, Player: game.Near1}, {Kind: edit.PlayerPart, Player: game.Far2},
			{Kind: edit.KeyframePart, Player: game.Far2, Index: 2}, {Kind: edit.RunPart, Player: game.Far2, Index: 1},
			{Kind: edit.AimPart, Index: 1}, {Kind: edit.MarkPart, Index: 0},
		} {
			if !seen[want] {
				t.Errorf("by %d: %+v is never picked", by, want)
			}
		}
		if len(seen) != len(partsOf(s.Current())) {
			t.Errorf("by %d: %d things are picked, want all %d", by, len(seen), len(partsOf(s.Current())))
		}
	}
	if a, ok := New(lesson.Lesson{}, "", nil).PickNext(1); ok {
		t.Errorf("in an empty lesson %+v is picked", a)
	}
}

// Nudges of one thing that follow one another are one step.
func TestNudgesAreOneStep(t *testing.T) {
	s := New(timed(), "", nil)
	s.Pick(edit.Part{Kind: edit.PlayerPart, Player: game.Far2})
	for range 3 {
		if !s.Nudge("move far2", court.Pt(1, 0)) {
			t.Fatal("nothing was nudged")
		}
	}
	s.Undo()
	if s.Modified() {
		t.Error("after one undo three nudges are not all gone")
	}
}
