package sound

import (
	"cmp"
	"slices"

	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
)

// Kind is what a beep stands for.
type Kind uint8

// The kinds of beep.
const (
	Contact Kind = iota // a ball struck
	Bounce              // a ball on the court
	Arrival             // a player in place
	Count               // a beat before the serve
	kinds
)

// Kinds lists the kinds in order.
func Kinds() []Kind { return []Kind{Contact, Bounce, Arrival, Count} }

// pitches in Hz by Kind. Our choice: no one is a multiple of another, so that
// no beep can be taken for an overtone of another.
var pitches = [kinds]float64{Contact: 1000, Bounce: 620, Arrival: 1560, Count: 830}

var kindNames = [kinds]string{"contact", "bounce", "arrival", "count"}

// String is the kind in English.
func (k Kind) String() string { return kindNames[k%kinds] }

// Pitch is a kind's frequency in Hz.
func (k Kind) Pitch() float64 { return pitches[k%kinds] }

// Beep is a beep at a moment.
type Beep struct {
	At   units.Seconds // on the rally's clock
	Kind Kind
}

// Play is a play in beeps.
type Play struct {
	From, To units.Seconds // of the rally
	Beeps    []Beep        // in the order of their times
}

// Span is the first and the last moment of the play.
func (p Play) Span() (from, to units.Seconds) { return p.From, p.To }

// leastRun is how far a player goes for the arrival to be heard: our choice, a
// long step. Shorter ones would only drown the others.
const leastRun units.Feet = 3

// Of is a solved play in beeps, with the arrivals of these players only; nobody
// named means all four.
func Of(r *rally.Rally, players ...game.Player) Play {
	if len(players) == 0 {
		players = game.Players[:]
	}
	p := Play{From: r.From, To: r.To, Beeps: ballBeeps(r)}
	for _, id := range players {
		p.Beeps = append(p.Beeps, arrivals(r, id)...)
	}
	slices.SortStableFunc(p.Beeps, func(a, b Beep) int { return cmp.Compare(a.At, b.At) })
	return p
}

func ballBeeps(r *rally.Rally) []Beep {
	var all []Beep
	for _, e := range r.Events {
		switch {
		case !e.Reached:
		case e.Name.Moment == lesson.Contact:
			all = append(all, Beep{e.At, Contact})
		case e.Name.Moment == lesson.Bounce:
			all = append(all, Beep{e.At, Bounce})
		}
	}
	return all
}

// arrivals are a player's as the legs run: not of a run that the next one cuts.
func arrivals(r *rally.Rally, id game.Player) []Beep {
	var all []Beep
	legs := r.Tracks[id].Legs
	for i, leg := range legs {
		cut := i+1 < len(legs) && legs[i+1].From < leg.To
		if leg.Run.Distance.Feet() >= leastRun && !cut && leg.To <= r.To {
			all = append(all, Beep{leg.To, Arrival})
		}
	}
	return all
}
