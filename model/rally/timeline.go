package rally

import (
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

// TimedKind is a kind of thing that a play has at a time.
type TimedKind uint8

// The kinds of thing with a time.
const (
	Landing   TimedKind = iota // shot Index comes down or, where it is volleyed, is met
	Arrival                    // Player is at keyframe Index
	AtContact                  // Player is where shot Index is hit; the lesson states no keyframe for it
	Start                      // Player's run to keyframe Index starts
	Running                    // the whole of that run
	CueFrom                    // cue Index begins
	CueTo                      // it ends
	Saying                     // the whole of it
)

// Timed names something of a play that has a time.
type Timed struct {
	Kind   TimedKind
	Player game.Player // zero for a shot and for a cue
	Index  int
}

// Entry is something of a play with its time; From and To are the same for a moment.
type Entry struct {
	What     Timed
	From, To units.Seconds
}

// LeastRun is the shortest way that counts as a run and not as a step on the spot.
const LeastRun units.Feet = 0.5

// Timeline lists everything in the play that has a time: the shots, then each
// player's places and runs in order, then the cues as they are listed.
func (r *Rally) Timeline() []Entry {
	var all []Entry
	moment := func(what Timed, t units.Seconds) { all = append(all, Entry{what, t, t}) }
	for i, s := range r.Strokes {
		moment(Timed{Kind: Landing, Index: i}, s.down())
	}
	for _, id := range game.Players {
		all = append(all, r.timesOf(id)...)
	}
	for i, c := range r.Play.Cues {
		from, to := r.TimeAt(c.Span.From), r.TimeAt(c.Span.To)
		moment(Timed{Kind: CueFrom, Index: i}, from)
		moment(Timed{Kind: CueTo, Index: i}, to)
		all = append(all, Entry{Timed{Kind: Saying, Index: i}, from, to})
	}
	return all
}

// down is when the ball lands or, where it is volleyed, is met.
func (s Stroke) down() units.Seconds {
	if s.Volleyed {
		return s.At + s.Met
	}
	return s.At + s.Planned.Duration
}

// timesOf lists a player's places and the runs to them.
func (r *Rally) timesOf(id game.Player) []Entry {
	var all []Entry
	for i, stop := range r.Tracks[id].Stops {
		what := Timed{Arrival, id, stop.Index}
		if stop.Index == Implied {
			what = Timed{AtContact, id, stop.Keyframe.At.Event.Shot}
		}
		all = append(all, Entry{what, stop.At, stop.At})
		if i == 0 || stop.Index == Implied {
			continue
		}
		if run := r.Tracks[id].Runs[i-1]; run.Shown() {
			all = append(all,
				Entry{Timed{Start, id, stop.Index}, run.From, run.From},
				Entry{Timed{Running, id, stop.Index}, run.From, run.To})
		}
	}
	return all
}

// Shown says whether the run is long enough to be drawn as one.
func (run Run) Shown() bool { return run.Way.Length() >= LeastRun && run.To > run.From }

// The lanes of time, from the ball's at the top; a player's is 1 + the player.
const (
	BallLane    = 0
	CaptionLane = 1 + len(game.Players)
	SignalLane  = 2 + len(game.Players)
	Lanes       = 3 + len(game.Players)
)

// LaneOf is the lane that a thing belongs to.
func (r *Rally) LaneOf(what Timed) int {
	switch what.Kind {
	case Landing:
		return BallLane
	case Saying, CueFrom, CueTo:
		if what.Index < len(r.Play.Cues) {
			return CueLane(r.Play.Cues[what.Index].Kind)
		}
		return CaptionLane
	default:
		return 1 + int(what.Player)
	}
}

// CueLane is the lane of a kind of cue.
func CueLane(k lesson.CueKind) int {
	if k == lesson.Signal {
		return SignalLane
	}
	return CaptionLane
}

// Moment says whether the thing is at one moment and has no length.
func (k TimedKind) Moment() bool { return k != Running && k != Saying }

// EntryOf is a thing with its time; false if the play has none such.
func (r *Rally) EntryOf(what Timed) (Entry, bool) {
	for _, e := range r.Timeline() {
		if e.What == what {
			return e, true
		}
	}
	return Entry{}, false
}
