package signal

import (
	"testing"

	"pgregory.net/rapid"

	"homeside/model/lesson"
)

// By hand for 0.3 0.7 / 0.6 0.4, best mix 1/3: more than half the time to switch
// needs 0.4-0.6 beyond 0.3-0.7, so switch/left above 0.5, switch/right below
// 0.5, stay/left above 0.8, stay/right below 0.2.
func TestFlipsByHand(t *testing.T) {
	g := Game{{0.3, 0.7}, {0.6, 0.4}}
	want := map[[2]uint8]Flip{
		{0, 0}: {Switch, Left, 0.5, true, MostlySwitch},
		{0, 1}: {Switch, Right, 0.5, false, MostlySwitch},
		{1, 0}: {Stay, Left, 0.8, true, MostlySwitch},
		{1, 1}: {Stay, Right, 0.2, false, MostlySwitch},
	}
	found := 0
	for _, f := range g.Flips() {
		w := want[[2]uint8{uint8(f.Do), uint8(f.Aim)}]
		if f.Up == w.Up {
			found++
			if far(f.At, w.At, 1e-12) || f.Advice != w.Advice {
				t.Errorf("%v.Flips(): %+v, want %+v", g, f, w)
			}
		} else if f.Advice != AlwaysStay {
			t.Errorf("%v.Flips(): %+v, want always stay the other way", g, f)
		}
	}
	if found != 4 {
		t.Errorf("%v.Flips() = %+v, want the four of %v among them", g, g.Flips(), want)
	}
}

// Just short of a flip the advice is as before, just beyond it is the new one;
// where no flip is listed, no chance changes it.
func TestFlipsAreFirst(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		g := drawGame(t)
		advice := g.Best().Advice()
		flips := g.Flips()
		for _, do := range Actions {
			for _, aim := range Aims {
				for _, up := range []bool{false, true} {
					edge, then := nearest(flips, do, aim, up)
					x := rapid.Float64Range(0.001, 0.999).Draw(t, "x")
					h := g
					h[do][aim] += x * (edge - h[do][aim])
					if got := h.Best().Advice(); h[do][aim] != edge && got != advice && clear(h[do][aim], g[do][aim], edge) {
						t.Fatalf("%v: %v/%v from %v to %v gives %v before the flip at %v (%v, %v)", g, do, aim, g[do][aim], h[do][aim], got, edge, advice, then)
					}
				}
			}
		}
		for _, f := range flips {
			h := g
			beyond := -1e-9
			if f.Up {
				beyond = 1e-9
			}
			h[f.Do][f.Aim] = f.At + beyond
			if h.Check() == nil && f.Advice == advice {
				t.Fatalf("%v: %+v is no flip of %v", g, f, advice)
			}
		}
	})
}

// clear says whether x is more than rounding away from both.
func clear(x, a, b float64) bool { return far(x, a, 1e-9) && far(x, b, 1e-9) }

func nearest(flips []Flip, do Action, aim Aim, up bool) (float64, string) {
	for _, f := range flips {
		if f.Do == do && f.Aim == aim && f.Up == up {
			return f.At, f.Advice.String()
		}
	}
	if up {
		return 1, "no flip"
	}
	return 0, "no flip"
}

func TestFlipRallies(t *testing.T) {
	up := Flip{At: 0.5, Up: true}
	if got := up.Rallies(lesson.Count{Rallies: 10, Won: 3}); got != 5 { // 8 of 15 is the first above a half
		t.Errorf("from 3 of 10 up past 0.5: %d rallies, want 5", got)
	}
	down := Flip{At: 0.2}
	if got := down.Rallies(lesson.Count{Rallies: 5, Won: 2}); got != 6 { // 2 of 11 is the first below a fifth
		t.Errorf("from 2 of 5 down past 0.2: %d rallies, want 6", got)
	}
	if got := (Flip{At: 0}).Rallies(lesson.Count{Rallies: 5, Won: 2}); got != 0 {
		t.Errorf("below 0: %d rallies, want 0, for no number", got)
	}
}

func TestAdvice(t *testing.T) {
	for _, c := range []struct {
		mix  Mix
		want Advice
	}{
		{Mix{Switch: 0, Saddle: true}, AlwaysStay}, {Mix{Switch: 0.2}, MostlyStay}, {Mix{Switch: 0.5}, MostlyStay},
		{Mix{Switch: 0.51}, MostlySwitch}, {Mix{Switch: 1, Saddle: true}, AlwaysSwitch},
	} {
		if got := c.mix.Advice(); got != c.want {
			t.Errorf("advice of %+v: %v, want %v", c.mix, got, c.want)
		}
	}
}
