package words

import (
	"fmt"
	"math"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/plan"
	"homeside/model/units"
)

// Policy is a pair's policy as the trade says it, with who runs in three-quarter.
func Policy(l lesson.Lesson, team court.End, p plan.Policy) string {
	switch p {
	case plan.Full():
		return T("Full: on every serve and return")
	case plan.Half():
		return T("Half: on the serve only")
	case plan.HalfReturn():
		return T("Half: on the return only")
	case plan.None():
		return T("None: play where the score puts you")
	}
	for number := 1; number <= 2; number++ {
		if who := game.PlayerOf(team, number); p == plan.ThreeQuarter(who) {
			return T("Three-quarter: on every serve, and on the returns of %s", l.NameOf(who))
		}
	}
	return T("A policy of your own")
}

// Goal is a goal for the sides, with the player it is about if there is one.
func Goal(l lesson.Lesson, g plan.Goal, x *game.Player) string {
	name := ""
	if x != nil {
		name = l.NameOf(*x)
	}
	switch {
	case g == plan.LessRunning:
		return T("Less running: nobody changes sides")
	case g == plan.OnTheLeft:
		return T("%s on the left", name)
	case g == plan.Hide:
		return T("Hide %s: the partner takes the middle", name)
	case x == nil:
		return T("Forehands in the middle")
	default:
		return T("%s's forehand in the middle", name)
	}
}

// PlanWhen is when a row of the plan comes up: serving or receiving, and the
// parity of the pair's own score.
func PlanWhen(r plan.Row) string {
	if r.Serving {
		return T("Serving, %s", Parity(r.Score))
	}
	return T("Receiving, %s", Parity(r.Score))
}

// Parity is the parity of a score by the side on which the starting server then stands.
func Parity(score court.Side) string { return Said(parityWords[score&1]) }

// PlanLead is who of the pair serves or receives, and from which side.
func PlanLead(l lesson.Lesson, r plan.Row) string {
	return fmt.Sprintf("%s %s, %v", l.NameOf(r.Lead), serveOrReceive(r.Serving), Name(r.From))
}

// PlanRight is who is left and who right, in the order that the pair sees when it faces the net.
func PlanRight(l lesson.Lesson, right game.Player) string {
	return fmt.Sprintf("%s | %s", l.NameOf(right.Partner()), l.NameOf(right))
}

// PlanWants is where the pair wants to end in a row.
func PlanWants(l lesson.Lesson, r plan.Row) string {
	if !r.Minds {
		return T("either")
	}
	return PlanRight(l, r.WantsRight)
}

// PlanMargin is the time to spare at the worst deadline of a row.
func PlanMargin(r plan.Row) string {
	if r.Margin == nil {
		return T("not known")
	}
	return marginWords(*r.Margin)
}

// PlanLegal says whether the rules find no fault in a row.
func PlanLegal(r plan.Row) string {
	switch {
	case r.Legal == nil:
		return T("not known")
	case *r.Legal:
		return T("yes")
	default:
		return T("no")
	}
}

// Way is the length of a run to a tenth of a foot or to five centimetres, as near
// as tables tell it: "28.2 ft", "8.60 m".
func Way(f units.Feet) string {
	if Measured() == Metric {
		return fmt.Sprintf("%.2f m", math.Round(float64(f.Metres())*20)/20)
	}
	return fmt.Sprintf("%.1f ft", float64(f))
}

// PlanRefused says why a row is not played as the policy has it; empty if it is.
func PlanRefused(p plan.Plan, r plan.Row) string {
	if r.Refused == "" {
		return ""
	}
	l := p.Pair.Lesson
	return fmt.Sprintf("%s, %s: %s. %s.", PlanWhen(r), PlanLead(l, r), Formation(r.Formation), capital(r.Refused))
}

// PlanLate says in how many situations the pair changes sides too late; empty
// if in none.
func PlanLate(p plan.Plan) string {
	n := 0
	for _, r := range p.Rows {
		if r.Margin != nil && *r.Margin < 0 && r.EndsRight() != r.Right() {
			n++
		}
	}
	switch n {
	case 0:
		return ""
	case 1:
		return T("In one situation somebody is late even behind a higher ball: do not change sides there with these legs.")
	default:
		return T("In %d situations somebody is late even behind a higher ball: do not change sides there with these legs.", n)
	}
}

// Starter says what a game comes to with a starting server.
func Starter(p plan.Plan, who game.Player) string {
	l, one, two := p.Pair.Lesson, p.Pair.Player(1), p.Pair.Player(2)
	return T("%s starts: %.1f %% to win, %.2f stacks a game; %s runs %s, %s %s.",
		l.NameOf(who), 100*p.Win, p.Stacks, l.NameOf(one), Distance(p.Feet[0]), l.NameOf(two), Distance(p.Feet[1]))
}

// MatchWritten says how many plays have been written into the lesson.
func MatchWritten(n int) string {
	switch n {
	case 0:
		return T("Every play of this plan is in the lesson already.")
	case 1:
		return T("One play added to the lesson.")
	default:
		return T("%d plays added to the lesson.", n)
	}
}

// scoreHeads are the headings of the plan score by score.
var scoreHeads = [...]string{Text("Call"), Text("Who serves, from, to"), Text("Formation"), Text("Ends: left | right"), Text("Rallies a game"), Text("Chance to win"), Text("Play‖noun")}

// ScoreHeads are the headings of the plan score by score.
func ScoreHeads() []string { return all(scoreHeads[:]...) }

// ServeAt is who serves at a state, from where and to whom.
func ServeAt(l lesson.Lesson, s game.State) string {
	return T("%s, %v, to %s", l.NameOf(s.Server()), Name(s.From()), l.NameOf(s.Receiver()))
}

// ScoresFound says how many of the states of a game are shown.
func ScoresFound(shown, of int) string {
	switch {
	case of == 0:
		return ""
	case shown == 0:
		return T("No game comes to this score.")
	case shown == of:
		return T("%d serves that a game can come to; past deuce, one for all that are further on.", of)
	default:
		return T("%d of %d serves", shown, of)
	}
}

// PlanCaution stands under every plan.
func PlanCaution() string {
	return T("Feet and times are estimates, not instructions to sprint; each rally is taken as independent of the last.")
}

// PlanHeads are the headings of the table's columns.
func PlanHeads(l lesson.Lesson, team court.End) []string {
	run := func(number int) string { return T("%s runs", l.NameOf(game.PlayerOf(team, number))) }
	return []string{
		T("Own score"), T("Who, from"), T("Score: left | right"), T("Wanted: left | right"), T("Formation"), run(1), run(2),
		T("Worst margin"), T("Legal"), T("Rallies"), T("Play‖noun"),
	}
}
