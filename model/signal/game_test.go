package signal

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"
)

// Worked examples, quoted from memory and each recomputed by hand:
// T. S. Ferguson, Game Theory, part II, section 2: odd or even (7/12, value
// 1/12), and the game 0 -10 / 1 2 whose formula gives 12/11 because it has
// a saddle point; J. von Neumann's matching pennies; penalty kicks, I.
// Palacios-Huerta, Professionals Play Minimax, Rev. Econ. Stud. 70 (2003): the
// kicker left 38.54 % of the time, the goalkeeper left 41.99 %.
func TestBestWorkedExamples(t *testing.T) {
	for _, c := range []struct {
		name string
		g    Game
		want Mix
		off  float64
	}{
		{"odd or even", Game{{-2, 3}, {3, -4}}, Mix{7. / 12, 7. / 12, 1. / 12, false}, 1e-15},
		{"Ferguson's saddle", Game{{0, -10}, {1, 2}}, Mix{0, 1, 1, true}, 0},
		{"matching pennies", Game{{1, -1}, {-1, 1}}, Mix{0.5, 0.5, 0, false}, 1e-15},
		{"penalty kicks", Game{{0.5830, 0.9497}, {0.9291, 0.6992}}, Mix{0.3854, 0.4199, 0.7957, false}, 5e-5},
		{"all alike", Game{{0.5, 0.5}, {0.5, 0.5}}, Mix{0, 1, 0.5, true}, 0},
		{"switching dominates", Game{{0.6, 0.5}, {0.4, 0.45}}, Mix{1, 0, 0.5, true}, 0},
		{"saddle right above", Game{{0.2, 0.3}, {0.1, 0.9}}, Mix{1, 1, 0.2, true}, 0},
	} {
		got := c.g.Best()
		if got.Saddle != c.want.Saddle || far(got.Switch, c.want.Switch, c.off) || far(got.Left, c.want.Left, c.off) || far(got.Value, c.want.Value, c.off) {
			t.Errorf("%s: %v.Best() = %+v, want %+v", c.name, c.g, got, c.want)
		}
	}
}

func far(got, want, off float64) bool { return !(math.Abs(got-want) <= off) }

func drawGame(t *rapid.T) Game {
	var g Game
	for i := range 4 {
		if rapid.Bool().Draw(t, "coarse") { // so that ties come up
			g[i/2][i%2] = float64(rapid.IntRange(0, 4).Draw(t, "chance")) / 4
		} else {
			g[i/2][i%2] = rapid.Float64Range(0, 1).Draw(t, "chance")
		}
	}
	return g
}

// The minimax theorem (von Neumann 1928): neither side can do better than the
// value against the other's best mix.
func TestBestIsMinimax(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		g := drawGame(t)
		m := g.Best()
		for _, aim := range Aims {
			if got := g.against(m.Switch, aim); got < m.Value-1e-12 {
				t.Errorf("%v.Best() = %+v wins only %v while they aim %v", g, m, got, aim)
			}
		}
		for _, do := range Actions {
			if got := m.Left*g[do][Left] + (1-m.Left)*g[do][Right]; got > m.Value+1e-12 {
				t.Errorf("%v.Best() = %+v lets %v win %v", g, m, do, got)
			}
		}
		for _, v := range []float64{m.Switch, m.Left, m.Value} {
			if !(v >= 0 && v <= 1) {
				t.Errorf("%v.Best() = %+v, want everything in 0 to 1", g, m)
			}
		}
		if m.Saddle && m.Switch != 0 && m.Switch != 1 {
			t.Errorf("%v.Best() = %+v mixes at a saddle point", g, m)
		}
	})
}

// Never switching and always switching are sure of their worse chance only; the
// mix is never worse.
func TestSure(t *testing.T) {
	g := Game{{0.3, 0.7}, {0.6, 0.4}}
	if got := g.Sure(1); got != 0.3 {
		t.Errorf("always switching: %v, want 0.3", got)
	}
	if got := g.Sure(0); got != 0.4 {
		t.Errorf("always staying: %v, want 0.4", got)
	}
	if m := g.Best(); far(g.Sure(m.Switch), 0.5, 1e-15) || far(m.Switch, 1./3, 1e-15) { // by hand: 0.3p+0.6(1-p) = 0.7p+0.4(1-p)
		t.Errorf("the mix %+v is sure of %v, want 1/3 and 0.5", m, g.Sure(m.Switch))
	}
}

func TestGameCheck(t *testing.T) {
	if err := (Game{{0, 1}, {0.5, 0.25}}).Check(); err != nil {
		t.Errorf("Check of chances: %v", err)
	}
	for _, v := range []float64{-0.01, 1.01, math.NaN(), math.Inf(1), math.Inf(-1)} {
		for i := range 4 {
			var g Game
			g[i/2][i%2] = v
			if err := g.Check(); !errors.Is(err, ErrChance) {
				t.Errorf("%v.Check() = %v, want ErrChance", g, err)
			}
		}
	}
}
