package advice

import (
	"fmt"

	"homeside/model/court"
	"homeside/model/flight"
	"homeside/model/lesson"
	"homeside/model/movement"
	"homeside/model/rally"
	"homeside/model/units"
)

// MostApex is the height of a return above which the honest advice is not to
// stack on this player's return: our choice, where an advisor names no other.
const MostApex units.Feet = 12

// Advisor answers what return gives a returner the time to run to a place and
// stand there when the third arrives.
type Advisor struct {
	Pace   movement.Pace
	Start  court.Point   // where the returner stands when striking
	Target court.Point   // where to be set
	Return flight.Return // contact, line, spin, and the speed of the third
	Model  flight.Model  // ball, air and court: flight.Default or the lesson's
	Cap    units.Feet    // the highest return to ask for; 0 is MostApex
}

// AdvisorOf is the advisor for the return of a rally, and the return that it
// has; false if the rally has none, or nobody to advise.
func AdvisorOf(r *rally.Rally) (a Advisor, depth, apex units.Feet, ok bool) {
	if r == nil || len(r.Strokes) < 2 || !r.Reached(r.Strokes[1].At) {
		return Advisor{}, 0, 0, false
	}
	s, shot := r.Strokes[1], r.Play.Shots[1]
	sheet := &sheet{Rally: r}
	a = Advisor{
		Pace:   r.Player(s.By).Legs(),
		Start:  r.Tracks[s.By].RunAt(s.At).Place,
		Target: sheet.goal(s.By, s.At+s.Met),
		Return: flight.Return{From: s.From, AimX: shot.Aim.X.Metres(), Spin: shot.Spin, Side: shot.Side},
		Model:  r.Model,
	}
	depth = court.Baseline + shot.Aim.Y*s.By.Team().Sign()
	return a, depth, s.Planned.Apex.State.Height().Feet(), true
}

// Needs is what a returner needs from the contact on, stroke recovery included.
type Needs struct {
	Run     units.Feet
	Through units.Seconds // to run through the place
	Stopped units.Seconds // to stand there
}

// Needs is the run to the target. A returner turns to where the run goes: it is
// run forward. A wheelchair's turn, from facing the net, comes first. The error
// is a pace out of range.
func (a Advisor) Needs() (Needs, error) {
	way := a.Start.Distance(a.Target)
	begin := a.Pace.StrokeRecovery
	if d, ok := court.FacingTo(a.Start, a.Target); ok {
		begin += a.Pace.TurnTime(d - a.end().Facing())
	}
	stop, err := a.Pace.Fastest(movement.Run{Distance: way.Metres()})
	if err != nil {
		return Needs{}, fmt.Errorf("advise a returner: %w", err)
	}
	return Needs{way, begin + a.Pace.Through(way.Metres()), begin + stop.Duration()}, nil
}

// end is the returner's end of the court.
func (a Advisor) end() court.End {
	if a.Return.From.Y > 0 {
		return court.Far
	}
	return court.Near
}

// most is the highest return to ask for.
func (a Advisor) most() units.Feet {
	if a.Cap > 0 {
		return a.Cap
	}
	return MostApex
}

// Verdict is what an advisor says of a returner.
type Verdict uint8

// The verdicts.
const (
	InTime       Verdict = iota // set in time with the return as it is
	AskForMore                  // a higher return, within the cap, gives the time
	DoNotStack                  // only a return above the cap would
	NoSuchReturn                // this return cannot be hit at all
)

// Verdicts lists them all.
var Verdicts = [...]Verdict{InTime, AskForMore, DoNotStack, NoSuchReturn}

// Answer is what one return gives a returner.
type Answer struct {
	Needs   Needs
	Depth   units.Feet    // how far inside the baseline the return lands
	Apex    units.Feet    // its greatest height
	Bought  flight.Bought // the time that it buys
	Stopped units.Seconds // margin to stand; below 0 too late
	Through units.Seconds // margin to run through
	Needed  units.Feet    // the least apex, at this depth, to be set; 0 if there is none
	Cap     units.Feet
	Verdict Verdict
}

// Answer says what a return of this depth and apex gives. The error is a pace
// out of range.
func (a Advisor) Answer(depth, apex units.Feet) (Answer, error) {
	n, err := a.Needs()
	if err != nil {
		return Answer{}, err
	}
	b := a.Model.Bought(a.Return, depth, apex.Metres())
	out := Answer{Needs: n, Depth: depth, Apex: apex, Bought: b, Cap: a.most()}
	needed, ok := a.needed(n, depth)
	out.Needed = needed
	switch {
	case b.Reason != flight.Possible:
		out.Verdict = NoSuchReturn
		return out, nil
	case b.Line >= n.Stopped:
		out.Verdict = InTime
	case ok && needed <= out.Cap:
		out.Verdict = AskForMore
	default:
		out.Verdict = DoNotStack
	}
	out.Stopped, out.Through = b.Line-n.Stopped, b.Line-n.Through
	return out, nil
}

// Needed is the least apex at which a return of this depth gives the time to be
// set; false if none up to the highest that a lesson may ask for does.
func (a Advisor) Needed(depth units.Feet) (units.Feet, bool) {
	n, err := a.Needs()
	if err != nil {
		return 0, false
	}
	return a.needed(n, depth)
}

// needed halves the range of heights: what cannot be hit is too low.
func (a Advisor) needed(n Needs, depth units.Feet) (units.Feet, bool) {
	enough := func(apex units.Feet) bool {
		b := a.Model.Bought(a.Return, depth, apex.Metres())
		return b.Reason == flight.Possible && b.Line >= n.Stopped
	}
	lo, hi := units.Feet(0), highest
	if !enough(hi) {
		return 0, false
	}
	for hi-lo > heightStep {
		if mid := (lo + hi) / 2; enough(mid) {
			hi = mid
		} else {
			lo = mid
		}
	}
	return hi, true
}

// Heights searched: a lob that no one asks for, to less than an eighth of an inch.
const (
	highest    units.Feet = min(40, lesson.MaxHeight)
	heightStep units.Feet = 0.01
)
