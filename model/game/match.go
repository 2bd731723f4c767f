package game

import (
	"fmt"
	"slices"
	"strings"

	"homeside/model/court"
)

// Match is a game with its history, rally by rally, and undo and redo. It is a
// value: every step gives a new match and leaves the old one as it was.
type Match struct {
	states  []State     // one more than winners; never written to once shared
	winners []court.End // rallies that can be redone included
	at      int         // rallies played
}

// NewMatch starts a match at any state of a game, often Settings.Start.
func NewMatch(start State) Match { return Match{states: []State{start}} }

// Replay plays a game from its settings by a winners string. Rallies after the
// end are not counted.
func Replay(set Settings, winners string) (Match, error) {
	start, err := set.Start()
	if err != nil {
		return Match{}, err
	}
	ends, err := ParseWinners(winners)
	if err != nil {
		return Match{}, err
	}
	m := NewMatch(start)
	for _, w := range ends {
		if start.Over() {
			break
		}
		start = start.Next(w)
		m.states, m.winners, m.at = append(m.states, start), append(m.winners, w), m.at+1
	}
	return m, nil
}

// ParseWinners reads the winners of rallies in order, n for near and f for far.
func ParseWinners(s string) ([]court.End, error) {
	ends := make([]court.End, 0, len(s))
	for i, r := range []rune(s) {
		switch r {
		case 'n':
			ends = append(ends, court.Near)
		case 'f':
			ends = append(ends, court.Far)
		default:
			return nil, fmt.Errorf("winners: rally %d is %q, want n or f", i+1, r)
		}
	}
	return ends, nil
}

// State is the state after the rallies played.
func (m Match) State() State {
	if len(m.states) == 0 {
		return State{}
	}
	return m.states[m.at]
}

// States lists the states from the start to the present one.
func (m Match) States() []State {
	if len(m.states) == 0 {
		return []State{{}}
	}
	return slices.Clone(m.states[:m.at+1])
}

// Rallies is the number of rallies played.
func (m Match) Rallies() int { return m.at }

// Winners is the winners of the rallies played, as ParseWinners reads them.
func (m Match) Winners() string {
	var b strings.Builder
	for _, w := range m.winners[:m.at] {
		b.WriteByte("nf"[w])
	}
	return b.String()
}

// Won is the match after one more rally. What had been undone is forgotten. A
// match that is over stays as it is: rallies after the end are not counted.
func (m Match) Won(winner court.End) Match {
	now := m.State()
	if now.Over() {
		return m
	}
	if len(m.states) == 0 {
		m.states = []State{now}
	}
	winner &= 1
	return Match{
		states:  append(slices.Clip(m.states[:m.at+1]), now.Next(winner)),
		winners: append(slices.Clip(m.winners[:m.at]), winner),
		at:      m.at + 1,
	}
}

// CanUndo says whether a rally can be taken back.
func (m Match) CanUndo() bool { return m.at > 0 }

// CanRedo says whether a rally taken back can be played again.
func (m Match) CanRedo() bool { return m.at < len(m.winners) }

// Undo takes the last rally back, if there is one.
func (m Match) Undo() Match {
	if m.CanUndo() {
		m.at--
	}
	return m
}

// Redo plays the last rally taken back again, if there is one.
func (m Match) Redo() Match {
	if m.CanRedo() {
		m.at++
	}
	return m
}

// EndChange says whether the teams change ends now, before the next serve (USA
// Pickleball Official Rulebook 2026, 21.B).
func (m Match) EndChange() bool {
	return m.at > 0 && ChangesEnds(m.states[m.at-1], m.states[m.at])
}
