package formation

import (
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
)

// MostApex is the highest serve or return that a formation asks for by itself:
// above some 12 ft the honest advice is not to do it (our choice).
const MostApex units.Feet = 12

// The search for a height that buys the time, in feet.
const (
	heightStep  units.Feet = 0.5
	highestApex units.Feet = 24
)

// Verdict is what a written formation comes to.
type Verdict uint8

// The verdicts.
const (
	InTime  Verdict = iota // everybody of the pair meets the deadline
	Raised                 // so they do, with a higher serve or return than usual
	TooLate                // only one above MostApex would do, or none: do not do it with these legs
)

var verdictNames = [...]string{"in time", "in time with a higher ball", "too late"}

// String is "in time", "in time with a higher ball" or "too late".
func (v Verdict) String() string { return verdictNames[v%3] }

// Answer is what the pair's own shot has to buy: a serve until the return has
// bounced, a return until the third reaches the kitchen line.
type Answer struct {
	Verdict Verdict
	Shot    int        // 0 the serve, 1 the return
	Apex    units.Feet // of the ball's centre, as written
	Needed  units.Feet // the least that is in time: the usual or, in half feet, one above it; 0 if none up to 24 ft is
}

// Written is a play with what follows from it.
type Written struct {
	Situation Situation
	Kind      Kind
	Play      lesson.Play
	Rally     *rally.Rally
	Answer    Answer
	Margins   map[game.Player]units.Seconds // of the pair: to spare at the deadline at full effort, below 0 late
}

// Write is the play of a kind for a situation. The error is a refusal (see
// ErrRefused) in plain words, or a lesson that cannot be solved.
func Write(s Situation, k Kind) (Written, error) {
	if err := s.check(k); err != nil {
		return Written{}, err
	}
	usual, err := writeOnce(s, k, 0)
	if err != nil {
		return Written{}, err
	}
	usual.Answer.Shot = newWriter(s, k).own()
	usual.Answer.Apex = apexOf(usual)
	if usual.InTime() {
		usual.Answer.Needed = usual.Answer.Apex
		return usual, nil
	}
	return usual.raise()
}

// writeOnce is a play with the own shot at one height.
func writeOnce(s Situation, k Kind, apex units.Feet) (Written, error) {
	w := newWriter(s, k)
	w.apex = apex
	r, err := w.write()
	if err != nil {
		return Written{}, err
	}
	out := Written{Situation: s, Kind: k, Play: w.p, Rally: r, Margins: map[game.Player]units.Seconds{}}
	for n := range 2 {
		id := game.PlayerOf(s.Team, n+1)
		if m, ok := w.margin(r, id); ok {
			out.Margins[id] = m
		}
	}
	return out, nil
}

// apexOf is the height of the pair's own shot: as it was asked for, or as it came out.
func apexOf(w Written) units.Feet {
	if in := w.Play.Shots[w.Answer.Shot].Intent; in.Kind == lesson.ByApex {
		return in.Apex
	}
	return w.Rally.Strokes[w.Answer.Shot].Planned.Apex.State.Height().Feet()
}

// raise looks for the least height of the own shot with which the pair is in
// time. Above MostApex the play stays as usual and only the answer says so. What
// happens after the third, as a poach does, no height of the own shot changes.
func (w Written) raise() (Written, error) {
	w.Answer.Verdict = TooLate
	if w.Kind == lesson.Poached {
		return w, nil
	}
	lo := int(w.Answer.Apex / heightStep)
	hi := int(highestApex / heightStep)
	best, ok, err := w.at(hi)
	for err == nil && ok && hi-lo > 1 { // the higher, the later the deadline
		mid := (lo + hi) / 2
		var higher Written
		var enough bool
		if higher, enough, err = w.at(mid); enough {
			hi, best = mid, higher
		} else {
			lo = mid
		}
	}
	if err != nil || !ok {
		return w, err
	}
	w.Answer.Needed = heightStep * units.Feet(hi)
	if w.Answer.Needed > MostApex {
		return w, nil
	}
	best.Answer = Answer{Raised, w.Answer.Shot, w.Answer.Needed, w.Answer.Needed}
	return best, nil
}

// at is the play with the own shot so many steps high, and whether it can be hit
// and the pair is then in time.
func (w Written) at(steps int) (Written, bool, error) {
	out, err := writeOnce(w.Situation, w.Kind, heightStep*units.Feet(steps))
	if err != nil {
		return Written{}, false, err
	}
	s := out.Rally.Strokes[w.Answer.Shot]
	return out, out.InTime() && s.Trouble == 0 && !s.Stopped(), nil
}

// InTime says whether everybody of the pair meets the deadline.
func (w Written) InTime() bool {
	for _, m := range w.Margins {
		if m < 0 {
			return false
		}
	}
	return true
}

// Order is who goes in front; false where nobody changes sides.
func (w Written) Order() (game.Player, bool) {
	if w.Play.Front == nil {
		return 0, false
	}
	return *w.Play.Front, true
}

// Contact is where a player stands at the serve, as run.
func (w Written) Contact(id game.Player) court.Point { return w.Rally.Tracks[id].RunAt(0).Place }

// End is where a player is at the end of the play, as run.
func (w Written) End(id game.Player) court.Point { return w.Rally.Tracks[id].RunAt(w.Rally.To).Place }

// Side is the side of the court on which a player ends.
func (w Written) Side(id game.Player) court.Side { return court.SideOf(id.Team(), w.End(id)) }
