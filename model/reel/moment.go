package reel

import (
	"homeside/model/lesson"
	"homeside/model/units"
)

// Moment is what one moment of the clip shows: a card, or a moment of a play.
type Moment struct {
	Clip    units.Seconds // of the clip, within it
	Card    *lesson.Card  // nil while a take is shown
	Take    int           // of Reel.Takes
	T       units.Seconds // on the play's clock
	Speed   float64       // of the play's clock; 0 while the picture holds
	Gone    float64       // share of the take's loop that is over in the clip, 0 to 1
	Caption string        // of the freeze that holds, else of the take; empty for none
}

// At is the clip at time t; times outside the clip show its first or last moment.
// A clip that shows nothing has an empty card.
func (r *Reel) At(t units.Seconds) Moment {
	if r.Empty() {
		return Moment{Card: &lesson.Card{}}
	}
	if !(t > 0) { // also NaN
		t = 0
	}
	t = min(t, r.length)
	switch p := r.pieces[r.pieceAt(t)]; p.take {
	case titleCard:
		return Moment{Clip: t, Card: &r.Of.Title}
	case endCard:
		return Moment{Clip: t, Card: &r.Of.End}
	default:
		return r.moment(p, t)
	}
}

func (r *Reel) moment(p piece, t units.Seconds) Moment {
	take := &r.Takes[p.take]
	m := Moment{Clip: t, Take: p.take, T: p.at(t), Speed: p.speed, Caption: r.captionOf(p), Gone: float64((t - p.loop) / take.once)}
	m.Gone = min(max(m.Gone, 0), 1)
	return m
}

// at is the play's time at a time of the clip within the piece.
func (p piece) at(t units.Seconds) units.Seconds {
	return min(max(p.from+(t-p.start)*units.Seconds(p.speed), p.from), p.to)
}
