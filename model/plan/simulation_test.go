package plan

import (
	"math"
	"math/rand/v2"
	"testing"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
)

// sums are what simulated games add up, with their squares for the standard error.
type sums struct {
	n         float64
	sum, squa [5]float64
}

func (s *sums) add(v [5]float64) {
	s.n++
	for i, x := range v {
		s.sum[i] += x
		s.squa[i] += x * x
	}
}

// mean and its standard error.
func (s *sums) mean(i int) (mean, se float64) {
	mean = s.sum[i] / s.n
	return mean, math.Sqrt((s.squa[i]/s.n - mean*mean) / s.n)
}

// playOut plays one game rally by rally and counts for the near pair, of which
// near1 wants the left: whether it wins, the rallies, the stacks by the rule of
// the policy written out here, and the made-up feet.
func playOut(s game.State, c Chances, stacks func(serving bool, lead game.Player) bool, r *rand.Rand) (v [5]float64) {
	for !s.Over() {
		serving, lead := s.Serving() == court.Near, s.Server()
		if !serving {
			lead = s.Receiver()
		}
		l, extra := lead.Number()-1, 0.0
		if !serving {
			extra = 1
		}
		if s.SideOf(game.Near1) == court.Right && stacks(serving, lead) {
			v[2]++
			v[3+l], v[4-l] = v[3+l]+13+extra, v[4-l]+5+extra
		} else {
			v[3+l], v[4-l] = v[3+l]+7+extra, v[4-l]+2+extra
		}
		v[1]++
		w := s.Serving()
		if r.Float64() >= c[w] {
			w = w.Other()
		}
		s = s.Next(w)
	}
	if w, _ := s.Winner(); w == court.Near {
		v[0] = 1
	}
	return v
}

// The expectations are those of 100,000 games played out with a fixed seed,
// within three standard errors.
func TestPlanAgainstSimulation(t *testing.T) {
	const games = 100_000
	for i, c := range []struct {
		set    game.Settings
		ch     Chances
		policy Policy
		stacks func(serving bool, lead game.Player) bool
	}{
		{game.Settings{}, Chances{0.44, 0.47}, Full(), func(bool, game.Player) bool { return true }},
		{game.Settings{Starters: [2]game.Player{game.Near2, game.Far1}, First: court.Far}, Chances{0.5, 0.4}, ThreeQuarter(game.Near2),
			func(serving bool, lead game.Player) bool { return serving || lead == game.Near2 }},
		{game.Settings{Format: game.RallyParity, To: 15}, Chances{0.42, 0.45}, Half(), func(serving bool, _ game.Player) bool { return serving }},
		{game.Settings{Format: game.RallyOwnServe, First: court.Far}, Chances{0.48, 0.41}, HalfReturn(), func(serving bool, _ game.Player) bool { return !serving }},
	} {
		plan := mustPlan(t, c.set, pairOf(court.Near, lesson.WantLeft, c.policy), c.ch)
		r, start := rand.New(rand.NewPCG(2303, uint64(i))), mustStart(t, c.set)
		var s sums
		for range games {
			s.add(playOut(start, c.ch, c.stacks, r))
		}
		want := [5]float64{plan.Win, plan.Rallies, plan.Stacks, float64(plan.Feet[0]), float64(plan.Feet[1])}
		for k, name := range [5]string{"win", "rallies", "stacks", "feet of near1", "feet of near2"} {
			if mean, se := s.mean(k); !(math.Abs(mean-want[k]) <= 3*se) {
				t.Errorf("game %d, %s: plan %v, %d games %v with a standard error of %v", i, name, want[k], games, mean, se)
			}
		}
	}
}
