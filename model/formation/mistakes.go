package formation

import (
	"fmt"

	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
)

// Mistake is a usual error of a formation (common practice of the trade).
type Mistake uint8

// The mistakes.
const (
	BothOneSide   Mistake = iota // one stays, and both end on one side
	PartnerInLine                // the partner stands in the way of the ball
	WrongReceiver                // the partner returns the serve
	CreptIn                      // a server stands inside before the return has bounced
	FlatReturn                   // a return too low to buy the time
)

// Mistakes lists them all.
var Mistakes = [...]Mistake{BothOneSide, PartnerInLine, WrongReceiver, CreptIn, FlatReturn}

var mistakeNames = [...]string{"both end on one side", "the partner stands in the ball's line", "the wrong player receives", "the server's partner has crept in", "the return is flat"}

// String is the mistake in trade words.
func (m Mistake) String() string { return mistakeNames[int(m)%len(mistakeNames)] }

// fits says whether a mistake is made in such a formation.
func (m Mistake) fits(w Written) bool {
	serves := w.Situation.Serves()
	switch m {
	case BothOneSide:
		return Moves(w.Kind)
	case PartnerInLine, WrongReceiver:
		return !serves
	case CreptIn:
		return serves
	}
	return !serves && Moves(w.Kind)
}

// Pair is a play as it was, with a mistake, and as it should be.
type Pair struct {
	Mistake          Mistake
	Was, Should      lesson.Play
	WasRally, Solved *rally.Rally // of the two
}

// Pairs are the usual errors of a written formation beside the formation itself.
func (w Written) Pairs() ([]Pair, error) {
	var all []Pair
	for _, m := range Mistakes {
		if !m.fits(w) {
			continue
		}
		wr := &writer{s: w.Situation}
		wr.p = m.made(w)
		wr.p.Title = fmt.Sprintf("%s, as it was: %v", w.Play.Title, m)
		r, err := wr.solve()
		if err != nil {
			return nil, fmt.Errorf("%v: %w", m, err)
		}
		should := w.Play
		should.Title += ", as it should be"
		all = append(all, Pair{m, wr.p, should, r, w.Rally})
	}
	return all, nil
}

// Figures of the mistakes: our choice.
const (
	creptBehind units.Feet = 15 // from the net
	onTheLine   units.Feet = 4  // how far the ball has come down to a body's height
)

// made is the play with the mistake.
func (m Mistake) made(w Written) lesson.Play {
	p := w.Play
	lead := w.Situation.Lead()
	mate := lead.Partner()
	switch m {
	case BothOneSide:
		return stays(p, lead)
	case PartnerInLine:
		return p.WithTrack(mate, moved(p.Tracks[mate], serveLine(w)))
	case WrongReceiver:
		return swapped(p, lead)
	case CreptIn:
		return creeps(p, mate)
	}
	shot := p.Shots[1].Hit(lesson.FlatReturn, w.Situation.Lesson.Manner(lesson.FlatReturn))
	return p.WithShot(1, shot)
}
