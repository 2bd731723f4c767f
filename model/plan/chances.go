package plan

import (
	"errors"
	"fmt"

	"homeside/model/court"
	"homeside/model/game"
)

// Errors of a plan that cannot be made.
var (
	ErrChance  = errors.New("chance out of range")
	ErrEndless = errors.New("the game hardly ever ends")
	ErrWants   = errors.New("wanted sides clash")
	ErrPolicy  = errors.New("policy not possible")
)

// Chances are each team's chance of winning a rally that it serves, by court.End;
// in [0, 1]. The zero value is a game in which no server ever wins.
type Chances [2]float64

// Check says what is wrong with the chances, an ErrChance.
func (c Chances) Check() error {
	for _, e := range court.Ends {
		if !(c[e] >= 0 && c[e] <= 1) { // catches NaN too
			return fmt.Errorf("%w: the %v team wins %v of the rallies it serves, want 0 to 1", ErrChance, e, c[e])
		}
	}
	return nil
}

// of is the chance that a team wins the rally of a state.
func (c Chances) of(s game.State, winner court.End) float64 {
	if winner == s.Serving() {
		return c[winner]
	}
	return 1 - c[s.Serving()]
}
