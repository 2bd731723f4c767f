package game

import (
	"testing"

	"homeside/model/court"
)

func TestPlayers(t *testing.T) {
	for i, p := range Players {
		got, err := ParsePlayer(p.String())
		if err != nil || got != p {
			t.Errorf("ParsePlayer(%q) = %v, %v", p.String(), got, err)
		}
		if PlayerOf(p.Team(), p.Number()) != p || p.Team() != court.End(i/2) || p.Number() != i%2+1 {
			t.Errorf("%v: team %v, number %d", p, p.Team(), p.Number())
		}
		if q := p.Partner(); q == p || q.Team() != p.Team() || q.Partner() != p {
			t.Errorf("%v.Partner() = %v", p, q)
		}
	}
	if _, err := ParsePlayer("near3"); err == nil || err.Error() != `player "near3": want near1, near2, far1 or far2` {
		t.Errorf("ParsePlayer(near3) error %v", err)
	}
}
