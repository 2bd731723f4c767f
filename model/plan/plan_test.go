package plan

import (
	"errors"
	"fmt"
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

// The table of a side-out game, worked out by hand from 5.B.3 (USA Pickleball
// Official Rulebook 2026): near1 starts, so belongs on the right at even, and
// wants the left.
func TestRows(t *testing.T) {
	p := mustPlan(t, game.Settings{}, pairOf(court.Near, lesson.WantLeft, ThreeQuarter(game.Near2)), Chances{0.5, 0.5})
	var got []string
	for _, r := range p.Rows {
		role := "receives"
		if r.Serving {
			role = "serves"
		}
		got = append(got, fmt.Sprintf("%v: %v %s from the %v, right %v: %v, right %v %v", [2]string{"even", "odd"}[r.Score], r.Lead, role, r.From, r.Right(), r.Formation, r.EndsRight(), r.Wanted()))
	}
	want := `even: near1 serves from the right, right near1: stack, right near2 true
even: near2 serves from the left, right near1: stack, right near2 true
odd: near1 serves from the left, right near2: ordinary, right near2 true
odd: near2 serves from the right, right near2: ordinary, right near2 true
even: near1 receives from the right, right near1: ordinary, right near1 false
even: near2 receives from the left, right near1: stack, right near2 true
odd: near1 receives from the left, right near2: ordinary, right near2 true
odd: near2 receives from the right, right near2: ordinary, right near2 true`
	if s := strings.Join(got, "\n"); s != want {
		t.Errorf("rows\n%s\nwant\n%s", s, want)
	}
}

// A server who never loses serves 11 rallies in a row, six of them at even: near1
// starts on the right at 0, 2, 4 ... 10.
func TestStacksByHand(t *testing.T) {
	for _, c := range []struct {
		wants   lesson.Want
		starter game.Player
		stacks  float64
		feet    [2]units.Feet
	}{
		{lesson.WantLeft, game.Near1, 6, [2]units.Feet{6*13 + 5*7, 6*5 + 5*2}},
		{lesson.WantRight, game.Near1, 5, [2]units.Feet{5*13 + 6*7, 5*5 + 6*2}},
		{lesson.WantLeft, game.Near2, 5, [2]units.Feet{5*5 + 6*2, 5*13 + 6*7}},
		{lesson.WantRight, game.Near2, 6, [2]units.Feet{6*5 + 5*2, 6*13 + 5*7}},
	} {
		set := game.Settings{Starters: [2]game.Player{c.starter, game.Far1}}
		p := mustPlan(t, set, pairOf(court.Near, c.wants, Full()), Chances{1, 0.5})
		if p.Stacks != c.stacks || p.Feet != c.feet || p.Win != 1 || p.Rallies != 11 {
			t.Errorf("near1 wants the %v, %v starts: stacks %v, feet %v, win %v, rallies %v, want %v, %v, 1, 11",
				c.wants, c.starter, p.Stacks, p.Feet, p.Win, p.Rallies, c.stacks, c.feet)
		}
	}
}

// Computed once apart from this program: a short Python program with its own
// rules of the game follows the chances of all states from rally to rally.
// Full stack, near1 wants the left.
func TestStacksApart(t *testing.T) {
	for _, c := range []struct {
		n                    int
		ch                   Chances
		first                court.End
		starter              game.Player
		win, rallies, stacks float64
	}{
		{11, Chances{0.5, 0.5}, court.Near, game.Near1, 0.499999997522, 34.960669712732, 19.135752583389},
		{11, Chances{0.5, 0.5}, court.Near, game.Near2, 0.499999997522, 34.960669712732, 15.824917129344},
		{11, Chances{0.44, 0.47}, court.Near, game.Near1, 0.416167232150, 38.636611651057, 21.136521046114},
		{15, Chances{0.44, 0.5}, court.Far, game.Near2, 0.314276222196, 51.608588708316, 23.574333641321},
	} {
		set := game.Settings{To: c.n, First: c.first, Starters: [2]game.Player{c.starter, game.Far1}}
		p := mustPlan(t, set, pairOf(court.Near, lesson.WantLeft, Full()), c.ch)
		if off(p.Win, c.win) || off(p.Rallies, c.rallies) || off(p.Stacks, c.stacks) {
			t.Errorf("to %d, %v, %v first, %v starts: win %.12f, rallies %.12f, stacks %.12f, want %v, %v, %v",
				c.n, c.ch, c.first, c.starter, p.Win, p.Rallies, p.Stacks, c.win, c.rallies, c.stacks)
		}
	}
}

// With certain servers the better starter is the one who belongs at even where
// he or she wants to be.
func TestCompareStarters(t *testing.T) {
	for want, better := range map[lesson.Want]game.Player{lesson.WantRight: game.Near1, lesson.WantLeft: game.Near2} {
		s, err := CompareStarters(game.Settings{}, pairOf(court.Near, want, Full()), Chances{1, 0.5}, made{})
		if got, differs := s.Better(); err != nil || got != better || !differs {
			t.Errorf("near1 wants the %v: better starter %v, %v, %v, want %v", want, got, differs, err, better)
		}
	}
	fixed, err := CompareStarters(game.Settings{Format: game.RallyFixed}, pairOf(court.Far, lesson.WantLeft, Full()), Chances{0.4, 0.4}, nil)
	if got, differs := fixed.Better(); err != nil || got != game.Far2 || !differs || fixed[1].Swapped != 0 || off(fixed[0].Swapped, fixed[0].Rallies) {
		t.Errorf("rally-fixed, far1 wants the left: better starter %v, %v, %v, want far2, who then stays on the right", got, differs, err)
	}
	s, err := CompareStarters(game.Settings{}, Pair{Team: court.Near, Policy: Full()}, Chances{1, 0.5}, nil)
	if got, differs := s.Better(); err != nil || differs {
		t.Errorf("nobody minds: better starter %v, %v, %v, want none", got, differs, err)
	}
}

// Where nobody swaps sides there is nothing to stack for, whatever is wanted.
func TestFixedNeverStacks(t *testing.T) {
	for _, w := range []lesson.Want{lesson.WantLeft, lesson.WantRight} {
		if p := mustPlan(t, game.Settings{Format: game.RallyFixed}, pairOf(court.Far, w, Full()), Chances{0.4, 0.4}); p.Stacks != 0 {
			t.Errorf("rally-fixed, first of the pair wants the %v: %v stacks, want 0", w, p.Stacks)
		}
	}
}

// The same game seen from the other end has the same plan, the two players'
// wishes and names exchanged likewise, and the sums are those of the states.
func TestPlanMirrors(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := rapid.SampledFrom(game.Formats[:]).Draw(t, "format")
		n, starter := rapid.IntRange(1, 6).Draw(t, "to"), rapid.IntRange(1, 2).Draw(t, "starter")
		c := Chances{rapid.Float64Range(0.05, 0.95).Draw(t, "own"), rapid.Float64Range(0.05, 0.95).Draw(t, "other")}
		first := rapid.SampledFrom(court.Ends[:]).Draw(t, "first")
		w := rapid.SampledFrom([]lesson.Want{lesson.Either, lesson.WantLeft, lesson.WantRight}).Draw(t, "want")
		near := planFor(t, court.Near, game.Settings{Format: f, To: n, First: first}, starter, w, c)
		far := planFor(t, court.Far, game.Settings{Format: f, To: n, First: first.Other()}, starter, w, Chances{c[1], c[0]})
		if off(near.Win, far.Win) || off(near.Rallies, far.Rallies) || off(near.Stacks, far.Stacks) || off(float64(near.Feet[1]), float64(far.Feet[1])) {
			t.Errorf("near plan %v %v %v %v, far plan %v %v %v %v", near.Win, near.Rallies, near.Stacks, near.Feet, far.Win, far.Rallies, far.Stacks, far.Feet)
		}
		swapped := planFor(t, court.Near, game.Settings{Format: f, To: n, First: first}, 3-starter, sides(game.Near1, w)[1], c)
		if off(near.Stacks, swapped.Stacks) && w != lesson.Either || off(float64(near.Feet[0]), float64(swapped.Feet[1])) && w != lesson.Either {
			t.Errorf("stacks %v, feet %v; with the partners exchanged %v, %v", near.Stacks, near.Feet, swapped.Stacks, swapped.Feet)
		}
		rallies, states := 0.0, 0.0
		for _, r := range near.Rows {
			rallies += r.Rallies
		}
		for _, s := range near.States {
			states += s.Rallies
		}
		if off(rallies, near.Rallies) || off(states, near.Rallies) {
			t.Errorf("%v rallies, rows %v, states %v", near.Rallies, rallies, states)
		}
	})
}

func planFor(t *rapid.T, team court.End, set game.Settings, starter int, first lesson.Want, c Chances) Plan {
	set.Starters[team] = game.PlayerOf(team, starter)
	set.Starters[team.Other()] = game.PlayerOf(team.Other(), 1)
	start, err := set.Start()
	if err != nil {
		t.Fatal(err)
	}
	p, err := Of(start, pairOf(team, first, Full()), c, made{})
	if err != nil {
		t.Fatalf("Of(%+v, %v): %v", set, c, err)
	}
	return p
}

// Past deuce the sides survive: at 12-12 the plan says what it says at 10-10, and
// at 11-11 the other.
func TestStateAtPastDeuce(t *testing.T) {
	p := mustPlan(t, game.Settings{Format: game.RallyParity}, pairOf(court.Near, lesson.WantLeft, Full()), Chances{0.5, 0.5})
	for n, want := range map[int]lesson.Formation{10: lesson.Stacked, 11: lesson.Ordinary, 12: lesson.Stacked, 31: lesson.Ordinary} {
		m, err := game.Replay(game.Settings{Format: game.RallyParity}, strings.Repeat("nf", n))
		if err != nil {
			t.Fatal(err)
		}
		st, ok := p.StateAt(m.State())
		if !ok || p.Formation(st) != want {
			t.Errorf("at %d-all: %v, %v, want %v", n, p.Formation(st), ok, want)
		}
	}
	if _, ok := p.StateAt(mustStart(t, game.Settings{})); ok {
		t.Error("a side-out state in a plan of rally scoring, want none")
	}
}

// From the middle of a game the rest of it is planned.
func TestPlanFromTheMiddle(t *testing.T) {
	m, _ := game.Replay(game.Settings{}, "nnnnnnnnnn") // 10-0-2
	p, err := Of(m.State(), pairOf(court.Near, lesson.WantLeft, Full()), Chances{1, 0.5}, made{})
	if err != nil || p.Rallies != 1 || p.Stacks != 1 || p.States[0].State != m.State() {
		t.Errorf("from 10-0-2 with a certain server: %v rallies, %v stacks, %v, want 1 and 1", p.Rallies, p.Stacks, err)
	}
	if _, err := Of(m.Won(court.Near).State(), pairOf(court.Near, lesson.WantLeft, Full()), Chances{1, 0.5}, made{}); err == nil {
		t.Error("a plan of a game that is over, want an error")
	}
}

func TestPlanRefuses(t *testing.T) {
	clash := Pair{Team: court.Near}.With([2]lesson.Want{lesson.WantLeft, lesson.WantLeft})
	for _, c := range []struct {
		pair Pair
		ch   Chances
		want error
		says string
	}{
		{clash, Chances{0.5, 0.5}, ErrWants, "near1 and near2 both want the left side when serving"},
		{Pair{Policy: Policy{Serve: lesson.Poached}}, Chances{0.5, 0.5}, ErrPolicy, "poach"},
		{Pair{}, Chances{math.NaN(), 0.5}, ErrChance, "near"},
		{Pair{}, Chances{0.5, -0.1}, ErrChance, "far"},
		{Pair{}, Chances{0, 0}, ErrEndless, ""},
	} {
		_, err := Of(mustStart(t, game.Settings{}), c.pair, c.ch, made{})
		if !errors.Is(err, c.want) || !strings.Contains(err.Error(), c.says) {
			t.Errorf("Of with %v: %v, want %v that says %q", c.ch, err, c.want, c.says)
		}
	}
}

func TestParsePolicy(t *testing.T) {
	for _, name := range PolicyNames {
		if _, err := ParsePolicy(name, game.Near1); err != nil {
			t.Errorf("ParsePolicy(%q): %v", name, err)
		}
	}
	if _, err := ParsePolicy("double", game.Near1); err == nil {
		t.Error(`ParsePolicy("double"): no error`)
	}
	if p, _ := ParsePolicy("three-quarter", game.Near2); p != (Policy{lesson.Stacked, [2]lesson.Formation{lesson.FormationUnsaid, lesson.Stacked}}) {
		t.Errorf("three-quarter with near2: %+v, want the serve and near2's return", p)
	}
}
