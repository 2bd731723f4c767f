package present

import (
	"homeside/canvas/compose"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
	"homeside/words"
)

// Level is how much is said.
type Level uint8

// The levels of detail.
const (
	Words   Level = iota // what happens
	Times                // and when
	Figures              // and all figures
	levelCount
)

// show is what the picture shows at a level.
func (l Level) show() compose.Show {
	return compose.Show{NoTicks: l < Times, NoClock: l < Times, NoFigures: l < Figures}
}

// line says the event that is shown, at a level.
func (l Level) line(les lesson.Lesson, r *rally.Rally, now units.Seconds) string {
	e, ok := eventAt(r, now)
	if !ok {
		return words.T("Before the serve")
	}
	text := words.EventLine(les, r, e)
	if l >= Times {
		text += "  " + words.Seconds(e.At)
	}
	if l >= Figures {
		text += "   " + words.TopLine(r, r.ShotAt(now))
	}
	return text
}

// sameMoment is how far before an event the moment shown still is that event's.
const sameMoment units.Seconds = 1e-6

// eventAt is the last event at or before a moment that is reached; false before
// the serve.
func eventAt(r *rally.Rally, now units.Seconds) (last rally.Event, ok bool) {
	for _, e := range r.Events {
		if e.Reached && e.At <= now+sameMoment {
			last, ok = e, true
		}
	}
	return last, ok
}

// Pair is how two plays are shown.
type Pair uint8

// The ways.
const (
	Alone Pair = iota
	Overlaid
	Beside
	pairCount
)
