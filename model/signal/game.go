package signal

import (
	"errors"
	"fmt"
	"math"
)

// ErrChance says that a chance is outside [0, 1]; the message names it.
var ErrChance = errors.New("chance out of range")

// Action is what the pair does.
type Action uint8

// The actions, the rows of a Game.
const (
	Switch Action = iota // an open hand
	Stay                 // a closed fist
)

// Actions lists the actions in order.
var Actions = [2]Action{Switch, Stay}

// String is "switch" or "stay".
func (a Action) String() string { return [2]string{"switch", "stay"}[a&1] }

// Aim is where the opponents hit, from the pair's own view.
type Aim uint8

// The aims, the columns of a Game.
const (
	Left Aim = iota
	Right
)

// Aims lists the aims in order.
var Aims = [2]Aim{Left, Right}

// String is "left" or "right".
func (a Aim) String() string { return [2]string{"left", "right"}[a&1] }

// Game is the pair's chance of winning the rally, by Action and Aim.
type Game [2][2]float64

// Check says which chance is outside [0, 1], an ErrChance.
func (g Game) Check() error {
	for _, do := range Actions {
		for _, aim := range Aims {
			if v := g[do][aim]; !(v >= 0 && v <= 1) { // catches NaN too
				return fmt.Errorf("%w: %v while they aim %v is %v, want 0 to 1", ErrChance, do, aim, v)
			}
		}
	}
	return nil
}

// Mix is the best answer to a game.
type Mix struct {
	Switch float64 // how often to switch, 0 to 1
	Left   float64 // how often their best answer aims left, 0 to 1
	Value  float64 // the chance of winning the rally that the pair is sure of
	Saddle bool    // one action is best against everything: no mixing
}

// Best is the best mix: the saddle point where there is one, else the mix that
// makes both aims as good (von Neumann 1928). Where staying and switching are equally
// good it says stay, as the trade does when unsure.
func (g Game) Best() Mix {
	for _, do := range [2]Action{Stay, Switch} {
		for _, aim := range Aims {
			if g[do][aim] <= g[do][aim^1] && g[do][aim] >= g[do^1][aim] {
				return Mix{Switch: float64(1 - do), Left: float64(1 - aim), Value: g[do][aim], Saddle: true}
			}
		}
	}
	// Without a saddle point the larger entries lie on a diagonal, so all four
	// differences along the edges have one sign and no sum is 0.
	a, b, c, d := g[Switch][Left], g[Switch][Right], g[Stay][Left], g[Stay][Right]
	row, column := (d-c)/((a-b)+(d-c)), (d-b)/((a-c)+(d-b))
	return Mix{Switch: row, Left: column, Value: g.against(row, Left)}
}

// against is the chance of winning with a mix while they aim so.
func (g Game) against(often float64, aim Aim) float64 {
	return often*g[Switch][aim] + (1-often)*g[Stay][aim]
}

// Sure is the chance of winning that a pair is sure of if it switches so often,
// 0 to 1: 1 is always switching. Less than Mix.Value by what the habit gives away.
func (g Game) Sure(often float64) float64 {
	return math.Min(g.against(often, Left), g.against(often, Right))
}
