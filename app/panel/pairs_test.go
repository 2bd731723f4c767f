package panel

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2/test"

	"homeside/model/court"
	"homeside/model/lesson"
	"homeside/model/roster"
)

func TestPairs(t *testing.T) {
	var kept []court.End
	removed := -1
	p, s := planned(t, start(), MatchPlanEvents{Pairs: PairEvents{
		Keep: func(e court.End) { kept = append(kept, e) }, Remove: func(i int) { removed = i },
	}})
	v := p.pairs
	if v.file.Text != "No roster is open." || !v.put[court.Near].Disabled() || !v.remove.Disabled() {
		t.Errorf("without a roster: %q, can put in %v, want none open and no", v.file.Text, !v.put[court.Near].Disabled())
	}
	quay := roster.Pair{Name: "Quay Street", Notes: "Invented.", Players: [2]lesson.Player{{Name: "Nele"}, {Name: "Sven", Hand: lesson.LeftHanded}}}
	p.SetRoster(roster.Roster{Pairs: []roster.Pair{roster.PairOf(s.Lesson(), court.Near), quay}}, "/somewhere/tuesday.json")
	v.list.Select(1)
	if !strings.HasPrefix(v.about.Text, "Quay Street: Nele and Sven\n") || !strings.HasSuffix(v.about.Text, "Invented.") || v.file.Text != "tuesday.json" {
		t.Errorf("the second pair of %q is told as %q", v.file.Text, v.about.Text)
	}
	test.Tap(v.put[court.Far])
	if got := roster.PairOf(s.Lesson(), court.Far); got.Name != quay.Name || p.line.Text != "Quay Street is the far team now." {
		t.Errorf("put in as the far team: %q plays there, and the page says %q", got.Name, p.line.Text)
	}
	if got := p.team.Options[1]; got != "Quay Street" {
		t.Errorf("afterwards the plan can be for %q, want Quay Street", got)
	}
	test.Tap(v.keep[court.Near])
	test.Tap(v.remove)
	if len(kept) != 1 || kept[0] != court.Near || removed != 1 {
		t.Errorf("kept %v, removed %d, want near and 1", kept, removed)
	}
	p.SetRoster(roster.Roster{}, "/somewhere/tuesday.json")
	if v.chosen != -1 || !v.remove.Disabled() {
		t.Errorf("in a roster without pairs %d is chosen, want none", v.chosen)
	}
}
