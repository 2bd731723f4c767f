package game

import (
	"errors"
	"slices"
	"strings"
	"testing"

	"homeside/model/court"
)

// reachable walks through every game from its settings and collects the states
// in which a team can be serving, up to a score of `most` for either team.
func reachable(t *testing.T, set Settings, most int) map[State]bool {
	t.Helper()
	start, err := set.Start()
	if err != nil {
		t.Fatalf("Start(%+v): %v", set, err)
	}
	seen := map[State]bool{start: true}
	for todo := []State{start}; len(todo) > 0; todo = todo[1:] {
		for _, w := range court.Ends {
			n := todo[0].Next(w)
			if sc := n.Score(); !seen[n] && !n.Over() && max(sc[0], sc[1]) <= most {
				seen[n] = true
				todo = append(todo, n)
			}
		}
	}
	return seen
}

// Who must list exactly the states that a walk through every possible game finds
// for the same call: for every format, every call, either team serving first,
// games of the rulebook's lengths and the shortest ones, some way past deuce.
func TestWhoAgainstEveryGame(t *testing.T) {
	for _, f := range Formats {
		for _, to := range []int{1, 2, 3, 4, 5, 11, 15} {
			for _, first := range court.Ends {
				set := Settings{Format: f, To: to, First: first, Starters: [2]Player{Near2, Far1}}
				checkEveryCall(t, set, reachable(t, set, to+4))
			}
		}
	}
}

func checkEveryCall(t *testing.T, set Settings, seen map[State]bool) {
	t.Helper()
	byCall := map[court.End]map[Call][]State{court.Near: {}, court.Far: {}}
	for s := range seen {
		byCall[s.Serving()][s.Call()] = append(byCall[s.Serving()][s.Call()], s)
	}
	for _, serving := range court.Ends {
		for _, c := range calls(set.Format, set.To+4) {
			q := Query{Format: set.Format, To: set.To, Starters: set.Starters, Call: c, Serving: serving, Began: &set.First}
			want := byCall[serving][c]
			got, err := q.Who()
			if err != nil && len(want) > 0 || !sameStates(got, want) {
				t.Errorf("Who(%v to %d, %v, %v serves, %v began)\n got %q, %v\nwant %q", set.Format, set.To, c, serving, set.First, lines(got, true), err, lines(want, true))
			}
		}
	}
}

func calls(f Format, most int) []Call {
	var all []Call
	for s := range most + 1 {
		for r := range most + 1 {
			if f.Rally() {
				all = append(all, Call{s, r, 0})
				continue
			}
			all = append(all, Call{s, r, 1}, Call{s, r, 2})
		}
	}
	return all
}

func sameStates(a, b []State) bool {
	for _, s := range a {
		if !slices.Contains(b, s) {
			return false
		}
	}
	return len(a) == len(b)
}

// servers writes the states' servers and courts, "A1 R".
func servers(states []State) string {
	var out []string
	for _, l := range lines(states, false) {
		out = append(out, strings.Replace(l[:3], "R", " R", 1))
	}
	return strings.ReplaceAll(strings.Join(out, ", "), "L", " L")
}

// Servers consistent with a call, found apart from this program over all walks of
// a game (rulebook 2026, 5.B.2-5.B.6, 6.B.2). A is the near team.
func TestWhoVectors(t *testing.T) {
	for _, c := range []struct {
		call  string
		began *court.End
		want  string
	}{
		{"4-7-2", nil, "A1 R, A2 L"},
		{"4-7-1", nil, "A1 R, A2 L"},
		{"5-7-2", nil, "A1 L, A2 R"}, // at odd own scores the sides swap
		{"5-7-1", nil, "A1 L, A2 R"},
		{"0-0-2", new(court.Near), "A1 R, A2 L"}, // first turn, or a later one
		{"0-0-2", new(court.Far), "A2 L"},
		{"0-0-1", nil, "A1 R"},
		{"0-6-1", nil, "A1 R"},
		{"0-6-2", nil, "A2 L"},
	} {
		call, err := ParseCall(c.call)
		if err != nil {
			t.Fatal(err)
		}
		got, err := Query{Call: call, Began: c.began}.Who()
		if err != nil || servers(got) != c.want {
			t.Errorf("Who(%s, near serves, began %v) = %s, %v, want %s", c.call, c.began, servers(got), err, c.want)
		}
	}
}

// The receiver follows from the receiving team's own parity (5.B.4): at 4-7 the
// far team is odd, so far2 is on its right.
func TestWhoReceives(t *testing.T) {
	got, err := Query{Call: Call{4, 7, 2}}.Who()
	want := []string{"4-7-2 A1 R->B2", "4-7-2 A2 L->B1"}
	if err != nil || !slices.Equal(lines(got, true), want) {
		t.Errorf("Who(4-7-2, near serves) = %q, %v, want %q", lines(got, true), err, want)
	}
	got, err = Query{Call: Call{4, 7, 2}, Server: new(Near2)}.Who()
	if err != nil || !slices.Equal(lines(got, true), want[1:]) {
		t.Errorf("Who(4-7-2, near2 serves) = %q, %v, want %q", lines(got, true), err, want[1:])
	}
}

// A call passes Check exactly if some game comes to it.
func TestCheckAgainstEveryGame(t *testing.T) {
	for _, f := range Formats {
		for _, to := range []int{1, 2, 3, 11} {
			possible := map[Call]bool{}
			for _, first := range court.Ends {
				for s := range reachable(t, Settings{Format: f, To: to, First: first}, to+4) {
					possible[s.Call()] = true
				}
			}
			for _, c := range calls(f, to+4) {
				if err := c.Check(f, to); (err == nil) != possible[c] {
					t.Errorf("Check(%v, %v to %d) = %v, want it possible: %v", c, f, to, err, possible[c])
				}
			}
		}
	}
}

func TestCheckNeedsAGame(t *testing.T) {
	for want, err := range map[string]error{
		"call 0-0-2: format 8 is not known":                                                              Call{0, 0, 2}.Check(8, 11),
		"call 0-0-2: a game to 100: want 1 to 99 points":                                                 Call{0, 0, 2}.Check(SideOut, 100),
		"call 0-0-2: a game to -1: want 1 to 99 points":                                                  Call{0, 0, 2}.Check(SideOut, -1),
		"call 9-9-9 is impossible in side-out to 11: a call in side-out scoring ends with server 1 or 2": Call{9, 9, 9}.Check(SideOut, 0),
	} {
		if err == nil || err.Error() != want {
			t.Errorf("Check error %v, want %s", err, want)
		}
	}
}

func TestWhoRefuses(t *testing.T) {
	for _, c := range []struct {
		q          Query
		want       string
		impossible bool
	}{
		{Query{Call: Call{12, 3, 1}}, "call 12-3-1 is impossible in side-out to 11: 11-3 has ended the game", true},
		{Query{Call: Call{13, 11, 1}}, "call 13-11-1 is impossible in side-out to 11: 13-11 has ended the game", true},
		{Query{Call: Call{15, 11, 1}}, "call 15-11-1 is impossible in side-out to 11: 13-11 has ended the game", true},
		{Query{Call: Call{0, 0, 3}}, "call 0-0-3 is impossible in side-out to 11: a call in side-out scoring ends with server 1 or 2", true},
		{Query{Call: Call{4, 7, 0}}, "call 4-7 is impossible in side-out to 11: a call in side-out scoring ends with server 1 or 2", true},
		{Query{Call: Call{-1, 0, 2}}, "call -1-0-2 is impossible in side-out to 11: a score is never negative", true},
		{Query{Call: Call{1000, 1000, 2}}, "call 1000-1000-2 is impossible in side-out to 11: no score is higher than 999", true},
		{Query{Call: Call{4, 7, 2}, Format: RallyParity}, "call 4-7-2 is impossible in rally-parity to 11: a call in rally scoring has no server number", true},
		{Query{Call: Call{0, 3, 0}, Format: RallyFixed}, "call 0-3 is impossible in rally-fixed to 11: in rally scoring the serving team has won the last point", true},
		{Query{Call: Call{10, 11, 0}, Format: RallyOwnServe}, "call 10-11 is impossible in rally-own-serve to 11: in rally scoring the serving team has won the last point", true},
		{Query{Format: RallyParity, Began: new(court.Far)}, "call 0-0 is impossible: the far team began, so the near team does not serve", true},
		{Query{Call: Call{4, 7, 2}, Server: new(Far1)}, "server: far1 is not on the near team", false},
		{Query{Call: Call{4, 7, 2}, Server: new(Player(9))}, "server: there is no player 9", false},
		{Query{Call: Call{4, 7, 2}, To: -3}, "a game to -3: want 1 to 99 points", false},
		{Query{Call: Call{4, 7, 2}, Format: 7}, "format 7 is not known", false},
		{Query{Call: Call{4, 7, 2}, Serving: 2}, "serving team: want near or far", false},
		{Query{Call: Call{4, 7, 2}, Starters: [2]Player{Far1, Far2}}, "starting server: far1 is not on the near team", false},
	} {
		got, err := c.q.Who()
		if err == nil || err.Error() != c.want || errors.Is(err, ErrImpossible) != c.impossible || got != nil {
			t.Errorf("Who(%+v) = %v, %v\nwant error %s, impossible %v", c.q, got, err, c.want, c.impossible)
		}
		if _, err := c.q.Questions(); err == nil {
			t.Errorf("Questions(%+v) gave no error", c.q)
		}
	}
}
