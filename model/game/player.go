package game

import (
	"fmt"

	"homeside/model/court"
)

// Player is one of the four persons on court. A player keeps the same name
// wherever he or she stands: near1 is a person, not a place.
type Player uint8

// The four players. Near1 and Far1 are their team's first-named players.
const (
	Near1 Player = iota
	Near2
	Far1
	Far2
)

// Players lists the four players in order.
var Players = [4]Player{Near1, Near2, Far1, Far2}

var playerNames = [4]string{"near1", "near2", "far1", "far2"}

// PlayerOf is the i-th player of a team, 1 or 2.
func PlayerOf(team court.End, i int) Player { return Player(2*int(team) + i - 1) }

// Team is the player's end.
func (p Player) Team() court.End { return court.End(p >> 1) }

// Number is 1 or 2 within the team.
func (p Player) Number() int { return int(p&1) + 1 }

// Partner is the other player of the team.
func (p Player) Partner() Player { return p ^ 1 }

// String is "near1", "near2", "far1" or "far2".
func (p Player) String() string { return playerNames[p&3] }

// ParsePlayer reads one of the four names.
func ParsePlayer(s string) (Player, error) {
	for i, n := range playerNames {
		if s == n {
			return Player(i), nil
		}
	}
	return 0, fmt.Errorf("player %q: want near1, near2, far1 or far2", s)
}
