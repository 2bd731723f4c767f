package game

import (
	"errors"
	"fmt"
)

// ErrImpossible marks a score that cannot be called in any game.
var ErrImpossible = errors.New("impossible")

// Check says whether a game in format f to so many points can come to the call
// at all; to = 0 means 11. The error wraps ErrImpossible and gives the reason.
func (c Call) Check(f Format, to int) error {
	to = Settings{To: to}.Points()
	if err := checkFormat(f, to); err != nil {
		return fmt.Errorf("call %v: %w", c, err)
	}
	if why := c.impossible(f, to); why != "" {
		return fmt.Errorf("call %v is %w in %v to %d: %s", c, ErrImpossible, f, to, why)
	}
	return nil
}

// impossible is the reason why a call cannot come up, empty if it can.
func (c Call) impossible(f Format, to int) string {
	low, high := min(c.Serving, c.Receiving), max(c.Serving, c.Receiving)
	switch {
	case low < 0:
		return "a score is never negative"
	case high > MaxScore:
		return fmt.Sprintf("no score is higher than %d", MaxScore)
	case f.Rally() && c.Server != 0:
		return "a call in rally scoring has no server number"
	case !f.Rally() && c.Server != 1 && c.Server != 2:
		return "a call in side-out scoring ends with server 1 or 2"
	case over(low, high, to):
		return fmt.Sprintf("%d-%d has ended the game", max(to, low+2), low)
	case f.Rally() && !c.servable(to):
		return "in rally scoring the serving team has won the last point"
	}
	return ""
}

// servable says whether the serving team can have won a rally last, as it must
// in rally scoring except at nil-nil.
func (c Call) servable(to int) bool {
	if c.Serving == 0 {
		return c.Receiving == 0
	}
	return !over(c.Serving-1, c.Receiving, to)
}
