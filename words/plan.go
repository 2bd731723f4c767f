package words

import (
	"fmt"
	"strings"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/plan"
	"homeside/model/signal"
	"homeside/model/units"
)

// ChooseSides is said where nobody swaps sides during a game.
func ChooseSides() string {
	return T("Nobody swaps sides in this format: choose your sides before 0-0, and there is nothing to stack for.")
}

// PlanTotals says what a plan comes to, in sentences.
func PlanTotals(p plan.Plan) string {
	l, one, two := p.Pair.Lesson, p.Pair.Player(1), p.Pair.Player(2)
	return T("%s wins %.1f %% of such games. Expected in a game: %.1f rallies, %.1f of them stacked; %s runs %s, %s %s.",
		capital(Team(l, p.Pair.Team)), 100*p.Win, p.Rallies, p.Stacks, l.NameOf(one), Distance(p.Feet[0]), l.NameOf(two), Distance(p.Feet[1]))
}

// PlanRow is a line of the table: the situation, the sides the score gives, what
// the pair does, and what it costs.
func PlanRow(p plan.Plan, r plan.Row) string {
	l, one, two := p.Pair.Lesson, p.Pair.Player(1), p.Pair.Player(2)
	said := []string{T("%s, %s %s from the %s", Parity(r.Score), l.NameOf(r.Lead), serveOrReceive(r.Serving), Name(r.From))}
	said = append(said, capital(Formation(r.Formation))+": "+bothSides(l, r.EndsRight()))
	if !r.Wanted() {
		said[1] += T(", not as wanted")
	}
	said = append(said, fmt.Sprintf("%s %s, %s %s", l.NameOf(one), Distance(r.Feet[0]), l.NameOf(two), Distance(r.Feet[1])))
	if r.Margin != nil {
		said = append(said, marginWords(*r.Margin))
	}
	if r.Legal != nil && !*r.Legal {
		said = append(said, T("against the rules"))
	}
	said = append(said, T("%.1f rallies a game", r.Rallies))
	line := strings.Join(said, "; ") + "."
	if r.Refused != "" {
		line += T(" The policy's own formation cannot be played: %s.", r.Refused)
	}
	return line
}

var parityWords = [2]string{court.Right: Text("even"), court.Left: Text("odd")}

func serveOrReceive(serves bool) string {
	if serves {
		return T("serves")
	}
	return T("receives")
}

func bothSides(l lesson.Lesson, right game.Player) string {
	return T("%s right, %s left", l.NameOf(right), l.NameOf(right.Partner()))
}

// marginWords is the time to spare at the worst deadline.
func marginWords(t units.Seconds) string {
	if t < 0 {
		return T("%.2f s late", -float64(t))
	}
	return T("%.2f s to spare", float64(t))
}

// BetterStarter compares the two starting servers of a pair.
func BetterStarter(s plan.Starters) string {
	who, differs := s.Better()
	if !differs {
		return T("Who of the pair starts makes no difference to stacks and feet.")
	}
	better, other := s[who.Number()-1], s[who.Partner().Number()-1]
	return T("The better starter is %s: the score puts the partners on each other's sides in %.1f rallies a game, not %.1f; %.1f stacks, not %.1f; %s run in all, not %s. The chance to win is the same.",
		better.Pair.Lesson.NameOf(who), better.Swapped, other.Swapped, better.Stacks, other.Stacks,
		Distance(better.Feet[0]+better.Feet[1]), Distance(other.Feet[0]+other.Feet[1]))
}

// Worth says what a plan's formations buy at the kitchen line.
func Worth(w plan.Worth) string {
	return T("Set at the kitchen line against a usual drive: %.0f %% of the middle is met with a forehand, %.0f %% from the ordinary places; %.0f %% of the court is in reach, %.0f %% from there.",
		100*w.With.Forehand, 100*w.Without.Forehand, 100*w.With.Court, 100*w.Without.Court)
}

// PolicyWord says what a policy's name means here, since usage varies; empty
// where it does not.
func PolicyWord(l lesson.Lesson, name string, runner game.Player) string {
	switch name {
	case "half":
		return T("Half means here: on the serve only. Some mean the return only.")
	case "three-quarter":
		return T("Three-quarter means here: on the serve, and on the return when %s, the better runner, receives.", l.NameOf(runner))
	default:
		return ""
	}
}

// SignalMix says how often to switch and what it is worth.
func SignalMix(g signal.Game) string {
	m := g.Best()
	if m.Saddle {
		return T("%s: you win at least %.1f %% of the rallies. Mixing gains nothing.", capital(Name(m.Advice())), 100*m.Value)
	}
	return T("Switch %.1f %% of the time, in no order: you win %.1f %% of the rallies wherever they aim. Always switching makes sure of %.1f %%, always staying of %.1f %%.",
		100*m.Switch, 100*m.Value, 100*g.Sure(1), 100*g.Sure(0))
}

// SignalFlip says when the advice would change. The count is that of its chance.
func SignalFlip(f signal.Flip, c lesson.Count) string {
	way := T("falls below")
	if f.Up {
		way = T("rises above")
	}
	text := T("%s if the chance when you %s and they aim %s %s %.1f %%", capital(Name(f.Advice)), Name(f.Do), Name(f.Aim), way, 100*f.At)
	if c.Rallies == 0 {
		return text + "."
	}
	i := signal.IntervalOf(c)
	text += T(" (%d won of %d, so somewhere from %.0f to %.0f %%)", c.Won, c.Rallies, 100*i.Low, 100*i.High)
	if i.Contains(f.At) {
		text += T(": too few rallies to rule that out")
	}
	return text + "."
}
