package plan

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"

	"homeside/model/court"
	"homeside/model/game"
)

func mustStart(t testing.TB, set game.Settings) game.State {
	t.Helper()
	s, err := set.Start()
	if err != nil {
		t.Fatalf("%+v.Start(): %v", set, err)
	}
	return s
}

func mustOutlook(t testing.TB, set game.Settings, c Chances) Outlook {
	t.Helper()
	o, err := OutlookOf(mustStart(t, set), c)
	if err != nil {
		t.Fatalf("OutlookOf(%+v, %v): %v", set, c, err)
	}
	return o
}

// The number of states is the 4n^2+10 of DeFord & Ethier 2023, arXiv:2303.02942,
// two of them the results.
func TestChainSize(t *testing.T) {
	for n, want := range map[int]int{2: 26, 11: 494, 15: 910, 21: 1774} {
		ch := newChain(mustStart(t, game.Settings{To: n}), scoreKey, Chances{0.5, 0.5})
		if got := len(ch.nodes) + 2; got != want || want != 4*n*n+10 {
			t.Errorf("game to %d has %d states, want %d", n, got, want)
		}
	}
}

// The first-serving team is very slightly worse off at 11 and very slightly
// better off at 15: the signs are the paper's, the figures were computed once
// apart from this program, by exact algebra.
func TestOutlookWin(t *testing.T) {
	for _, c := range []struct {
		n            int
		edge, within float64 // of P(first-serving team wins) - 0.5
	}{
		{11, 0.49999999752211 - 0.5, 1e-14},
		{15, 5.0297e-12, 1e-15},
	} {
		for _, first := range court.Ends {
			got := mustOutlook(t, game.Settings{To: c.n, First: first}, Chances{0.5, 0.5}).Win[first] - 0.5
			if math.Abs(got-c.edge) > c.within {
				t.Errorf("game to %d, %v first: win - 0.5 = %.6g, want %.6g", c.n, first, got, c.edge)
			}
		}
	}
}

// The expected number of rallies, computed once apart from this program, by
// exact algebra. It is the same with the persons told apart.
func TestOutlookRallies(t *testing.T) {
	for _, c := range []struct {
		n       int
		p, want float64
	}{
		{11, 0.5, 34.9606697127},
		{15, 0.5, 49.1038268204},
		{11, 0.44, 40.2253669866},
	} {
		set := game.Settings{To: c.n}
		if got := mustOutlook(t, set, Chances{c.p, c.p}).Rallies; math.Abs(got-c.want) > 1e-9 {
			t.Errorf("game to %d, p %v: %.10f rallies, want %.10f", c.n, c.p, got, c.want)
		}
		s, err := newChain(mustStart(t, set), personKey, Chances{c.p, c.p}).solve()
		if err != nil || math.Abs(s.total()-c.want) > 1e-9 {
			t.Errorf("game to %d, p %v, with persons: %.10f rallies, %v, want %.10f", c.n, c.p, s.total(), err, c.want)
		}
	}
}

// Rally scoring where the near team wins every rally with the same chance w is a
// race to n by two: the terms of the negative binomial, and from (n-1)-all
// w^2 / (w^2 + (1-w)^2) in 2 / (w^2 + (1-w)^2) rallies (elementary probability).
func TestOutlookRace(t *testing.T) {
	for _, f := range game.Formats[1:] {
		for _, n := range []int{1, 2, 11, 21} {
			for _, w := range []float64{0.5, 0.3, 0.61} {
				win, rallies := race(n, w)
				got := mustOutlook(t, game.Settings{Format: f, To: n}, Chances{w, 1 - w})
				if math.Abs(got.Win[court.Near]-win) > 1e-12 || math.Abs(got.Rallies-rallies) > 1e-10 {
					t.Errorf("%v to %d, w %v: %v, want win %v, rallies %v", f, n, w, got, win, rallies)
				}
			}
		}
	}
}

// race is the closed form: the loser has k points when it ends before deuce.
func race(n int, w float64) (win, rallies float64) {
	l, ways := 1-w, 1.0 // ways = (n-1+k choose k)
	for k := range n - 1 {
		near, far := ways*math.Pow(w, float64(n))*math.Pow(l, float64(k)), ways*math.Pow(l, float64(n))*math.Pow(w, float64(k))
		win += near
		rallies += float64(n+k) * (near + far)
		ways *= float64(n+k) / float64(k+1)
	}
	deuce, two := ways*math.Pow(w*l, float64(n-1)), w*w+l*l
	return win + deuce*w*w/two, rallies + deuce*(float64(2*n-2)+2/two)
}

// Somebody wins, the chances at a state are those of its moves, and each rally
// played at a state was entered from another or begins the game.
func TestChainBalances(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		set := game.Settings{
			Format: rapid.SampledFrom(game.Formats[:]).Draw(t, "format"),
			To:     rapid.IntRange(1, 5).Draw(t, "to"),
			First:  rapid.SampledFrom(court.Ends[:]).Draw(t, "first"),
		}
		c := Chances{rapid.Float64Range(0.01, 1).Draw(t, "near"), rapid.Float64Range(0.01, 1).Draw(t, "far")}
		start, err := set.Start()
		if err != nil {
			t.Fatal(err)
		}
		ch := newChain(start, personKey, c)
		s, err := ch.solve()
		if err != nil {
			t.Fatalf("solve with %v: %v", c, err)
		}
		entered := make([]float64, len(ch.nodes))
		entered[0] = 1
		for i, n := range ch.nodes {
			var win [2]float64
			for _, m := range n.moves {
				if m.to >= 0 {
					entered[m.to] += s.rallies[i] * m.chance
				}
				for _, e := range court.Ends {
					if m.to == resultOf(e) {
						win[e] += m.chance
					} else if m.to >= 0 {
						win[e] += m.chance * s.win[e][m.to]
					}
				}
			}
			if off(win[0], s.win[0][i]) || off(win[1], s.win[1][i]) || off(s.win[0][i]+s.win[1][i], 1) {
				t.Fatalf("%v: win %v and %v, its moves give %v", n.state.Call(), s.win[0][i], s.win[1][i], win)
			}
		}
		for i := range entered {
			if off(entered[i], s.rallies[i]) {
				t.Fatalf("%v: %v rallies, entered %v times", ch.nodes[i].state.Call(), s.rallies[i], entered[i])
			}
		}
	})
}

func off(got, want float64) bool { return !(math.Abs(got-want) <= 1e-9*(1+math.Abs(want))) }

// Certain servers: the first team serves 11 points in a row, or nobody who
// serves ever scores.
func TestOutlookCertain(t *testing.T) {
	if got, want := mustOutlook(t, game.Settings{}, Chances{1, 0.3}), (Outlook{[2]float64{1, 0}, 11}); got != want {
		t.Errorf("near never loses its serve: %v, want %v", got, want)
	}
	if got, want := mustOutlook(t, game.Settings{Format: game.RallyParity}, Chances{0, 1}), (Outlook{[2]float64{0, 1}, 11}); got != want {
		t.Errorf("near never wins in rally scoring: %v, want %v", got, want)
	}
	for _, f := range game.Formats {
		if _, err := OutlookOf(mustStart(t, game.Settings{Format: f}), Chances{}); !errors.Is(err, ErrEndless) {
			t.Errorf("%v, no server ever wins: %v, want ErrEndless", f, err)
		}
	}
	if _, err := OutlookOf(mustStart(t, game.Settings{}), Chances{1e-320, 1e-320}); !errors.Is(err, ErrEndless) {
		t.Errorf("servers that hardly ever win: %v, want ErrEndless", err)
	}
	short, _ := game.Replay(game.Settings{Format: game.RallyParity}, "nnnnnnnnnn")
	if got, err := OutlookOf(short.State(), Chances{0, 0}); err != nil || off(got.Rallies, 2) || off(got.Win[0], 1) {
		t.Errorf("10-0 where no server ever wins: %v, %v, want two more rallies and a win", got, err)
	}
	over, _ := game.Replay(game.Settings{}, "nnnnnnnnnnn")
	if got, err := OutlookOf(over.State(), Chances{0.5, 0.5}); err != nil || got.Win != [2]float64{1, 0} || got.Rallies != 0 {
		t.Errorf("a game that is over: %v, %v, want a win without rallies", got, err)
	}
}

// Small chances keep their digits: with both at p -> 0 a point takes about 1/p
// rallies, so the product of p and the rallies tends to a limit.
func TestOutlookSmallChances(t *testing.T) {
	near := mustOutlook(t, game.Settings{}, Chances{1e-9, 1e-9}).Rallies * 1e-9
	far := mustOutlook(t, game.Settings{}, Chances{1e-12, 1e-12}).Rallies * 1e-12
	if math.Abs(near/far-1) > 1e-7 {
		t.Errorf("rallies times p: %v at 1e-9, %v at 1e-12, want as good as equal", near, far)
	}
}

func TestChancesCheck(t *testing.T) {
	for _, c := range []Chances{{-0.1, 0.5}, {0.5, 1.1}, {math.NaN(), 0.5}, {0.5, math.Inf(1)}} {
		if _, err := OutlookOf(mustStart(t, game.Settings{}), c); !errors.Is(err, ErrChance) {
			t.Errorf("OutlookOf with %v: %v, want ErrChance", c, err)
		}
	}
}
