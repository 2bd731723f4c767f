package lesson

import (
	"fmt"
	"strconv"
	"strings"

	"homeside/model/units"
)

// MaxShots is the most shots a play may have.
const MaxShots = 60

// Moment is what happens to the ball in one shot.
type Moment uint8

// The moments of a shot, and the end of the rally.
const (
	Contact Moment = iota
	Net
	Bounce
	End
)

var momentNames = [...]string{"contact", "net", "bounce", "end"}

// String is "contact", "net", "bounce" or "end".
func (m Moment) String() string { return momentNames[m&3] }

// Event is a moment of a rally that runs and cues hang on. Shot counts from 0,
// the serve. The zero value is the serve's contact, time 0. End has no shot.
type Event struct {
	Shot   int
	Moment Moment
}

// TheEnd is the event "end".
var TheEnd = Event{Moment: End}

// ContactOf is the contact of shot i.
func ContactOf(i int) Event { return Event{i, Contact} }

// String is the event's name, such as "third.contact".
func (e Event) String() string {
	if e.Moment == End {
		return "end"
	}
	return ShotName(e.Shot) + "." + e.Moment.String()
}

var shotNames = [...]string{"serve", "return", "third", "fourth", "fifth"}

// ShotName is the name of shot i, counted from 0: serve, return, third, fourth, fifth, shot6 ...
func ShotName(i int) string {
	if i < len(shotNames) {
		return shotNames[i]
	}
	return "shot" + strconv.Itoa(i+1)
}

// ParseShot reads a shot's name.
func ParseShot(s string) (int, error) {
	for i, n := range shotNames {
		if n == s {
			return i, nil
		}
	}
	if digits, ok := strings.CutPrefix(s, "shot"); ok {
		n, err := strconv.Atoi(digits)
		if err == nil && n > len(shotNames) && n <= MaxShots && digits == strconv.Itoa(n) {
			return n - 1, nil
		}
	}
	return 0, fmt.Errorf("shot %q: want serve, return, third, fourth, fifth or shot6 to shot%d", s, MaxShots)
}

// ParseEvent reads an event's name.
func ParseEvent(s string) (Event, error) {
	if s == "end" {
		return TheEnd, nil
	}
	shot, moment, ok := strings.Cut(s, ".")
	if !ok {
		return Event{}, fmt.Errorf("event %q: want a shot and a moment such as third.contact, or end", s)
	}
	i, err := ParseShot(shot)
	if err != nil {
		return Event{}, fmt.Errorf("event %q: %w", s, err)
	}
	m, err := parse[Moment]("moment", moment, momentNames[:End])
	if err != nil {
		return Event{}, fmt.Errorf("event %q: %w", s, err)
	}
	return Event{i, m}, nil
}

// Anchor is a time said by an event: Offset after it, or before it if negative.
// The zero value is the serve's contact.
type Anchor struct {
	Event  Event
	Offset units.Seconds
}

// At is the anchor at an event itself.
func At(e Event) Anchor { return Anchor{Event: e} }
