package session

import (
	"errors"
	"math"

	"homeside/model/edit"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
	"homeside/words"
)

// Retime is a thing of the play taken hold of in time: the play as it is saved.
// It gives lessons to preview and keeps none.
type Retime struct {
	lesson lesson.Lesson
	index  int
	rally  *rally.Rally
	entry  rally.Entry
}

// Moved is a lesson in which the thing is at another time, which may be another
// than asked for: things keep their order and stay within the rally.
type Moved struct {
	Lesson lesson.Lesson
	At     units.Seconds
	On     lesson.Anchor // what At hangs on
	Exact  bool          // At is the anchor's event itself
}

// errGone says that the play has no such thing.
var errGone = errors.New("the play has nothing of the kind")

// Retime takes hold of a thing; the error says for people why its time cannot be
// changed.
func (s *Session) Retime(what rally.Timed) (Retime, error) {
	l := s.history.Lesson()
	if s.play >= len(l.Plays) {
		return Retime{}, errGone
	}
	r, err := rally.Solve(l, s.play)
	if err != nil {
		return Retime{}, err
	}
	entry, ok := r.EntryOf(what)
	if !ok {
		return Retime{}, errGone
	}
	switch {
	case what.Kind == rally.AtContact:
		return Retime{}, errors.New(words.PlaceOfHit(r.NameOf(what.Player), what.Index))
	case what.Kind == rally.Landing && r.Play.Shots[what.Index].Intent.Kind != lesson.ByTime:
		return Retime{}, errors.New(words.NotByTime(what.Index))
	}
	return Retime{l, s.play, r, entry}, nil
}

// What is the thing held.
func (m Retime) What() rally.Timed { return m.entry.What }

// At is the thing's time as it is saved: the start of one that has a length.
func (m Retime) At() units.Seconds { return m.entry.From }

// To is the lesson with the thing at time t or, if an event is within reach of
// it, at the event's. A reach of 0 snaps to nothing.
func (m Retime) To(t, reach units.Seconds) Moved {
	if math.IsNaN(float64(t)) {
		t = m.At()
	}
	what := m.entry.What
	switch what.Kind {
	case rally.Landing:
		return m.land(t)
	case rally.Running, rally.Saying:
		return m.shift(t, reach)
	case rally.Start:
		return m.start(t, reach)
	case rally.CueFrom, rally.CueTo:
		return m.trim(t, reach)
	default:
		return m.arrive(t, reach)
	}
}

// hundredth is what free times are rounded to.
const hundredth = 100

// anchor is what a time hangs on: an event within reach, or else the last
// contact before it, at whole hundredths of a second.
func (m Retime) anchor(t, reach units.Seconds) (a lesson.Anchor, at units.Seconds, exact bool) {
	if e, ok := m.event(t, reach); ok {
		return lesson.At(e.Name), e.At, true
	}
	a = m.rally.AnchorAt(t)
	a.Offset = units.Seconds(math.Round(float64(a.Offset)*hundredth) / hundredth)
	return a, m.rally.TimeAt(a), false
}

// event is the nearest event within reach of a time.
func (m Retime) event(t, reach units.Seconds) (found rally.Event, ok bool) {
	best := reach
	for _, e := range m.rally.Events {
		drawn := e.Reached || e.Name.Moment == lesson.Contact
		if d := max(t-e.At, e.At-t); drawn && (d < best || d == best && !ok && reach > 0) {
			found, ok, best = e, true, d
		}
	}
	return found, ok
}

// within moves a time into bounds: at one of them the anchor is the bound's own.
func (m Retime) within(t, reach, lo, hi units.Seconds) (lesson.Anchor, units.Seconds, bool) {
	a, at, exact := m.anchor(t, reach)
	if at >= lo && at <= hi {
		return a, at, exact
	}
	bound := min(max(at, lo), hi)
	if e, ok := m.event(bound, sameMoment); ok {
		return lesson.At(e.Name), e.At, true
	}
	return m.rally.AnchorAt(bound), bound, false
}

func (m Retime) with(p lesson.Play, at units.Seconds, on lesson.Anchor, exact bool) Moved {
	return Moved{edit.ReplacePlay(m.lesson, m.index, p), at, on, exact}
}

func (m Retime) play() lesson.Play { return m.lesson.Plays[m.index] }

// arrive moves a keyframe between its neighbours in the list.
func (m Retime) arrive(t, reach units.Seconds) Moved {
	what := m.entry.What
	lo, hi := m.neighbours(what)
	if k := m.play().Tracks[what.Player][what.Index]; k.Leave != nil {
		lo = max(lo, min(m.rally.TimeAt(*k.Leave), m.entry.From))
	}
	a, at, exact := m.within(t, reach, lo, hi)
	return m.with(edit.Arrive(m.play(), what.Player, what.Index, a), at, a, exact)
}

// neighbours are the times of the keyframes listed before and after one.
func (m Retime) neighbours(what rally.Timed) (lo, hi units.Seconds) {
	lo, hi = m.rally.From, m.rally.To
	for _, stop := range m.rally.Tracks[what.Player].Stops {
		switch stop.Index {
		case what.Index - 1:
			lo = max(lo, stop.At)
		case what.Index + 1:
			hi = min(hi, stop.At)
		}
	}
	return min(lo, hi), hi
}

// startBounds are the times of the place a run starts from and of the one it
// leads to.
func (m Retime) startBounds() (lo, hi units.Seconds) {
	stops := m.rally.Tracks[m.entry.What.Player].Stops
	for i, stop := range stops {
		if stop.Index == m.entry.What.Index && i > 0 {
			return stops[i-1].At, stop.At
		}
	}
	return m.rally.From, m.rally.To
}

// leastRunning is the shortest time that the hand leaves a run.
const leastRunning units.Seconds = 0.1

// start moves the start of a run. As early as it can be it is no longer stated.
func (m Retime) start(t, reach units.Seconds) Moved {
	what := m.entry.What
	lo, hi := m.startBounds()
	a, at, exact := m.within(t, reach, lo, max(hi-leastRunning, lo))
	leave := &a
	if at <= lo+max(sameMoment, reach/2) {
		leave, at = nil, lo
	}
	return m.with(edit.Leave(m.play(), what.Player, what.Index, leave), at, a, exact)
}

// shift moves a run or a cue as a whole, by the end that meets an event.
func (m Retime) shift(t, reach units.Seconds) Moved {
	what := m.entry.What
	if what.Kind == rally.Saying {
		from, to := m.ends(t, reach, m.rally.From, m.rally.To)
		c := m.play().Cues[what.Index]
		c.Span = lesson.Span{From: from.on, To: to.on}
		return m.with(edit.ReplaceCue(m.play(), what.Index, c), from.at, from.on, from.exact)
	}
	lo, _ := m.startBounds()
	_, hi := m.neighbours(what)
	from, to := m.ends(t, reach, lo, hi)
	leave := &from.on
	if from.at <= lo+sameMoment {
		leave = nil
	}
	p := edit.Arrive(m.play(), what.Player, what.Index, to.on)
	return m.with(edit.Leave(p, what.Player, what.Index, leave), from.at, from.on, from.exact)
}

// end is one end of what is moved as a whole.
type end struct {
	on    lesson.Anchor
	at    units.Seconds
	exact bool
}

func (m Retime) end(t, reach units.Seconds) end {
	on, at, exact := m.anchor(t, reach)
	return end{on, at, exact}
}

// ends are where both ends come to when the first is led to t: as far apart as
// they are, within bounds, and on an event with the one that is nearer to one.
func (m Retime) ends(t, reach, lo, hi units.Seconds) (from, to end) {
	long := m.entry.To - m.entry.From
	t = min(max(t, lo), max(hi-long, lo))
	from, to = m.end(t, reach), m.end(t+long, reach)
	off := func(e end, at units.Seconds) units.Seconds { return max(e.at-at, at-e.at) }
	if to.exact && to.at-long >= lo && (!from.exact || off(to, t+long) < off(from, t)) {
		return m.end(to.at-long, sameMoment), to
	}
	return from, m.end(min(from.at+long, hi), sameMoment)
}

// leastCue is the shortest time that a cue is shown.
const leastCue units.Seconds = 0.2

// trim moves one end of a cue.
func (m Retime) trim(t, reach units.Seconds) Moved {
	what := m.entry.What
	c := m.play().Cues[what.Index]
	lo, hi := m.rally.From, m.rally.To
	end := &c.Span.From
	if what.Kind == rally.CueFrom {
		hi = max(m.rally.TimeAt(c.Span.To)-leastCue, lo)
	} else {
		lo = min(m.rally.TimeAt(c.Span.From)+leastCue, hi)
		end = &c.Span.To
	}
	a, at, exact := m.within(t, reach, lo, hi)
	*end = a
	return m.with(edit.ReplaceCue(m.play(), what.Index, c), at, a, exact)
}

// leastFlight is the shortest time in the air that the hand can ask for.
const leastFlight units.Seconds = 0.2

// land gives the shot the time in the air that brings it down, or to the volley,
// at t: by a few secant steps, as a volley's time is not the landing's.
func (m Retime) land(t units.Seconds) Moved {
	i := m.entry.What.Index
	contact := m.rally.Strokes[i].At
	hit := lesson.At(lesson.ContactOf(i))
	air := m.play().Shots[i].Intent.Time
	at, moved := m.entry.From, m.play()
	for range 4 {
		if max(at-t, t-at) < sameMoment || at <= contact {
			break
		}
		air = min(max(air*(t-contact)/(at-contact), leastFlight), lesson.MaxFlight)
		moved = edit.TakeTime(m.play(), i, units.Seconds(math.Round(float64(air)*hundredth)/hundredth))
		r, err := rally.Solve(edit.ReplacePlay(m.lesson, m.index, moved), m.index)
		if err != nil {
			break
		}
		if e, ok := r.EntryOf(m.entry.What); ok {
			at = e.From
		}
	}
	hit.Offset = at - contact
	return m.with(moved, at, hit, false)
}
