package words

import (
	"strings"
	"testing"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/plan"
	"homeside/model/signal"
	"homeside/model/units"
)

func planPair() plan.Pair {
	var l lesson.Lesson
	l.Teams[court.Near].Name = "blue"
	l.Teams[court.Near].Players[0].Name = "Ada"
	return plan.Pair{Lesson: l, Team: court.Near}
}

func checkWords(t *testing.T, got, want string) {
	t.Helper()
	if got != want {
		t.Errorf("got  %s\nwant %s", got, want)
	}
}

func TestPlanRow(t *testing.T) {
	late, no := units.Seconds(-0.25), false
	p := plan.Plan{Pair: planPair()}
	r := plan.Row{
		Situation:  plan.Situation{Serving: true, Score: court.Left, Lead: game.Near2, From: court.Right},
		WantsRight: game.Near1, Minds: true, Formation: lesson.Stacked, Rallies: 3.25,
		Effort: plan.Effort{Feet: [2]units.Feet{1.2, 12.6}},
	}
	checkWords(t, PlanRow(p, r), "odd, near2 serves from the right; Stacked: Ada right, near2 left; Ada 1 ft, near2 13 ft; 3.2 rallies a game.")
	r.Serving, r.Formation, r.Margin, r.Legal, r.Refused = false, lesson.Ordinary, &late, &no, "no room"
	checkWords(t, PlanRow(p, r), "odd, near2 receives from the right; Ordinary places: near2 right, Ada left, not as wanted; Ada 1 ft, near2 13 ft; 0.25 s late; against the rules; 3.2 rallies a game. The policy's own formation cannot be played: no room.")
}

func TestPlanTotals(t *testing.T) {
	p := plan.Plan{Pair: planPair(), Win: 0.4567, Rallies: 40.21, Stacks: 12.04, Feet: [2]units.Feet{401.4, 399.6}}
	checkWords(t, PlanTotals(p), "Blue wins 45.7 % of such games. Expected in a game: 40.2 rallies, 12.0 of them stacked; Ada runs 401 ft, near2 400 ft.")
}

func TestBetterStarter(t *testing.T) {
	a := plan.Plan{Pair: planPair(), Swapped: 12, Stacks: 10, Feet: [2]units.Feet{300, 200}}
	b := a
	checkWords(t, BetterStarter(plan.Starters{a, b}), "Who of the pair starts makes no difference to stacks and feet.")
	b.Swapped, b.Stacks = 15, 13
	checkWords(t, BetterStarter(plan.Starters{b, a}), "The better starter is near2: the score puts the partners on each other's sides in 12.0 rallies a game, not 15.0; 10.0 stacks, not 13.0; 500 ft run in all, not 500 ft. The chance to win is the same.")
}

// Half and three-quarter are used in more than one sense, so they are explained.
func TestPolicyWord(t *testing.T) {
	for _, name := range plan.PolicyNames {
		got := PolicyWord(lesson.Lesson{}, name, game.Near2)
		if explains := name == "half" || name == "three-quarter"; explains != (got != "") || name == "three-quarter" && !strings.Contains(got, "near2") {
			t.Errorf("PolicyWord of %s: %q", name, got)
		}
	}
}

func TestSignalWords(t *testing.T) {
	checkWords(t, SignalMix(signal.Game{{0.1, 0.2}, {0.4, 0.6}}), "Always stay: you win at least 40.0 % of the rallies. Mixing gains nothing.")
	f := signal.Flip{Do: signal.Stay, Aim: signal.Right, At: 0.2, Advice: signal.MostlySwitch}
	checkWords(t, SignalFlip(f, lesson.Count{}), "Mostly switch if the chance when you stay and they aim right falls below 20.0 %.")
	checkWords(t, SignalFlip(f, lesson.Count{Rallies: 20, Won: 0}), "Mostly switch if the chance when you stay and they aim right falls below 20.0 % (0 won of 20, so somewhere from 0 to 16 %).")
	f.At, f.Up = 0.1, true
	checkWords(t, SignalFlip(f, lesson.Count{Rallies: 20, Won: 0}), "Mostly switch if the chance when you stay and they aim right rises above 10.0 % (0 won of 20, so somewhere from 0 to 16 %): too few rallies to rule that out.")
}

func TestWorth(t *testing.T) {
	w := plan.Worth{With: plan.Cover{Court: 0.75, Forehand: 0.62}, Without: plan.Cover{Court: 0.74, Forehand: 0.4}}
	checkWords(t, Worth(w), "Set at the kitchen line against a usual drive: 62 % of the middle is met with a forehand, 40 % from the ordinary places; 75 % of the court is in reach, 74 % from there.")
}
