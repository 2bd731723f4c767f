package lesson

import (
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/movement"
	"homeside/model/units"
)

// Team is a pair of partners.
type Team struct {
	Name    string
	Players [2]Player
	Starter int   // 1 or 2: who served first for the team in this game; 0 means 1
	Signs   Signs // what the pair's signs mean; the zero Signs mean common practice
}

// StarterOf is the starting server of the team at end e.
func (t Team) StarterOf(e court.End) game.Player {
	if t.Starter == 2 {
		return game.PlayerOf(e, 2)
	}
	return game.PlayerOf(e, 1)
}

// Player is a person: what a coach knows of one partner.
type Player struct {
	Name       string
	Initials   string         // one to three letters on the disc; empty means the first letter of Name
	Hand       Hand           // right by default
	Serving    Want           // the side wanted after the team's serve
	Receiving  Want           // the side wanted after the team's return
	Wheelchair bool           // plays from a chair: its rear wheels count as feet, a second bounce is allowed
	Pace       *movement.Pace // nil means movement.DefaultPace
}

// Legs is the player's pace, the default where none is set.
func (p Player) Legs() movement.Pace {
	if p.Pace == nil {
		return movement.DefaultPace()
	}
	return *p.Pace
}

// Letters are the initials to draw.
func (p Player) Letters() string {
	if p.Initials != "" {
		return p.Initials
	}
	for _, r := range p.Name {
		return string(r)
	}
	return "?"
}

// Hand is the paddle hand.
type Hand uint8

// The hands.
const (
	RightHanded Hand = iota
	LeftHanded
)

var handNames = [...]string{"right", "left"}

// String is "right" or "left".
func (h Hand) String() string { return handNames[h&1] }

// Forehand is the direction of the paddle hand's side for one who faces that way.
func (h Hand) Forehand(facing units.Degrees) court.Point {
	right := court.RightOf(facing)
	if h == LeftHanded {
		return right.Times(-1)
	}
	return right
}

// ParseHand reads "right" or "left".
func ParseHand(s string) (Hand, error) { return parse[Hand]("hand", s, handNames[:]) }

// Want is the side a player wants to end on.
type Want uint8

// The wishes: by default a player does not mind.
const (
	Either Want = iota
	WantRight
	WantLeft
)

var wantNames = [...]string{"either", "right", "left"}

// String is "either", "right" or "left".
func (w Want) String() string { return wantNames[w%3] }

// ParseWant reads "either", "right" or "left".
func ParseWant(s string) (Want, error) { return parse[Want]("side", s, wantNames[:]) }
