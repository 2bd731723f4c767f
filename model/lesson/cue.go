package lesson

import "homeside/model/game"

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
