package game

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"homeside/model/court"
)

// teamA serves first in the check vectors: A1 is near1, B1 is far1, the starting servers.
var vectorNames = map[Player]string{Near1: "A1", Near2: "A2", Far1: "B1", Far2: "B2"}

// vectorWinners turns "A A B" into "nnf".
func vectorWinners(s string) string {
	return strings.NewReplacer("A", "n", "B", "f", " ", "").Replace(s)
}

// line is a state as the vectors write it: "1-0-2 A1 L->B2", or without the call.
func line(s State, withCall bool) string {
	side := map[court.Side]string{court.Right: "R", court.Left: "L"}[s.From()]
	if !withCall {
		return vectorNames[s.Server()] + side + "->" + vectorNames[s.Receiver()]
	}
	return fmt.Sprintf("%v %s %s->%s", s.Call(), vectorNames[s.Server()], side, vectorNames[s.Receiver()])
}

func replay(t *testing.T, set Settings, winners string) Match {
	t.Helper()
	m, err := Replay(set, winners)
	if err != nil {
		t.Fatalf("Replay(%+v, %q): %v", set, winners, err)
	}
	return m
}

func lines(states []State, withCall bool) []string {
	var out []string
	for _, s := range states {
		out = append(out, line(s, withCall))
	}
	return out
}

// USA Pickleball Official Rulebook 2026, 4.A, 5.B.2-5.B.6 and 6.B.2: a game
// worked out by hand from the rules, apart from this program.
func TestSideOutWalk(t *testing.T) {
	m := replay(t, Settings{}, vectorWinners("A A B B A B B A A A B B B"))
	want := []string{
		"0-0-2 A1 R->B1", "1-0-2 A1 L->B2", "2-0-2 A1 R->B1", "0-2-1 B1 R->A1", "1-2-1 B1 L->A2",
		"1-2-2 B2 R->A1", "2-2-2 B2 L->A2", "3-2-2 B2 R->A1", "2-3-1 A1 R->B2", "3-3-1 A1 L->B1",
		"4-3-1 A1 R->B2", "4-3-2 A2 L->B1", "3-4-1 B2 R->A1", "4-4-1 B2 L->A2",
	}
	if got := lines(m.States(), true); !slices.Equal(got, want) {
		t.Errorf("states of the walk\n got %q\nwant %q", got, want)
	}
}

// The worked example of a pickleball rules primer (rulebook 2026, 5.B.5, 5.B.6):
// 4-3-1 lose -> 4-3-2 win -> 5-3-2 lose -> 3-5-1.
func TestLadder(t *testing.T) {
	states, err := Query{Call: Call{4, 3, 1}}.Who()
	if err != nil || len(states) == 0 {
		t.Fatalf("Who(4-3-1) = %v, %v", states, err)
	}
	for _, s := range states {
		var got []string
		for _, w := range []court.End{court.Far, court.Near, court.Far} {
			s = s.Next(w)
			got = append(got, s.Call().String())
		}
		if want := []string{"4-3-2", "5-3-2", "3-5-1"}; !slices.Equal(got, want) {
			t.Errorf("calls after 4-3-1 = %q, want %q", got, want)
		}
	}
}

// Rulebook 2026, 5.B.2 with 5.B.3: at a side out the starting server serves first
// from the right if the team's score is even, the partner if it is odd.
func TestSideOutServer(t *testing.T) {
	for score, want := range map[int]Player{0: Near1, 1: Near2, 2: Near1, 5: Near2, 6: Near1} {
		// near scores on its first turn, then far serves without a point
		s := replay(t, Settings{}, strings.Repeat("n", score)+"f"+"nn").State()
		if s.Call() != (Call{score, 0, 1}) || s.Server() != want || s.From() != court.Right {
			t.Errorf("after a side out at %d: %v %v from the %v, want %v from the right", score, s.Call(), s.Server(), s.From(), want)
		}
	}
}

// Rulebook 2026, 14.A for rally-parity (readers of 14.A.4 agree on it), and the two
// club variants: a rally game worked out by hand apart from this program.
func TestRallyWalks(t *testing.T) {
	want := map[Format]string{
		RallyParity:   "A1R->B1 | A1L->B2 | B2R->A2 | B2L->A1 | A1R->B1 | B2R->A1 | A2R->B2 | A2L->B1 | B1R->A1",
		RallyOwnServe: "A1R->B1 | A1L->B2 | B2L->A1 | B2R->A2 | A2R->B2 | B1L->A1 | A1L->B1 | A1R->B2 | B2R->A1",
		RallyFixed:    "A1R->B1 | A2L->B2 | B2L->A2 | B1R->A1 | A1R->B1 | B2L->A2 | A2L->B2 | A1R->B1 | B1R->A1",
	}
	for f, w := range want {
		m := replay(t, Settings{Format: f}, vectorWinners("A B B A B A A B"))
		if got := strings.Join(lines(m.States(), false), " | "); got != w {
			t.Errorf("%v walk\n got %s\nwant %s", f, got, w)
		}
	}
}

// Rulebook 2026, 14.A (2026): in rally scoring the receiving team can win the
// last point, which in side-out scoring it cannot (4.A).
func TestLastPointOnReceive(t *testing.T) {
	for _, f := range Formats {
		m := replay(t, Settings{Format: f}, strings.Repeat("f", 10)+"n"+"f")
		last := m.State()
		if w, over := last.Winner(); over != f.Rally() || over && w != court.Far {
			t.Errorf("%v, far wins on receive at 10: winner %v, over %v", f, w, over)
		}
	}
}

// Rulebook 2026, 4.A: 11, 15 or 21 points, two ahead.
func TestWinByTwo(t *testing.T) {
	for _, to := range []int{11, 15, 21} {
		set := Settings{Format: RallyParity, To: to}
		level := strings.Repeat("nf", to-1)
		for winners, want := range map[string]bool{level: false, level + "n": false, level + "nn": true, level + "nf": false, level + "nfff": true} {
			if got := replay(t, set, winners).State().Over(); got != want {
				t.Errorf("game to %d after %d rallies: over %v, want %v", to, len(winners), got, want)
			}
		}
	}
}

// Rulebook 2026, 21.B: the teams change ends when the first reaches 6, 8 or 11
// points in a game to 11, 15 or 21, once.
func TestEndChange(t *testing.T) {
	for to, at := range map[int]int{11: 6, 15: 8, 21: 11} {
		m := replay(t, Settings{To: to, Format: RallyFixed}, "")
		changes := map[[2]int]bool{}
		for i := 0; i < 2*to && !m.State().Over(); i++ {
			m = m.Won([2]court.End{court.Near, court.Far}[i%2])
			if m.EndChange() {
				changes[m.State().Score()] = true
			}
		}
		if want := [2]int{at, at - 1}; len(changes) != 1 || !changes[want] {
			t.Errorf("game to %d changes ends at %v, want once, at %v", to, changes, want)
		}
	}
}
