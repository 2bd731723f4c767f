package plan

import (
	"cmp"
	"errors"
	"fmt"
	"math"
	"slices"

	"homeside/model/formation"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

// Plan is a pair's whole game from some state on.
type Plan struct {
	Pair    Pair
	Win     float64 // the pair's chance to win
	Rallies float64 // expected
	Swapped float64 // expected rallies at which the score puts the partners on each other's wanted sides
	Stacks  float64 // expected rallies in which the pair stacks or switches
	Feet    [2]units.Feet
	Rows    []Row   // the table, serving first
	States  []State // what the game can come to, by score; the first is where it begins
}

// State is one state of the game with its share of the plan. Past deuce a state
// stands for all that are two, four ... points each further on.
type State struct {
	State   game.State
	Row     int     // its line in Plan.Rows
	Rallies float64 // expected at it
	Win     float64 // the pair's chance to win from it
}

// Of is the plan of a pair from a state on, often Settings.Start. The error says
// what is wrong: ErrChance, ErrEndless, ErrWants, ErrPolicy, a game that is over,
// or what the efforts fail at. Without efforts the table has no costs.
func Of(start game.State, pair Pair, c Chances, efforts Efforts) (Plan, error) {
	if err := pair.Check(); err != nil {
		return Plan{}, fmt.Errorf("plan a game: %w", err)
	}
	if err := c.Check(); err != nil {
		return Plan{}, fmt.Errorf("plan a game: %w", err)
	}
	if start.Over() {
		return Plan{}, fmt.Errorf("plan a game: it is over")
	}
	ch := newChain(start, personKey, c)
	s, err := ch.solve()
	if err != nil {
		return Plan{}, fmt.Errorf("plan a game: %w", err)
	}
	p := Plan{Pair: pair, Win: s.win[pair.Team][0], Rallies: s.total()}
	if err := p.fill(ch, s, efforts); err != nil {
		return Plan{}, fmt.Errorf("plan a game: %w", err)
	}
	return p, nil
}

// fill adds the states, the table and what they sum up to.
func (p *Plan) fill(ch *chain, s solution, efforts Efforts) error {
	if err := p.addRows(ch, efforts); err != nil {
		return err
	}
	for i, n := range ch.nodes {
		at := p.rowOf(p.Pair.situation(n.state))
		p.States = append(p.States, State{n.state, at, s.rallies[i], s.win[p.Pair.Team][i]})
		p.Rows[at].Rallies += s.rallies[i]
	}
	slices.SortStableFunc(p.States, func(a, b State) int { return byScore(a.State, b.State) })
	for _, r := range p.Rows {
		if r.Swapped() {
			p.Swapped += r.Rallies
		}
		if moves(r.Formation) {
			p.Stacks += r.Rallies
		}
		for i, feet := range r.Feet {
			p.Feet[i] += feet * units.Feet(r.Rallies)
		}
	}
	if sum := float64(p.Feet[0] + p.Feet[1]); math.IsInf(sum, 0) || math.IsNaN(sum) {
		return ErrEndless
	}
	return nil
}

// addRows lists the situations that come up, in order, each worked out once.
func (p *Plan) addRows(ch *chain, efforts Efforts) error {
	met := map[Situation]game.State{}
	for _, n := range ch.nodes {
		if sit := p.Pair.situation(n.state); !has(met, sit) {
			met[sit] = n.state
		}
	}
	for sit, state := range met {
		row, err := p.Pair.row(sit, state, efforts)
		if err != nil {
			return err
		}
		p.Rows = append(p.Rows, row)
	}
	slices.SortFunc(p.Rows, func(a, b Row) int { return a.compare(b.Situation) })
	return nil
}

func has[K comparable, V any](m map[K]V, k K) bool {
	_, ok := m[k]
	return ok
}

// row is the table's line for a situation, with a state at which it comes up.
func (p Pair) row(sit Situation, s game.State, efforts Efforts) (Row, error) {
	r := Row{Situation: sit, Formation: p.formation(s)}
	r.WantsRight, r.Minds = p.WantedRight(sit.Serving)
	if efforts == nil {
		return r, nil
	}
	for _, f := range instead(r.Formation) {
		e, err := efforts.Effort(p, s, f)
		switch {
		case err == nil:
			r.Formation, r.Effort = f, e
			return r, nil
		case f == lesson.Ordinary || !errors.Is(err, formation.ErrRefused):
			return Row{}, err
		case r.Refused == "":
			r.Refused = err.Error()
		}
	}
	return r, nil
}

// instead is a formation and what to play where it is refused, as a stack on
// the return is where there is no room beside the court.
func instead(f lesson.Formation) []lesson.Formation {
	switch f {
	case lesson.Stacked:
		return []lesson.Formation{f, lesson.Switched, lesson.Ordinary}
	case lesson.Switched:
		return []lesson.Formation{f, lesson.Ordinary}
	default:
		return []lesson.Formation{f}
	}
}

func (p *Plan) rowOf(sit Situation) int {
	at, _ := slices.BinarySearchFunc(p.Rows, sit, func(r Row, s Situation) int { return r.compare(s) })
	return at
}

// byScore orders states by the points played; those at one score stay in the
// order in which a game comes to them.
func byScore(a, b game.State) int {
	x, y := a.Score(), b.Score()
	return cmp.Or(cmp.Compare(x[0]+x[1], y[0]+y[1]), cmp.Compare(x[0], y[0]))
}

// StateAt is the plan's state with the same call, servers and sides as s; false
// if the game cannot come to it.
func (p Plan) StateAt(s game.State) (State, bool) {
	for _, st := range p.States {
		if personKey(st.State) == personKey(s) {
			return st, true
		}
	}
	return State{}, false
}

// Formation is what the pair does at a state of the plan.
func (p Plan) Formation(s State) lesson.Formation { return p.Rows[s.Row].Formation }
