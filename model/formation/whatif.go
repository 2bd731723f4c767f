package formation

import (
	"fmt"

	"homeside/model/game"
	"homeside/model/lesson"
)

// Change is one thing that is played otherwise.
type Change uint8

// The changes.
const (
	ReturnAtMover  Change = iota // at the server who changes halves; the server where nobody does
	ReturnMiddle                 // between the servers
	ReturnDownLine               // away from the server's first half
	ReturnShort                  // in front of the servers
	ServeWider                   // near the sideline
	ThirdAtRunner                // driven at the returner who runs
	LobOverFiller                // over the one who fills in
)

// Changes lists them all.
var Changes = [...]Change{ReturnAtMover, ReturnMiddle, ReturnDownLine, ReturnShort, ServeWider, ThirdAtRunner, LobOverFiller}

var changeNames = [...]string{"return at the mover", "return to the middle", "return down the line", "short return", "wide serve", "third driven at the runner", "lob over the one who fills in"}

// String is the change in trade words.
func (c Change) String() string { return changeNames[int(c)%len(changeNames)] }

// apply is the situation with the change.
func (c Change) apply(s Situation) Situation {
	switch c {
	case ReturnAtMover:
		s.Return = lesson.ToMover
	case ReturnMiddle:
		s.Return = lesson.ToMiddle
	case ReturnDownLine:
		s.Return = lesson.DownLine
	case ReturnShort:
		s.Return = lesson.Short
	case ServeWider:
		s.Serve = ServeWide
	case ThirdAtRunner:
		s.Third = DriveAtRunner
	case LobOverFiller:
		s.Lob = true
	}
	return s
}

// Sibling is a written formation with one thing otherwise.
type Sibling struct {
	Change Change
	Written
	Takes game.Player // who takes the ball that is asked about
}

// WhatIf are the siblings of a written formation, in the order of Changes. A
// change that the formation has already is left out, and so is what its own
// last shots rule out.
func (w Written) WhatIf() ([]Sibling, error) {
	var all []Sibling
	for _, c := range Changes {
		s := c.apply(w.Situation)
		if !differs(s, w.Situation) || !c.possible(w) {
			continue
		}
		other, err := Write(s, w.Kind)
		if err != nil {
			return nil, fmt.Errorf("%v: %w", c, err)
		}
		other.Play.Title = fmt.Sprintf("%s: %v", w.Play.Title, c)
		all = append(all, Sibling{c, other, c.takes(other)})
	}
	return all, nil
}

// differs says whether the balls are played otherwise.
func differs(a, b Situation) bool {
	return a.Serve != b.Serve || a.Return != b.Return || a.Third != b.Third || a.Lob != b.Lob
}

// possible leaves out the third and the lob for a poach, which has its own.
func (c Change) possible(w Written) bool { return w.Kind != lesson.Poached || c < ThirdAtRunner }

// takes is who takes the ball that the change is about, the next to strike. A drive at the runner comes to the runner.
func (c Change) takes(w Written) game.Player {
	changed := 1
	switch c {
	case ServeWider:
		changed = 0
	case ThirdAtRunner:
		return w.Situation.State.Receiver()
	case LobOverFiller:
		return w.Play.Shots[len(w.Play.Shots)-1].By
	}
	return w.Play.Shots[changed+1].By
}
