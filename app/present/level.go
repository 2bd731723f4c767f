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
	e, ok := r.EventAt(now)
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

// Pair is how two plays are shown.
type Pair uint8

// The ways.
const (
	Alone Pair = iota
	Overlaid
	Beside
	pairCount
)
