package lesson

import (
	"homeside/model/court"
	"homeside/model/game"
)

// Span is a stretch of a play between two anchors.
type Span struct{ From, To Anchor }

// CueKind is what a cue is.
type CueKind uint8

// The kinds of cue.
const (
	Caption CueKind = iota
	Signal
)

var cueNames = [...]string{"caption", "signal"}

// String is "caption" or "signal".
func (k CueKind) String() string { return cueNames[k&1] }

// ParseCue reads "caption" or "signal".
func ParseCue(s string) (CueKind, error) { return parse[CueKind]("cue", s, cueNames[:]) }

// Cue is something said or shown for a while.
type Cue struct {
	Kind    CueKind
	Span    Span
	Text    string      // the caption; for a signal, what is answered
	Giver   game.Player // signal: who shows it
	Reader  game.Player // signal: who reads and answers it
	Meaning Meaning     // signal
}

// Meaning is what a signal says.
type Meaning uint8

// The meanings in use: a closed fist says stay, an open hand says switch.
const (
	Stay Meaning = iota
	Switch
	Fake
)

var meaningNames = [...]string{"stay", "switch", "fake"}

// String is "stay", "switch" or "fake".
func (m Meaning) String() string { return meaningNames[m%3] }

// ParseMeaning reads "stay", "switch" or "fake".
func ParseMeaning(s string) (Meaning, error) { return parse[Meaning]("meaning", s, meaningNames[:]) }

// MarkKind is what a mark is.
type MarkKind uint8

// The kinds of mark.
const (
	TextMark MarkKind = iota
	ArrowMark
	ObstacleMark // a fence, a bench, a post: it stands there all the time, whatever the span
)

var markNames = [...]string{"text", "arrow", "obstacle"}

// String is "text", "arrow" or "obstacle".
func (k MarkKind) String() string { return markNames[k%3] }

// ParseMark reads "text", "arrow" or "obstacle".
func ParseMark(s string) (MarkKind, error) { return parse[MarkKind]("mark", s, markNames[:]) }

// Mark is something drawn on the court for a while.
type Mark struct {
	Kind  MarkKind
	Span  Span
	Place court.Point // where the text or the obstacle stands or the arrow starts
	Tip   court.Point // arrow: where it points
	Text  string
}
