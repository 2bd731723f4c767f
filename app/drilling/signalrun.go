package drilling

import (
	"homeside/model/drill"
	"homeside/model/lesson"
)

// signalTurn is a question of the signal drill and what has come of it.
type signalTurn struct {
	outcome
	ask  drill.SignalAsk
	move lesson.Meaning // a reader's answer
	sign drill.Sign     // a giver's answer
	own  bool           // judged by the partners themselves
}

// signalRun is a signal drill under way.
type signalRun struct {
	turns[signalTurn]
	options drill.SignalOptions
	drill   *drill.Signals
}

// newSignalRun is a drill with its first question. The error is that of
// drill.NewSignals.
func newSignalRun(o drill.SignalOptions) (*signalRun, error) {
	d, err := drill.NewSignals(o)
	if err != nil {
		return nil, err
	}
	r := &signalRun{options: o, drill: d}
	r.add(signalTurn{ask: d.Ask()})
	return r, nil
}

// open says whether the question looked at is still to be answered.
func (r *signalRun) open() bool { return r.last() && r.now().outcome == asked }

// read answers for a reader.
func (r *signalRun) read(move lesson.Meaning) {
	if r.open() {
		t := r.now()
		t.move, t.outcome = move, outcomeOf(r.drill.Read(move))
	}
}

// give answers for a giver.
func (r *signalRun) give(sign drill.Sign) {
	if r.open() {
		t := r.now()
		t.sign, t.outcome = sign, outcomeOf(r.drill.Give(sign))
	}
}

// reveal shows the answer; it does not count.
func (r *signalRun) reveal() {
	if r.open() {
		r.now().outcome = shown
	}
}

// say counts an answer that was shown as known or not known: a sign was made for
// real, or an answer was called out.
func (r *signalRun) say(known bool) {
	t := r.now()
	if !r.last() || t.outcome != shown {
		return
	}
	t.own, t.outcome = true, outcomeOf(known)
	switch {
	case r.options.Role == drill.Reader && known:
		r.drill.Read(t.ask.Meaning)
	case r.options.Role == drill.Reader:
		r.drill.Read((t.ask.Meaning + 1) % (lesson.Fake + 1))
	case known:
		r.drill.Give(t.ask.Sign)
	default:
		r.drill.Give(drill.Unclear)
	}
}

// step shows the answer of an open question, and goes on from any other.
func (r *signalRun) step() {
	switch {
	case r.forward():
	case r.now().outcome == asked:
		r.reveal()
	default:
		r.add(signalTurn{ask: r.drill.Next()})
	}
}
