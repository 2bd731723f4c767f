package words_test

import (
	"strings"
	"testing"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/plan"
	"homeside/model/signal"
	"homeside/model/units"
	"homeside/words"
)

func twoPairs() (l lesson.Lesson) {
	for id, name := range map[game.Player]string{game.Near1: "Ivo", game.Near2: "Mara", game.Far1: "Oskar", game.Far2: "Tilde"} {
		l = l.WithPlayer(id, lesson.Player{Name: name})
	}
	return l
}

func TestPolicyWords(t *testing.T) {
	for _, c := range []struct {
		team   court.End
		policy plan.Policy
		want   string
	}{
		{court.Near, plan.Full(), "Full: on every serve and return"},
		{court.Near, plan.ThreeQuarter(game.Near2), "Three-quarter: on every serve, and on the returns of Mara"},
		{court.Far, plan.ThreeQuarter(game.Far1), "Three-quarter: on every serve, and on the returns of Oskar"},
		{court.Far, plan.HalfReturn(), "Half: on the return only"},
		{court.Far, plan.Policy{Serve: lesson.Switched}, "A policy of your own"},
	} {
		if got := words.Policy(twoPairs(), c.team, c.policy); got != c.want {
			t.Errorf("Policy(%v, %+v) = %q, want %q", c.team, c.policy, got, c.want)
		}
	}
}

func TestRowWords(t *testing.T) {
	late := plan.Row{Formation: lesson.Switched, Situation: plan.Situation{Serving: false, Score: court.Left, Lead: game.Near2, From: court.Right}, WantsRight: game.Near1, Minds: true}
	l := twoPairs()
	late.Legal, late.Margin = new(false), new(units.Seconds(-0.25))
	got := []string{words.PlanWhen(late), words.PlanLead(l, late), words.PlanRight(l, late.Right()), words.PlanWants(l, late), words.PlanMargin(late), words.PlanLegal(late)}
	want := "Receiving, odd; Mara receives, right; Ivo | Mara; Mara | Ivo; 0.25 s late; no"
	if strings.Join(got, "; ") != want {
		t.Errorf("the row is said as %q, want %q", got, want)
	}
	if got := words.PlanMargin(plan.Row{}) + words.PlanLegal(plan.Row{}); got != "not knownnot known" {
		t.Errorf("an unknown margin and legality are %q, want not known", got)
	}
	late.Refused = "no room beside the court: switch instead"
	if got, want := words.PlanRefused(plan.Plan{Pair: plan.Pair{Lesson: l}}, late), "Receiving, odd, Mara receives, right: switched. No room beside the court: switch instead."; got != want {
		t.Errorf("PlanRefused = %q, want %q", got, want)
	}
	if got := words.PlanRefused(plan.Plan{}, plan.Row{}); got != "" {
		t.Errorf("PlanRefused of a row that is played as planned = %q, want nothing", got)
	}
}

// Being late counts only where the partners change sides.
func TestPlanLate(t *testing.T) {
	row := func(f lesson.Formation, margin units.Seconds) plan.Row {
		return plan.Row{Formation: f, Effort: plan.Effort{Margin: &margin}}
	}
	rows := []plan.Row{row(lesson.Stacked, 0.2), row(lesson.Ordinary, -0.2), {Formation: lesson.Stacked}}
	if got := words.PlanLate(plan.Plan{Rows: rows}); got != "" {
		t.Errorf("PlanLate of nobody who changes sides late = %q, want nothing", got)
	}
	rows = append(rows, row(lesson.Stacked, -0.2), row(lesson.Switched, -0.1))
	if got, want := words.PlanLate(plan.Plan{Rows: rows}), "In 2 situations somebody is late"; !strings.HasPrefix(got, want) {
		t.Errorf("PlanLate = %q, want %q", got, want)
	}
}

func TestMatchWritten(t *testing.T) {
	for n, want := range map[int]string{0: "Every play of this plan is in the lesson already.", 1: "One play added to the lesson.", 8: "8 plays added to the lesson."} {
		if got := words.MatchWritten(n); got != want {
			t.Errorf("MatchWritten(%d) = %q, want %q", n, got, want)
		}
	}
}

// Ten signals on a line, numbered, no line wider than a page.
func TestSignalSheet(t *testing.T) {
	got := words.SignalSheet(signal.Game{{1, 0}, {0, 1}}, "oococcoooccc", 7)
	want := "    1  o o c o c   c o o o c\n   11  c c\n"
	if !strings.HasSuffix(got, want) || !strings.Contains(got, "Seed 7") {
		t.Errorf("SignalSheet =\n%s\nwant it to end with\n%s", got, want)
	}
	for line := range strings.Lines(got) {
		if len(line) > 80 {
			t.Errorf("the line %q has %d characters, want at most 80", line, len(line))
		}
	}
}

func TestChanceCounted(t *testing.T) {
	for c, want := range map[lesson.Count]string{{}: "none counted", {Rallies: 10, Won: 5}: "5 of 10: 24 to 76 %"} { // Wilson's interval of 5 in 10: 0.2366 to 0.7634
		if got := words.ChanceCounted(c); got != want {
			t.Errorf("ChanceCounted(%+v) = %q, want %q", c, got, want)
		}
	}
}
