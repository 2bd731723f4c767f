package game

import (
	"testing"

	"homeside/model/court"
)

// USA Pickleball Official Rulebook 2026, 5.B.2 and 5.B.5: after a side out at an
// even score the starting server serves from the right, wins, serves from the
// left and loses; when the same player serves again from the left the place is
// correct and the server wrong.
func TestRightPlaceWrongServer(t *testing.T) {
	m := replay(t, Settings{}, "f"+"nn"+"nf")
	s := m.State()
	if s.Call() != (Call{1, 0, 2}) || s.Server() != Near2 {
		t.Fatalf("state %v %v, want 1-0-2 near2", s.Call(), s.Server())
	}
	if got := s.Served(Near1, court.Left); got != RightPlaceWrongServer {
		t.Errorf("Served(near1, left) = %v, want %v", got, RightPlaceWrongServer)
	}
}

func TestServed(t *testing.T) {
	s := replay(t, Settings{}, "n").State() // 1-0-2, near1 from the left
	for _, c := range []struct {
		by   Player
		from court.Side
		want Verdict
	}{
		{Near1, court.Left, Correct},
		{Near1, court.Right, WrongCourt},            // rulebook 2026, 5.B.5
		{Near2, court.Right, RightPlaceWrongServer}, // 5.B.3
		{Near2, court.Left, WrongServer},
		{Far1, court.Right, WrongTeam}, // 5.B.6
	} {
		if got := s.Served(c.by, c.from); got != c.want {
			t.Errorf("Served(%v, %v) at %v = %v, want %v", c.by, c.from, s.Call(), got, c.want)
		}
	}
}

// Where the call leaves both partners possible, either is correct from where
// parity places that player; where it does not, the other one is found out.
func TestServedByCall(t *testing.T) {
	for _, c := range []struct {
		call Call
		by   Player
		from court.Side
		want Verdict
	}{
		{Call{4, 7, 2}, Near1, court.Right, Correct},
		{Call{4, 7, 2}, Near2, court.Left, Correct},
		{Call{4, 7, 2}, Near2, court.Right, WrongCourt},
		{Call{0, 3, 2}, Near1, court.Right, RightPlaceWrongServer},
		{Call{0, 3, 1}, Near2, court.Left, RightPlaceWrongServer},
		{Call{0, 3, 1}, Near2, court.Right, WrongServer},
	} {
		got, err := Query{Call: c.call, Server: &c.by}.Served(c.by, c.from)
		if err != nil || got != c.want {
			t.Errorf("Served(%v, %v, %v) = %v, %v, want %v", c.call, c.by, c.from, got, err, c.want)
		}
	}
	if _, err := (Query{Call: Call{0, 0, 3}}).Served(Near1, court.Right); err == nil {
		t.Error("Served at 0-0-3 gave no error")
	}
}

func TestVerdictNames(t *testing.T) {
	seen := map[string]bool{}
	for v := Correct; v <= WrongTeam; v++ {
		seen[v.String()] = true
	}
	if len(seen) != int(WrongTeam)+1 || seen[""] {
		t.Errorf("verdict names %v, want %d different ones", seen, WrongTeam+1)
	}
}
