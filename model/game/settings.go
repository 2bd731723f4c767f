package game

import (
	"fmt"

	"homeside/model/court"
)

// Points that win where nothing else is said, and the most that can be asked for.
const (
	DefaultPoints = 11 // USA Pickleball Official Rulebook 2026, 4.A; 15 and 21 are played too
	MaxPoints     = 99
)

// Settings are agreed before a game. The zero value is side-out scoring to 11,
// the near team serves first, near1 and far1 are the starting servers.
type Settings struct {
	Format   Format
	To       int       // points that win, by two; 0 means 11
	First    court.End // the team that serves first
	Starters [2]Player // by court.End; the zero player means the team's first-named
}

// Points is the number of points that win.
func (s Settings) Points() int {
	if s.To == 0 {
		return DefaultPoints
	}
	return s.To
}

// Check says what is wrong with the settings.
func (s Settings) Check() error {
	if err := checkFormat(s.Format, s.Points()); err != nil {
		return err
	}
	if s.First > court.Far {
		return fmt.Errorf("first team %d: want near or far", s.First)
	}
	return checkStarters(s.Starters)
}

// Start is the state at a game's first serve: nil-nil, the first team's starting
// server on the right.
func (s Settings) Start() (State, error) {
	if err := s.Check(); err != nil {
		return State{}, fmt.Errorf("start a game: %w", err)
	}
	st := stateOf(s.Format, s.Points(), s.Starters)
	st.serving, st.server = s.First, st.Starter(s.First)
	return st, nil
}

func checkFormat(f Format, to int) error {
	if !f.Known() {
		return fmt.Errorf("%v is not known", f)
	}
	if to < 1 || to > MaxPoints {
		return fmt.Errorf("a game to %d: want 1 to %d points", to, MaxPoints)
	}
	return nil
}

func checkStarters(starters [2]Player) error {
	for _, e := range court.Ends {
		if starters[e] == 0 {
			continue
		}
		if err := checkTeam(starters[e], e); err != nil {
			return fmt.Errorf("starting server: %w", err)
		}
	}
	return nil
}

// checkTeam says whether a player is one of the team.
func checkTeam(p Player, e court.End) error {
	switch {
	case p > Far2:
		return fmt.Errorf("there is no player %d", uint8(p))
	case p.Team() != e:
		return fmt.Errorf("%v is not on the %v team", p, e)
	}
	return nil
}
