package lesson

import "homeside/model/units"

// ShotKind is a word for a shot that coaches share.
type ShotKind uint8

// The kinds of shot. OwnShot is one that no word was given for.
const (
	OwnShot ShotKind = iota
	Serve
	WideServe
	FlatReturn
	DeepReturn
	Drive
	Drop
	Dink
	Lob
)

// ShotKinds lists the kinds that have a word.
var ShotKinds = [...]ShotKind{Serve, WideServe, FlatReturn, DeepReturn, Drive, Drop, Dink, Lob}

var shotKindNames = [...]string{"own", "serve", "wide-serve", "flat-return", "deep-return", "drive", "drop", "dink", "lob"}

// String is the kind's name in a lesson file.
func (k ShotKind) String() string {
	if int(k) < len(shotKindNames) {
		return shotKindNames[k]
	}
	return shotKindNames[OwnShot]
}

// ParseShotKind reads a kind's name, "own" included.
func ParseShotKind(s string) (ShotKind, error) {
	return parse[ShotKind]("kind of shot", s, shotKindNames[:])
}

// Manner is how a kind of shot is hit.
type Manner struct {
	Intent Intent
	Arc    Arc
	Spin   units.RPM
	Side   units.RPM
}

// manners are the built-in vocabulary. The figures are our assumptions, within
// what is published: drops of 10.9 to 13 m/s (Steyn et al. 2024, an apex near
// 5 ft), drives of 20 to 40 mph, 600 rpm as a typical spin (same paper).
var manners = [len(shotKindNames)]Manner{
	OwnShot:    {Intent: Apex(7)},
	Serve:      {Intent: Apex(7), Spin: 200},
	WideServe:  {Intent: Apex(6.5), Spin: 300, Side: 300},
	FlatReturn: {Intent: Apex(4.5)},
	DeepReturn: {Intent: Apex(10), Spin: -300},
	Drive:      {Intent: Speed(17), Spin: 600},
	Drop:       {Intent: Apex(5.5)},
	Dink:       {Intent: Apex(4)},
	Lob:        {Intent: Apex(20), Spin: 200},
}

// Vocabulary is what a lesson means by the kinds of shot: nil is the built-in manner.
type Vocabulary [len(shotKindNames)]*Manner

// Manner is how a kind of shot is hit in this lesson.
func (l Lesson) Manner(k ShotKind) Manner { return l.Vocabulary.Manner(k) }

// Manner is the lesson's own manner of a kind or else the built-in one.
func (v Vocabulary) Manner(k ShotKind) Manner {
	if int(k) >= len(v) {
		k = OwnShot
	}
	if v[k] != nil {
		return *v[k]
	}
	return manners[k]
}

// Hit is the shot hit in the manner of a kind: from where and to where it goes
// stays, and how the next player meets it.
func (s Shot) Hit(k ShotKind, m Manner) Shot {
	s.Kind, s.Intent, s.Arc, s.Spin, s.Side = k, m.Intent, m.Arc, m.Spin, m.Side
	return s
}
