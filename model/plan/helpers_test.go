package plan

import (
	"testing"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

// pairOf is a near or far pair of right-handers of which the first wants one
// side and the second the other, always.
func pairOf(team court.End, first lesson.Want, p Policy) Pair {
	pair := Pair{Team: team, Policy: p}
	return pair.With(sides(pair.Player(1), first))
}

// made are efforts that are made up: whoever serves or receives runs 7 ft, or 13
// where the formation changes sides, the partner 2 or 5; receiving takes 1 ft more.
type made struct{}

func (made) Effort(p Pair, s game.State, f lesson.Formation) (Effort, error) {
	serving, lead := p.lead(s)
	a, b := units.Feet(7), units.Feet(2)
	if moves(f) {
		a, b = 13, 5
	}
	if !serving {
		a, b = a+1, b+1
	}
	var e Effort
	e.Feet[lead.Number()-1], e.Feet[lead.Partner().Number()-1] = a, b
	return e, nil
}

func mustPlan(t testing.TB, set game.Settings, pair Pair, c Chances) Plan {
	t.Helper()
	p, err := Of(mustStart(t, set), pair, c, made{})
	if err != nil {
		t.Fatalf("Of(%+v, %v): %v", set, c, err)
	}
	return p
}
