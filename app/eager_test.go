package app

import (
	"testing"
	"time"
)

// A hand is looked for from a move on, by one row of looks however often it moves, until
// it has rested; then the next move begins anew. Where nothing can look, nothing waits.
func TestEagerLooksWhileAHandMoves(t *testing.T) {
	var waiting []func()
	looks := 0
	g := eager{look: func() { looks++ }, later: func(f func()) { waiting = append(waiting, f) }}
	step := func() {
		all := waiting
		waiting = nil
		for _, f := range all {
			f()
		}
	}
	for range 3 {
		g.moved()
	}
	step()
	step()
	if looks != 2 || len(waiting) != 1 {
		t.Errorf("%d looks in two steps, %d to come", looks, len(waiting))
	}
	g.until = time.Now().Add(-time.Millisecond)
	step()
	if looks != 2 || len(waiting) != 0 || g.looking {
		t.Errorf("a hand at rest: %d looks, %d to come", looks, len(waiting))
	}
	g.moved()
	step()
	if looks != 3 {
		t.Errorf("a hand that moves again: %d looks", looks)
	}
	blind := eager{later: func(func()) { t.Error("looks with nothing to look with") }}
	blind.moved()
}
