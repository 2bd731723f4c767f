package rally

import (
	"cmp"
	"fmt"
	"slices"
	"sort"

	"homeside/model/flight"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

// AfterLast is how long a rally is shown after the last ball has landed or
// stopped: our choice, long enough to see where everybody stands.
const AfterLast units.Seconds = 1

// Rally is a solved play.
type Rally struct {
	Play    lesson.Play
	Teams   [2]lesson.Team // by court.End
	From    units.Seconds  // the first moment shown, before the serve
	To      units.Seconds  // the end
	Events  []Event        // in the order of their times
	Strokes []Stroke       // one for each shot
	Tracks  [4]Track       // by game.Player
	Model   flight.Model   // the ball, air and court it was solved with

	stopped units.Seconds // when a ball into the net ended the rally; To if none did
	times   map[lesson.Event]units.Seconds
}

// Event is a moment of the rally with its time.
type Event struct {
	Name    lesson.Event
	At      units.Seconds
	Reached bool // false after a ball into the net, and for the bounce of a volleyed ball
}

// Solve solves play i of a sound lesson (see lesson.Validate).
func Solve(l lesson.Lesson, i int) (*Rally, error) { return SolveWith(l, i, ModelOf(l)) }

// SolveWith is Solve with a ball, air and court of the caller's.
func SolveWith(l lesson.Lesson, i int, m flight.Model) (*Rally, error) {
	if i < 0 || i >= len(l.Plays) {
		return nil, fmt.Errorf("play %d: the lesson has %d", i+1, len(l.Plays))
	}
	p := l.Plays[i]
	r := &Rally{Play: p, Teams: l.Teams, From: 0 - p.Lead, Model: m, times: map[lesson.Event]units.Seconds{}}
	if err := r.solveBall(); err != nil {
		return nil, fmt.Errorf("play %d: %w", i+1, err)
	}
	r.listEvents()
	for _, id := range game.Players {
		r.Tracks[id] = r.solveTrack(id)
		if err := r.runTrack(id, &r.Tracks[id]); err != nil {
			return nil, fmt.Errorf("play %d: %w", i+1, err)
		}
	}
	return r, nil
}

// Player is the person with this id.
func (r *Rally) Player(id game.Player) lesson.Player {
	return r.Teams[id.Team()].Players[id.Number()-1]
}

// NameOf is a person's name or, where the lesson has none, the person's id.
func (r *Rally) NameOf(id game.Player) string {
	if n := r.Player(id).Name; n != "" {
		return n
	}
	return id.String()
}

// TimeOf is when an event happens or, if the rally stops before, was planned
// to; false if the play has no such event.
func (r *Rally) TimeOf(e lesson.Event) (units.Seconds, bool) {
	t, ok := r.times[e]
	return t, ok
}

// TimeAt is the time an anchor means. The net of a ball that never passes over
// it stands for the ball's contact.
func (r *Rally) TimeAt(a lesson.Anchor) units.Seconds {
	t, ok := r.times[a.Event]
	if !ok {
		t = r.times[lesson.ContactOf(a.Event.Shot)]
	}
	return t + a.Offset
}

// AnchorAt is the anchor that a change made at time t hangs on: the last
// contact at or before t, the serve's for times before it.
func (r *Rally) AnchorAt(t units.Seconds) lesson.Anchor {
	i := max(r.strokeAt(t), 0)
	return lesson.Anchor{Event: lesson.ContactOf(i), Offset: t - r.Strokes[i].At}
}

// sameMoment is how far before an event a moment still is that event's.
const sameMoment units.Seconds = 1e-6

// EventAt is the last event at or before a moment that comes to pass; false
// before the serve.
func (r *Rally) EventAt(t units.Seconds) (last Event, ok bool) {
	for _, e := range r.Events {
		if e.Reached && e.At <= t+sameMoment {
			last, ok = e, true
		}
	}
	return last, ok
}

// Reached says whether the rally still goes on at time t.
func (r *Rally) Reached(t units.Seconds) bool { return t <= r.stopped }

// strokeAt is the last stroke that begins at or before t, -1 before the serve.
func (r *Rally) strokeAt(t units.Seconds) int {
	return sort.Search(len(r.Strokes), func(i int) bool { return r.Strokes[i].At > t }) - 1
}

func (r *Rally) listEvents() {
	for i, s := range r.Strokes {
		r.event(lesson.Event{Shot: i, Moment: lesson.Contact}, s.At, true)
		if s.Planned.Net.Reached {
			r.event(lesson.Event{Shot: i, Moment: lesson.Net}, s.At+s.Planned.Net.T, true)
		}
		r.event(lesson.Event{Shot: i, Moment: lesson.Bounce}, s.At+s.Planned.Duration, !s.Volleyed)
	}
	r.event(lesson.TheEnd, r.To, true)
	slices.SortStableFunc(r.Events, func(a, b Event) int { return cmp.Compare(a.At, b.At) })
}

func (r *Rally) event(e lesson.Event, t units.Seconds, reached bool) {
	r.times[e] = t
	r.Events = append(r.Events, Event{e, t, reached && (t <= r.stopped || e == lesson.TheEnd)})
}

// Stopped is when a ball into the net ends the rally, its end if none does.
func (r *Rally) Stopped() units.Seconds { return r.stopped }
