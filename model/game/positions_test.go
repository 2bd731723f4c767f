package game

import (
	"testing"

	"homeside/model/court"
)

// USA Pickleball Official Rulebook 2026, 5.B.3: each team by its own score.
func TestPositions(t *testing.T) {
	starters := [2]Player{Near2, Far1}
	for _, c := range []struct {
		f       Format
		call    Call
		serving court.End
		want    [2]Pair
	}{
		{SideOut, Call{4, 7, 2}, court.Near, [2]Pair{{Near2, Near1, true}, {Far2, Far1, true}}},
		{SideOut, Call{4, 7, 2}, court.Far, [2]Pair{{Near1, Near2, true}, {Far1, Far2, true}}},
		{RallyParity, Call{4, 7, 0}, court.Near, [2]Pair{{Near2, Near1, true}, {Far2, Far1, true}}},
		{RallyFixed, Call{4, 7, 0}, court.Near, [2]Pair{{Near2, Near1, true}, {Far1, Far2, true}}},
		{RallyOwnServe, Call{4, 0, 0}, court.Near, [2]Pair{{Near2, Near1, false}, {Far1, Far2, true}}},
	} {
		if got := Positions(c.f, c.call, c.serving, starters); got != c.want {
			t.Errorf("Positions(%v, %v, %v) = %v, want %v", c.f, c.call, c.serving, got, c.want)
		}
	}
}

// What Positions says to know is so in every game that comes to the call, and
// what it says not to know differs between games.
func TestPositionsAgainstEveryGame(t *testing.T) {
	for _, f := range Formats {
		seen := map[Call]map[[2]Pair]bool{}
		for _, first := range court.Ends {
			for s := range reachable(t, Settings{Format: f, First: first}, 13) {
				if s.Serving() == court.Near {
					places := [2]Pair{{s.On(0, court.Right), s.On(0, court.Left), true}, {s.On(1, court.Right), s.On(1, court.Left), true}}
					if seen[s.Call()] == nil {
						seen[s.Call()] = map[[2]Pair]bool{}
					}
					seen[s.Call()][places] = true
				}
			}
		}
		for c, places := range seen {
			checkPositions(t, f, c, places)
		}
	}
}

func checkPositions(t *testing.T, f Format, c Call, places map[[2]Pair]bool) {
	t.Helper()
	got := Positions(f, c, court.Near, [2]Player{})
	for e, p := range got {
		differ := map[Pair]bool{}
		for real := range places {
			differ[real[e]] = true
			if p.Known && real[e] != p {
				t.Errorf("Positions(%v, %v)[%d] = %v, but a game has %v", f, c, e, p, real[e])
			}
		}
		if !p.Known && len(differ) != 2 {
			t.Errorf("Positions(%v, %v)[%d] is not known, but every game has %v", f, c, e, differ)
		}
	}
}
