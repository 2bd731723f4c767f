package game

import (
	"testing"

	"pgregory.net/rapid"

	_ "homeside/internal/fixedseed"
	"homeside/model/court"
)

func drawSettings(t *rapid.T) Settings {
	return Settings{
		Format:   rapid.SampledFrom(Formats[:]).Draw(t, "format"),
		To:       rapid.SampledFrom([]int{0, 3, 11, 15, 21}).Draw(t, "to"),
		First:    rapid.SampledFrom(court.Ends[:]).Draw(t, "first"),
		Starters: [2]Player{rapid.SampledFrom(Players[:2]).Draw(t, "near"), rapid.SampledFrom(Players[2:]).Draw(t, "far")},
	}
}

func drawWinners(t *rapid.T) string {
	return rapid.StringMatching("[nf]{0,90}").Draw(t, "winners")
}

// drawState is any state a game with these settings can come to.
func drawState(t *rapid.T, set Settings) State { return drawMatch(t, set).State() }

func drawMatch(t *rapid.T, set Settings) Match {
	winners := drawWinners(t)
	m, err := Replay(set, winners)
	if err != nil {
		t.Fatalf("Replay(%+v, %q): %v", set, winners, err)
	}
	return m
}

// In any state there is one server and one correct receiver: of the other team,
// diagonally across, and everybody has one place (USA Pickleball Official
// Rulebook 2026, 5.B.3, 5.B.4).
func TestOneReceiver(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawState(t, drawSettings(t))
		var receivers []Player
		for _, p := range Players {
			if p.Team() != s.Serving() && s.SideOf(p) == s.From() {
				receivers = append(receivers, p)
			}
			if on := s.On(p.Team(), s.SideOf(p)); on != p {
				t.Errorf("%v belongs on the %v, where %v belongs", p, s.SideOf(p), on)
			}
		}
		if len(receivers) != 1 || receivers[0] != s.Receiver() || s.Server().Team() != s.Serving() {
			t.Errorf("%v: %v serves, receivers %v, Receiver() %v, want one of the other team", s.Call(), s.Server(), receivers, s.Receiver())
		}
	})
}

// Replaying a history from any prefix agrees with playing it through, and undo
// and redo come back to the same states.
func TestReplayFromPrefix(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		set := drawSettings(t)
		m := drawMatch(t, set)
		k := rapid.IntRange(0, m.Rallies()).Draw(t, "prefix")
		states, winners := m.States(), m.Winners()
		part, err := Replay(set, winners[:k])
		if err != nil || part.State() != states[k] {
			t.Fatalf("Replay of %d rallies = %v, %v, want %v", k, part.State(), err, states[k])
		}
		rest := NewMatch(part.State())
		back := m
		for i := len(winners); i > k; i-- {
			back = back.Undo()
		}
		if back.State() != states[k] || back.Rallies() != k {
			t.Fatalf("undone to %d rallies: %v, want %v", back.Rallies(), back.State(), states[k])
		}
		for _, w := range winners[k:] {
			rest = rest.Won(map[rune]court.End{'n': court.Near, 'f': court.Far}[w])
			back = back.Redo()
		}
		if rest.State() != m.State() || back.State() != m.State() || back.Winners() != winners {
			t.Errorf("from rally %d on: played %v, redone %v, want %v", k, rest.State(), back.State(), m.State())
		}
	})
}

// Rulebook 2026, 5.B.3: the starting server is on the right exactly when the
// team's own score is even. It holds in rally-parity too (14.A).
func TestParity(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		set := drawSettings(t)
		set.Format = rapid.SampledFrom([]Format{SideOut, RallyParity}).Draw(t, "parity format")
		s := drawState(t, set)
		pairs := Positions(set.Format, s.Call(), s.Serving(), set.Starters)
		for _, e := range court.Ends {
			want := court.Right
			if s.Score()[e]%2 == 1 {
				want = court.Left
			}
			if got := s.SideOf(set.Starters[e]); got != want {
				t.Errorf("%v, %v: starting server on the %v, want %v", set.Format, s.Score(), got, want)
			}
			if pairs[e] != (Pair{s.On(e, court.Right), s.On(e, court.Left), true}) {
				t.Errorf("Positions(%v, %v)[%v] = %v, want the state's places", set.Format, s.Call(), e, pairs[e])
			}
		}
	})
}

// The same game with the ends exchanged has the same answers with the ends
// exchanged.
func TestMirror(t *testing.T) {
	mirror := func(p Player) Player { return p ^ 2 }
	rapid.Check(t, func(t *rapid.T) {
		set := drawSettings(t)
		other := set
		other.First = set.First.Other()
		other.Starters = [2]Player{mirror(set.Starters[1]), mirror(set.Starters[0])}
		m := drawMatch(t, set)
		flipped := playMirrored(t, other, m.Winners())
		for i, s := range m.States() {
			f := flipped[i]
			if f.Call() != s.Call() || f.Server() != mirror(s.Server()) || f.Receiver() != mirror(s.Receiver()) || f.From() != s.From() || f.Over() != s.Over() {
				t.Fatalf("mirrored %s, want the mirror of %s", line(f, true), line(s, true))
			}
		}
	})
}

func playMirrored(t *rapid.T, set Settings, winners string) []State {
	ends, err := ParseWinners(winners)
	if err != nil {
		t.Fatal(err)
	}
	start, err := set.Start()
	if err != nil {
		t.Fatal(err)
	}
	m := NewMatch(start)
	for _, w := range ends {
		m = m.Won(w.Other())
	}
	return m.States()
}

// Every state of a real game is among the answers to its own call, and is judged
// correct.
func TestWhoKnowsTheTruth(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		set := drawSettings(t)
		s := drawState(t, set)
		if s.Over() {
			return
		}
		q := Query{Format: set.Format, To: s.Points(), Starters: set.Starters, Call: s.Call(), Serving: s.Serving(), Began: &set.First}
		got, err := q.Who()
		found := false
		for _, g := range got {
			found = found || g == s || set.To == 0 && line(g, true) == line(s, true)
		}
		if v, verr := q.Served(s.Server(), s.From()); err != nil || !found || verr != nil || v != Correct {
			t.Errorf("Who(%+v) = %q, %v, judged %v, want %s among them, correct", q, lines(got, true), err, v, line(s, true))
		}
	})
}
