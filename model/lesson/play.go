package lesson

import (
	"slices"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/units"
)

// DefaultLead is the time before the serve when a play does not say.
const DefaultLead units.Seconds = 1.5

// Play is one rally as the coach wants it. It needs at least a serve and a
// keyframe for each player.
type Play struct {
	Title     string
	Notes     string
	Tags      []string // to find it by, in the coach's order
	Situation Situation
	Front     *game.Player  // who goes in front, nearer the net, when partners cross; nil means nobody said
	Lead      units.Seconds // shown before the serve; see DefaultLead
	Shots     []Shot
	Tracks    [4][]Keyframe // by game.Player, in the order they happen
	Marks     []Mark
	Cues      []Cue
	Photo     *Photo // a picture under the court; nil for none
}

// Situation is the score when the serve is called. Who serves is said by the
// first shot; from which court follows from the score.
type Situation struct {
	Call    game.Call // as called by the serving side; unset means nobody said
	Serving court.End // near by default
}

// Server is who hits the first shot; false if the play has none.
func (p Play) Server() (game.Player, bool) {
	if len(p.Shots) == 0 {
		return 0, false
	}
	return p.Shots[0].By, true
}

// WithTrack is the play with one player's keyframes replaced.
func (p Play) WithTrack(id game.Player, track []Keyframe) Play {
	p.Tracks[id] = track // Tracks is an array: p is a copy
	return p
}

// WithShot is the play with shot i replaced.
func (p Play) WithShot(i int, s Shot) Play {
	p.Shots = slices.Clone(p.Shots)
	p.Shots[i] = s
	return p
}
