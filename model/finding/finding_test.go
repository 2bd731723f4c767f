package finding

import (
	"slices"
	"testing"

	"homeside/model/court"
	"homeside/model/game"
)

func TestNewTakesSeverityAndRuleFromItsKind(t *testing.T) {
	for _, k := range Kinds {
		got := New(k.ID, 1.5, court.Pt(2, 3), Is("height", 4)).About(game.Far2)
		if got.Severity != k.Severity || got.Rule != k.Rule {
			t.Errorf("New(%s) = %v by %v, want %v by %v", k.ID, got.Severity, got.Rule, k.Severity, k.Rule)
		}
		if !got.Someone || got.Player != game.Far2 || got.When != 1.5 || got.Where != court.Pt(2, 3) {
			t.Errorf("New(%s) lost something: %+v", k.ID, got)
		}
	}
}

func TestKindsAreNamedOnce(t *testing.T) {
	seen := map[ID]bool{}
	for _, k := range Kinds {
		if seen[k.ID] {
			t.Errorf("%s is listed twice", k.ID)
		}
		seen[k.ID] = true
		if k.Severity == Fault && k.Rule == NoRule {
			t.Errorf("%s is a fault without a rule", k.ID)
		}
	}
	if got := KindOf("no such thing"); got.Severity != Advice || got.Rule != NoRule {
		t.Errorf("KindOf(unknown) = %+v, want advice without a rule", got)
	}
}

func TestSort(t *testing.T) {
	all := []Finding{New(StackLegal, 0, court.Pt(0, 0)), New(KitchenVolley, 2, court.Pt(0, 0)), New(ShotImpossible, 1, court.Pt(0, 0)),
		New(WrongServer, 0, court.Pt(0, 0)), New(FootOnCourt, 0, court.Pt(0, 0))}
	Sort(all)
	var got []ID
	for _, f := range all {
		got = append(got, f.ID)
	}
	want := []ID{WrongServer, FootOnCourt, KitchenVolley, ShotImpossible, StackLegal}
	if !slices.Equal(got, want) {
		t.Errorf("Sort gives %v, want %v", got, want)
	}
	if !Faults(all) || Faults(all[3:]) {
		t.Errorf("Faults = %v and %v without the faults, want true and false", Faults(all), Faults(all[3:]))
	}
}

func TestSeverities(t *testing.T) {
	want := []string{"fault", "late", "caution", "advice"}
	for i, s := range Severities {
		if got := s.String(); got != want[i] {
			t.Errorf("Severities[%d] = %q, want %q", i, got, want[i])
		}
	}
}

// The numbers of the USA Pickleball Official Rulebook 2026, as its readers agree
// on them.
func TestRuleNumbers(t *testing.T) {
	for _, c := range []struct {
		r    Rule
		want string
	}{
		{ServerOnCourtRule, "USAP 2026 7.A.2"}, {ServeHitsServersRule, "USAP 2026 7.E.4"}, {ServeHitsReceiversRule, "USAP 2026 7.E.5"},
		{TwoBouncesRule, "USAP 2026 10.A"}, {MomentumRule, "USAP 2026 11.A.2"}, {PartnerRule, "USAP 2026 5.B.4"}, {NoRule, ""},
	} {
		if got := c.r.In(USAP2026); got != c.want {
			t.Errorf("Rule(%d).In(USAP2026) = %q, want %q", c.r, got, c.want)
		}
	}
	for e := range editions {
		if e.String() == "" {
			t.Errorf("edition %d has no name", e)
		}
	}
}

func TestArgs(t *testing.T) {
	a := Args{Is("call", "4-7-2"), Is("server", game.Near2)}
	if got, ok := a.Get("server"); !ok || got != game.Near2 {
		t.Errorf("Get(server) = %v, %v, want near2, true", got, ok)
	}
	if got, ok := a.Get("nobody"); ok {
		t.Errorf("Get(nobody) = %v, true, want nothing", got)
	}
}
