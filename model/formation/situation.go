package formation

import (
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

// Kind is what a pair does: lesson.Ordinary, Stacked, Switched, Stayed or Poached.
type Kind = lesson.Formation

// Kinds lists the kinds that can be written.
var Kinds = [...]Kind{lesson.Ordinary, lesson.Stacked, lesson.Switched, lesson.Stayed, lesson.Poached}

// ServeTo is where in the service court a serve goes.
type ServeTo uint8

// The places of a serve.
const (
	ServeMiddle ServeTo = iota
	ServeWide           // near the sideline
	ServeTee            // near the centreline
)

// ServesTo lists the places of a serve.
var ServesTo = [...]ServeTo{ServeMiddle, ServeWide, ServeTee}

var serveToNames = [...]string{"middle", "wide", "tee"}

// String is "middle", "wide" or "tee".
func (d ServeTo) String() string { return serveToNames[d%3] }

// ParseServeTo reads "middle", "wide" or "tee".
func ParseServeTo(s string) (ServeTo, error) {
	for i, n := range serveToNames {
		if s == n {
			return ServeTo(i), nil
		}
	}
	return 0, refuse("serve %q: want wide, middle or tee", s)
}

// ThirdShot is how the third is hit. The zero value is the usual one: a drop
// behind which the servers walk in where they are written, a drive against
// the pair that returns.
type ThirdShot uint8

// The thirds.
const (
	UsualThird    ThirdShot = iota
	DriveAtRunner           // at who ran farthest
)

// Situation is what a formation is written for.
type Situation struct {
	Lesson lesson.Lesson // persons, their hands, paces and wishes, venue, conditions, vocabulary; its plays do not count
	State  game.State    // the score: who serves from where, who receives
	Team   court.End     // whose formation it is; the other pair plays from ordinary places

	Serve  ServeTo
	Return lesson.ReturnTo // unsaid: cross-court, into the server's half
	Third  ThirdShot
	Lob    bool // the opponents' next ball goes over the one who fills in

	Front  *game.Player    // who is to go in front; nil leaves it to the kind
	Places *[4]court.Point // where the last rally left the players, who then walk on; nil begins with everybody in place
}

// Serves says whether the pair serves.
func (s Situation) Serves() bool { return s.State.Serving() == s.Team }

// Lead is the player whose place the score fixes: the server or the receiver.
func (s Situation) Lead() game.Player {
	if s.Serves() {
		return s.State.Server()
	}
	return s.State.Receiver()
}

// Want is the side a player of the pair wants to end on.
func (s Situation) Want(id game.Player) lesson.Want {
	if s.Serves() {
		return s.Lesson.Player(id).Serving
	}
	return s.Lesson.Player(id).Receiving
}

// StateFor is the first state of a game in which a player serves or receives in
// a court: at nil-nil or one-nil, with the starting server that this needs. The
// error is a format that is not known.
func StateFor(f game.Format, lead game.Player, serves bool, side court.Side) (game.State, error) {
	first := lead.Team()
	if !serves {
		first = first.Other()
	}
	set := game.Settings{Format: f, First: first, Starters: [2]game.Player{game.Near1, game.Far1}}
	for _, starter := range [2]game.Player{lead, lead.Partner()} {
		set.Starters[lead.Team()] = starter
		state, err := set.Start()
		if err != nil {
			return game.State{}, err
		}
		for range 2 {
			s := Situation{State: state, Team: lead.Team()}
			if s.Lead() == lead && state.From() == side {
				return state, nil
			}
			state = state.Next(first)
		}
	}
	return game.State{}, refuse("%v never does that from the %v at the start of a game", lead, side)
}

// sign is the sign of x of the half where a team's lead player stands.
func (s Situation) sign(team court.End) units.Feet { return court.SideX(team, s.State.From()) }
