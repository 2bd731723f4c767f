package finding

import (
	"cmp"
	"slices"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/units"
)

// Finding is one thing that a check has to say about a play.
type Finding struct {
	ID       ID
	Severity Severity
	Rule     Rule        // NoRule where the rulebook is silent
	Someone  bool        // it concerns one player
	Player   game.Player // who, if Someone
	Where    court.Point
	When     units.Seconds // on the rally's clock
	Args     Args
}

// New is a finding of this kind with the kind's severity and rule.
func New(id ID, when units.Seconds, where court.Point, args ...Arg) Finding {
	k := KindOf(id)
	return Finding{ID: id, Severity: k.Severity, Rule: k.Rule, Where: where, When: when, Args: args}
}

// About is the finding about one player.
func (f Finding) About(p game.Player) Finding {
	f.Someone, f.Player = true, p
	return f
}

// Sort puts the worst first and then the earliest; what is equal keeps its order.
func Sort(all []Finding) {
	slices.SortStableFunc(all, func(a, b Finding) int {
		return cmp.Or(cmp.Compare(a.Severity, b.Severity), cmp.Compare(a.When, b.When))
	})
}

// Faults says whether one of them is a fault.
func Faults(all []Finding) bool {
	return slices.ContainsFunc(all, func(f Finding) bool { return f.Severity == Fault })
}
