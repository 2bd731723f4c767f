package rehearsal

import (
	"math"

	"homeside/export/sound"
	"homeside/model/advice"
	"homeside/model/rally"
	"homeside/model/units"
)

// Phase is what a rehearsal does.
type Phase uint8

// The phases of a rehearsal.
const (
	Waiting  Phase = iota // for the cautions to be read, or for the start
	Warning               // that paths will cross
	Counting              // in
	Running               // the rally
	Resting               // before the next round
	Done                  // all rounds are over
)

var phaseNames = [...]string{"waiting", "warning", "counting", "running", "resting", "done"}

// String is the phase in English.
func (p Phase) String() string { return phaseNames[int(p)%len(phaseNames)] }

// Heard is a beep that is due: in so much real time after the stretch began.
type Heard struct {
	After units.Seconds
	Kind  sound.Kind
}

// Rehearsal is a play being rehearsed. Use New.
type Rehearsal struct {
	rally *rally.Rally
	plan  Plan
	beeps []sound.Beep

	crossings []advice.Approach

	phase  Phase
	paused bool
	read   bool          // the cautions
	in     units.Seconds // real time gone by in the phase
	round  int           // from 1
}

// New is a play to be rehearsed; it waits for Read and Start.
func New(r *rally.Rally, p Plan) *Rehearsal {
	return &Rehearsal{rally: r, plan: p.filled(), beeps: sound.Of(r).Beeps, crossings: advice.PathsCross(r)}
}

// Read says that the cautions have been read.
func (h *Rehearsal) Read() { h.read = true }

// HasRead tells whether they have.
func (h *Rehearsal) HasRead() bool { return h.read }

// Start begins the first round, or again after the last; false before the
// cautions have been read.
func (h *Rehearsal) Start() bool {
	if !h.read {
		return false
	}
	h.round, h.paused = 0, false
	if h.plan.Warn > 0 && len(h.crossings) > 0 {
		h.enter(Warning)
	} else {
		h.enter(Counting)
	}
	return true
}

// Toggle starts, pauses and goes on.
func (h *Rehearsal) Toggle() {
	switch h.phase {
	case Waiting, Done:
		h.Start()
	default:
		h.paused = !h.paused
	}
}

// Stop goes back to the start.
func (h *Rehearsal) Stop() { h.phase, h.in, h.paused, h.round = Waiting, 0, false, 0 }

// Phase is what is going on.
func (h *Rehearsal) Phase() Phase { return h.phase }

// Paused tells whether time stands still.
func (h *Rehearsal) Paused() bool { return h.paused }

// Passing tells whether time passes: somebody must call Advance.
func (h *Rehearsal) Passing() bool { return !h.paused && h.phase != Waiting && h.phase != Done }

// Round is the present round and how many there are, below 0 without end.
func (h *Rehearsal) Round() (now, all int) { return h.round, h.plan.Rounds }

// Plan is how it is rehearsed.
func (h *Rehearsal) Plan() Plan { return h.plan }

// Change is rehearsing by another plan from now on; the moment stays.
func (h *Rehearsal) Change(p Plan) {
	p = p.filled()
	h.SetSpeed(p.Speed)
	h.plan = p
}

// SetSpeed changes the speed; the moment stays.
func (h *Rehearsal) SetSpeed(v float64) {
	if v <= 0 {
		return
	}
	h.in *= units.Seconds(h.scale(h.plan.Speed / v))
	h.plan.Speed = v
}

// scale is k while the rally runs, whose time depends on the speed, else 1.
func (h *Rehearsal) scale(k float64) float64 {
	if h.phase == Running {
		return k
	}
	return 1
}

// enter begins a phase; a count of no beats is over at once.
func (h *Rehearsal) enter(p Phase) {
	h.phase, h.in = p, 0
	if p == Counting {
		h.round++
	}
}

// lasts is how long the phase takes in real time.
func (h *Rehearsal) lasts() units.Seconds {
	switch h.phase {
	case Warning:
		return h.plan.Warn
	case Counting:
		return h.plan.Beat * units.Seconds(h.plan.Count)
	case Running:
		return (h.rally.To - h.rally.From) / units.Seconds(h.plan.Speed)
	case Resting:
		return h.plan.Rest
	}
	return units.Seconds(math.Inf(1))
}

// Moment is the moment of the rally that is shown.
func (h *Rehearsal) Moment() units.Seconds {
	t := h.rally.From
	switch h.phase {
	case Running:
		t += h.in * units.Seconds(h.plan.Speed)
	case Resting, Done:
		t = h.rally.To
	}
	if e, ok := h.rally.EventAt(t); h.plan.Cuts && ok {
		return e.At
	} else if h.plan.Cuts {
		return h.rally.From
	}
	return min(t, h.rally.To)
}

// Beat is the beat being counted, from 1, while counting in; 0 otherwise.
func (h *Rehearsal) Beat() int {
	if h.phase != Counting {
		return 0
	}
	return min(int(h.in/h.plan.Beat)+1, h.plan.Count)
}

// Left is what is left of the rest or of the warning.
func (h *Rehearsal) Left() units.Seconds {
	if h.phase != Resting && h.phase != Warning {
		return 0
	}
	return max(h.lasts()-h.in, 0)
}

// Skip ends the phase before its time.
func (h *Rehearsal) Skip() {
	if h.phase != Waiting && h.phase != Done {
		h.paused = false
		h.leave()
	}
}

// Step goes to the next event of the rally, or to the one before, and pauses
// there; false where there is none, or before the cautions have been read.
func (h *Rehearsal) Step(forward bool) bool {
	if !h.read {
		return false
	}
	now := h.Moment()
	to, found := h.rally.From, !forward
	for _, e := range h.rally.Events {
		switch {
		case !e.Reached:
		case forward && e.At > now+sameMoment && !found:
			to, found = e.At, true
		case !forward && e.At < now-sameMoment:
			to = e.At
		}
	}
	if found {
		h.stand(to)
	}
	return found
}

// sameMoment keeps a step from going where it already is.
const sameMoment units.Seconds = 1e-6

// stand pauses the rally at a moment.
func (h *Rehearsal) stand(t units.Seconds) {
	h.phase, h.paused = Running, true
	h.round = max(h.round, 1)
	h.in = (t - h.rally.From) / units.Seconds(h.plan.Speed)
}
