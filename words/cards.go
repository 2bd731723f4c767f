package words

import (
	"homeside/model/court"
	"homeside/model/drill"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/plan"
	"homeside/model/roster"
)

// CardsFold says what to do with a page of match cards.
func CardsFold() string {
	return T("Cut along the solid lines and fold along the dashed ones with the print outside: serving on one face, receiving on the other. Right and left as the pair sees them, facing the net. Even and odd: the pair's own score. Where the score does not give the pair the sides it wants, it stacks.")
}

// PairTitle is a pair in short: its name, or its players'.
func PairTitle(p roster.Pair) string {
	if p.Name != "" {
		return p.Name
	}
	return T("%s and %s", nameOr(p.Players[0], T("first")), nameOr(p.Players[1], T("second")))
}

// CardClash says why a pair has no card.
func CardClash(p roster.Pair) string {
	return T("%s: both partners want the same side. Agree on sides, then print the card again.", PairTitle(p))
}

// Naming is what a card calls a player: the name, or initials where room is short.
type Naming func(game.Player) string

// CardStarter says on which starting server a card rests.
func CardStarter(name Naming, who game.Player) string {
	return T("%s starts; if %s does, swap even and odd.", name(who), name(who.Partner()))
}

// CardSignals are the signs in use: those of common practice (and of a coaching
// magazine), or the pair's own.
func CardSignals(s lesson.Signs) string {
	m := drill.MeaningsOf(s)
	stay, change := m.SignFor(lesson.Stay), m.SignFor(lesson.Switch)
	if stay == drill.Fist && change == drill.OpenHand {
		return T("Fist: stay. Open hand: switch. Unsure: stay.")
	}
	return T("%s: stay. %s: switch. Unsure: stay.", SignName(stay), SignName(change))
}

// ParityShort is the parity of a score in a word.
func ParityShort(score court.Side) string {
	if score == court.Right {
		return T("even")
	}
	return T("odd")
}

// CardRow is what a pair does in a situation, and where it then stands:
// "Ines serves right: stack", "then Ines left, Tobin right".
func CardRow(name Naming, r plan.Row) (does, ends string) {
	lead, right := name(r.Lead), r.From == court.Right
	switch {
	case r.Serving && right:
		does = T("%s serves right", lead)
	case r.Serving:
		does = T("%s serves left", lead)
	case right:
		does = T("%s receives right", lead)
	default:
		does = T("%s receives left", lead)
	}
	switch r.Formation {
	case lesson.Stacked:
		does = T("%s: stack", does)
	case lesson.Switched:
		does = T("%s: switch", does)
	default:
		does = T("%s: stay", does)
	}
	end := r.EndsRight()
	ends = T("then %s left, %s right", name(end.Partner()), name(end))
	if r.Margin != nil && *r.Margin < 0 {
		ends = T("%s (%s late)", ends, Seconds(-*r.Margin))
	}
	return does, ends
}
