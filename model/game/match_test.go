package game

import (
	"strings"
	"testing"

	"homeside/model/court"
)

func TestMatchIsAValue(t *testing.T) {
	m := replay(t, Settings{}, "nf")
	a, b := m.Won(court.Near), m.Won(court.Far)
	if a.Winners() != "nfn" || b.Winners() != "nff" || m.Winners() != "nf" {
		t.Errorf("winners %q, %q from %q, want nfn, nff from nf", a.Winners(), b.Winners(), m.Winners())
	}
	if a.States()[3] == b.States()[3] || a.States()[2] != b.States()[2] {
		t.Error("two matches from one history share what differs, or differ in what they share")
	}
}

func TestMatchForgetsTheUndone(t *testing.T) {
	m := replay(t, Settings{}, "nnff").Undo().Undo()
	if !m.CanUndo() || !m.CanRedo() || m.Winners() != "nn" {
		t.Fatalf("after two undos: undo %v, redo %v, winners %q", m.CanUndo(), m.CanRedo(), m.Winners())
	}
	again := m.Won(court.Far)
	if again.CanRedo() || again.Redo().Winners() != "nnf" {
		t.Errorf("a new rally kept the undone ones: %q", again.Redo().Winners())
	}
	if m.Redo().Redo().Winners() != "nnff" {
		t.Errorf("redo after another branch = %q, want nnff", m.Redo().Redo().Winners())
	}
	if start := m.Undo().Undo().Undo(); start.Rallies() != 0 || start.CanUndo() || start.State().Call() != (Call{0, 0, 2}) {
		t.Errorf("undo at the start: %d rallies, %v", start.Rallies(), start.State().Call())
	}
}

func TestMatchEnds(t *testing.T) {
	m := replay(t, Settings{}, strings.Repeat("n", 20))
	w, over := m.State().Winner()
	if m.Rallies() != 11 || !over || w != court.Near || m.State().Score() != [2]int{11, 0} {
		t.Errorf("after 20 points: %d rallies, %v won %v at %v, want 11, near at [11 0]", m.Rallies(), w, over, m.State().Score())
	}
	if after := m.Won(court.Far); after.Rallies() != 11 || after.State() != m.State() || m.State().Next(court.Far) != m.State() {
		t.Errorf("a rally after the end counted: %d, %v", after.Rallies(), after.State())
	}
}

func TestZeroMatch(t *testing.T) {
	var m Match
	if got := m.Undo().Redo().Won(court.Far).Won(court.Far).State().Call(); got != (Call{1, 0, 1}) {
		t.Errorf("zero match after two rallies won by far: %v, want 1-0-1", got)
	}
	if n := len(m.States()); n != 1 || m.EndChange() || m.Winners() != "" {
		t.Errorf("zero match: %d states, end change %v, winners %q", n, m.EndChange(), m.Winners())
	}
}

// A history that no game has is found out rally by rally.
func TestWinnerTo(t *testing.T) {
	s := replay(t, Settings{}, "nnf").State() // 0-2-1, far serves
	for _, c := range []struct {
		call    Call
		serving court.End
		winner  court.End
		ok      bool
	}{
		{Call{1, 2, 1}, court.Far, court.Far, true},
		{Call{0, 2, 2}, court.Far, court.Near, true},
		{Call{2, 0, 1}, court.Near, court.Near, false}, // the second server comes first (rulebook 2026, 5.B)
		{Call{2, 2, 1}, court.Far, court.Near, false},
	} {
		if w, ok := s.WinnerTo(c.call, c.serving); w != c.winner || ok != c.ok {
			t.Errorf("WinnerTo(%v, %v) from 0-2-1 = %v, %v, want %v, %v", c.call, c.serving, w, ok, c.winner, c.ok)
		}
	}
	won := replay(t, Settings{}, strings.Repeat("n", 11)).State()
	if _, ok := won.WinnerTo(won.Call(), court.Near); ok {
		t.Error("a call follows on a game that is over")
	}
}

func TestReplayRefuses(t *testing.T) {
	for _, c := range []struct {
		set     Settings
		winners string
		want    string
	}{
		{Settings{}, "nnxf", "winners: rally 3 is 'x', want n or f"},
		{Settings{}, "n\nf", `winners: rally 2 is '\n', want n or f`},
		{Settings{To: -1}, "", "start a game: a game to -1: want 1 to 99 points"},
		{Settings{First: 5}, "", "start a game: first team 5: want near or far"},
		{Settings{Format: 9}, "", "start a game: format 9 is not known"},
		{Settings{Starters: [2]Player{0, Near2}}, "", "start a game: starting server: near2 is not on the far team"},
	} {
		if _, err := Replay(c.set, c.winners); err == nil || err.Error() != c.want {
			t.Errorf("Replay(%+v, %q) error %v, want %s", c.set, c.winners, err, c.want)
		}
	}
}

func FuzzReplay(f *testing.F) {
	f.Add("nnffn", uint8(0), 11)
	f.Add("nfnfnfnfx", uint8(1), 15)
	f.Add("", uint8(9), -1)
	f.Add(strings.Repeat("nf", 40), uint8(3), 1)
	f.Fuzz(func(t *testing.T, winners string, format uint8, to int) {
		m, err := Replay(Settings{Format: Format(format), To: to}, winners)
		if err != nil {
			if strings.ContainsAny(err.Error(), "\n\r") {
				t.Errorf("Replay(%q) error of several lines: %q", winners, err)
			}
			return
		}
		if !strings.HasPrefix(winners, m.Winners()) || len(m.Winners()) < len(winners) && !m.State().Over() {
			t.Errorf("Replay(%q) played %q, over %v", winners, m.Winners(), m.State().Over())
		}
		for i, s := range m.States() {
			if err := s.Call().Check(s.Format(), to); err != nil && i < m.Rallies() {
				t.Errorf("Replay(%q) came to a call that Check refuses: %v", winners, err)
			}
		}
	})
}
