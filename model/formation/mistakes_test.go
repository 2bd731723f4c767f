package formation

import (
	"slices"
	"testing"

	"homeside/model/advice"
	"homeside/model/finding"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/rules"
)

// What the checks say of each mistake, and not of the play as it should be.
var found = map[Mistake][]finding.ID{
	PartnerInLine: {finding.ServeHitsOther},
	WrongReceiver: {finding.WrongReceiver},
	CreptIn:       {finding.PartnerInside},
	FlatReturn:    {finding.LateArrival, finding.NotSet},
}

func TestPairs(t *testing.T) {
	seen := map[Mistake]bool{}
	for _, serves := range [2]bool{true, false} {
		for _, kind := range Kinds {
			w := plain(kind, serves).write(t)
			pairs, err := w.Pairs()
			if err != nil {
				t.Fatalf("%v, serves %v: %v", kind, serves, err)
			}
			if len(pairs) == 0 {
				t.Errorf("%v, serves %v: no usual error", kind, serves)
			}
			for _, p := range pairs {
				seen[p.Mistake] = true
				checkPair(t, w, p)
			}
		}
	}
	if len(seen) != len(Mistakes) {
		t.Errorf("only %v have been made, want all %d", seen, len(Mistakes))
	}
}

func checkPair(t *testing.T, w Written, p Pair) {
	t.Helper()
	l := lessonOf(w)
	l.Plays = []lesson.Play{p.Was, p.Should}
	if bad := lesson.Validate(l); bad != nil {
		t.Fatalf("%v, %v: %v", w.Kind, p.Mistake, bad)
	}
	if p.Mistake == BothOneSide {
		if one := sameSide(w, p.WasRally); !one {
			t.Errorf("%v, serves %v, %v: they end on two sides", w.Kind, w.Situation.Serves(), p.Mistake)
		}
		if sameSide(w, p.Solved) {
			t.Errorf("%v as it should be: they end on one side", w.Kind)
		}
		return
	}
	was, should := ids(p.WasRally, l), ids(p.Solved, l)
	for _, id := range found[p.Mistake] {
		if !slices.Contains(was, id) || slices.Contains(should, id) {
			t.Errorf("%v, serves %v, %v: found %v as it was and %v as it should be, want %v only in the first", w.Kind, w.Situation.Serves(), p.Mistake, was, should, id)
		}
	}
}

func sameSide(w Written, r *rally.Rally) bool {
	id := w.Situation.Lead()
	at := func(id game.Player) bool { return r.Tracks[id].RunAt(r.To).Place.X > 0 }
	return at(id) == at(id.Partner())
}

func ids(r *rally.Rally, l lesson.Lesson) (all []finding.ID) {
	for _, f := range append(rules.Check(r, l), advice.Check(r)...) {
		all = append(all, f.ID)
	}
	return all
}
