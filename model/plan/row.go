package plan

import (
	"cmp"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
)

// Situation is all of a state that decides what a pair does. It can be compared.
type Situation struct {
	Serving bool
	Score   court.Side  // the parity of the pair's own score: right for even, left for odd
	Lead    game.Player // who of the pair serves or receives
	From    court.Side  // the side from which
}

// situation is a state as the pair sees it.
func (p Pair) situation(s game.State) Situation {
	serving, lead := p.lead(s)
	return Situation{serving, court.Side(s.Score()[p.Team] & 1), lead, s.SideOf(lead)}
}

// Right is who belongs on the right by the score.
func (s Situation) Right() game.Player {
	if s.From == court.Right {
		return s.Lead
	}
	return s.Lead.Partner()
}

// compare orders the table: serving first, even first, then by player and side.
func (s Situation) compare(o Situation) int {
	return cmp.Or(boolOrder(o.Serving, s.Serving), cmp.Compare(s.Score, o.Score), cmp.Compare(s.Lead, o.Lead), cmp.Compare(s.From, o.From))
}

// boolOrder puts false before true.
func boolOrder(a, b bool) int {
	switch {
	case a == b:
		return 0
	case b:
		return -1
	default:
		return 1
	}
}

// Row is a line of the table: what the pair does in a situation and what it costs.
type Row struct {
	Situation
	WantsRight game.Player // who is to end on the right
	Minds      bool        // false: neither minds, WantsRight says nothing
	Formation  lesson.Formation
	Refused    string // why the policy's own formation cannot be played, so that Formation stands in for it; empty if it can
	Effort
	Rallies float64 // expected in a game
}

// EndsRight is who ends on the right.
func (r Row) EndsRight() game.Player {
	if moves(r.Formation) {
		return r.Right().Partner()
	}
	return r.Right()
}

// Swapped says whether the score puts the partners on each other's wanted sides.
func (r Row) Swapped() bool { return r.Minds && r.Right() != r.WantsRight }

// Wanted says whether the partners end on the sides they want.
func (r Row) Wanted() bool { return !r.Minds || r.EndsRight() == r.WantsRight }
