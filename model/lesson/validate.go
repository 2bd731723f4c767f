package lesson

import (
	"errors"
	"fmt"
	"math"
	"strconv"
	"unicode/utf8"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/units"
)

// ErrInvalid is what every Problem wraps.
var ErrInvalid = errors.New("lesson out of bounds")

// Problem is one thing in a lesson that lies outside the bounds.
type Problem struct {
	Pointer string // JSON pointer (RFC 6901) into the lesson's file
	Text    string // what is wrong and what is wanted
}

// Error says where and what.
func (p Problem) Error() string { return p.Pointer + ": " + p.Text }

// Unwrap is ErrInvalid.
func (p Problem) Unwrap() error { return ErrInvalid }

// Validate lists what lies outside the bounds, in the order of the document;
// nil for a sound lesson. A sound lesson can always be solved into rallies.
func Validate(l Lesson) []Problem {
	c := &checker{}
	c.lesson(l)
	return c.problems
}

type checker struct {
	at       string
	problems []Problem
}

// in checks a part of the document under its own name.
func (c *checker) in(name string, check func()) {
	outer := c.at
	c.at += "/" + name
	check()
	c.at = outer
}

// each checks every member of the list called name, or of the present part if name is empty.
func (c *checker) each(name string, n int, check func(i int)) {
	if name != "" {
		name += "/"
	}
	for i := range n {
		c.in(name+strconv.Itoa(i), func() { check(i) })
	}
}

func (c *checker) say(field, format string, args ...any) {
	at := c.at
	if field != "" {
		at += "/" + field
	}
	c.problems = append(c.problems, Problem{at, fmt.Sprintf(format, args...)})
}

func (c *checker) text(field, s string, most int) {
	if n := utf8.RuneCountInString(s); n > most {
		c.say(field, "%d characters, want at most %d", n, most)
	}
	if !utf8.ValidString(s) {
		c.say(field, "is not valid UTF-8 text")
	}
}

func (c *checker) count(field string, n, most int) {
	if n > most {
		c.say(field, "%d entries, want at most %d", n, most)
	}
}

// number checks that v is an ordinary number from lo to hi.
func number[T ~float64](c *checker, field string, v, lo, hi T) {
	if !(v >= lo && v <= hi) { // also false for NaN
		c.say(field, "%v, want a number from %v to %v", float64(v), float64(lo), float64(hi))
	}
}

func (c *checker) point(p court.Point) {
	number(c, "x_ft", p.X, -MaxCoordinate, MaxCoordinate)
	number(c, "y_ft", p.Y, -MaxCoordinate, MaxCoordinate)
}

func (c *checker) lesson(l Lesson) {
	c.text("title", l.Title, MaxTitle)
	c.text("notes", l.Notes, MaxNotes)
	c.in("scoring", func() {
		if l.Scoring.To < 0 || l.Scoring.To > MaxPoints {
			c.say("to", "%d, want 1 to %d points", l.Scoring.To, MaxPoints)
		}
	})
	c.in("venue", func() {
		number(c, "behind_baseline_ft", l.Venue.BehindBaseline, 0, MaxRoom)
		number(c, "beside_sideline_ft", l.Venue.BesideSideline, 0, MaxRoom)
	})
	for _, e := range court.Ends {
		c.in("teams/"+e.String(), func() { c.team(l.Teams[e], e) })
	}
	c.count("plays", len(l.Plays), MaxPlays)
	c.each("plays", len(l.Plays), func(i int) { c.play(l.Plays[i]) })
}

func (c *checker) team(t Team, e court.End) {
	c.text("name", t.Name, MaxName)
	if t.Starter < 0 || t.Starter > 2 {
		c.say("starter", "%d, want 1 or 2", t.Starter)
	}
	for i, p := range t.Players {
		c.in("players/"+game.PlayerOf(e, i+1).String(), func() { c.player(p) })
	}
}

func (c *checker) player(p Player) {
	c.text("name", p.Name, MaxName)
	c.text("initials", p.Initials, MaxInitials)
	if p.Pace == nil {
		return
	}
	c.in("pace", func() { c.pace(p) })
}

func (c *checker) play(p Play) {
	c.text("title", p.Title, MaxTitle)
	c.text("notes", p.Notes, MaxNotes)
	number(c, "lead_s", p.Lead, 0, MaxOffset)
	c.count("shots", len(p.Shots), MaxShots)
	c.count("marks", len(p.Marks), MaxMarks)
	c.count("cues", len(p.Cues), MaxCues)
	if len(p.Shots) == 0 {
		c.say("shots", "a play needs at least a serve")
		return
	}
	c.each("shots", len(p.Shots), func(i int) { c.shot(p, i) })
	for _, id := range game.Players {
		c.in("tracks/"+id.String(), func() { c.track(p, id) })
	}
	c.each("marks", len(p.Marks), func(i int) { c.mark(p, p.Marks[i]) })
	c.each("cues", len(p.Cues), func(i int) { c.cue(p, p.Cues[i]) })
}

func (c *checker) shot(p Play, i int) {
	s := p.Shots[i]
	if i > 0 && p.Shots[i-1].By.Team() == s.By.Team() {
		c.say("by", "%v hits after %v: the teams take turns", s.By, p.Shots[i-1].By)
	}
	c.in("aim", func() { c.point(s.Aim) })
	c.intent(s.Intent)
	number(c, "spin_rpm", s.Spin, -MaxSpin, MaxSpin)
	number(c, "side_rpm", s.Side, -MaxSpin, MaxSpin)
	if s.Meet.How != AtTop {
		number(c, "meet_ft", s.Meet.Height, 0, MaxHeight)
	}
	if s.From != nil {
		c.in("from", func() {
			c.point(s.From.Point)
			number(c, "z_ft", s.From.Height, 0, MaxHeight)
		})
	}
}

func (c *checker) intent(in Intent) {
	least := math.SmallestNonzeroFloat64 // more than nothing
	switch in.Kind {
	case ByApex:
		number(c, in.Kind.String(), in.Apex, units.Feet(least), MaxHeight)
	case BySpeed:
		number(c, in.Kind.String(), in.Speed, units.MetresPerSecond(least), MaxSpeed)
	case ByTime:
		number(c, in.Kind.String(), in.Time, units.Seconds(least), MaxFlight)
	default:
		number(c, in.Kind.String(), in.NetClear, -court.NetAtPosts, MaxHeight)
	}
}

func (c *checker) track(p Play, id game.Player) {
	track := p.Tracks[id]
	c.count("", len(track), MaxKeyframes)
	if len(track) == 0 {
		c.say("", "%v has no place: want at least one keyframe", id)
	}
	c.each("", len(track), func(i int) { c.keyframe(p, track[i]) })
}

func (c *checker) keyframe(p Play, k Keyframe) {
	c.anchor(p, "at", k.At)
	c.point(k.Place)
	number(c, "facing_deg", k.Facing, -MaxTurn, MaxTurn)
	if k.Via != nil {
		c.in("via", func() { c.point(*k.Via) })
	}
	if k.Leave != nil {
		c.anchor(p, "leave", *k.Leave)
	}
}

func (c *checker) anchor(p Play, field string, a Anchor) {
	c.in(field, func() {
		if a.Event.Moment != End && (a.Event.Shot < 0 || a.Event.Shot >= len(p.Shots)) {
			c.say("event", "%v: the play has only %d shots", a.Event, len(p.Shots))
		}
		number(c, "offset_s", a.Offset, -MaxOffset, MaxOffset)
	})
}

func (c *checker) span(p Play, s Span) {
	c.anchor(p, "from", s.From)
	c.anchor(p, "to", s.To)
}

func (c *checker) mark(p Play, m Mark) {
	c.span(p, m.Span)
	c.point(m.Place)
	c.in("tip", func() { c.point(m.Tip) })
	c.text("text", m.Text, MaxText)
}

func (c *checker) cue(p Play, q Cue) {
	c.span(p, q.Span)
	c.text("text", q.Text, MaxText)
	if q.Kind == Signal && q.Giver.Team() != q.Reader.Team() {
		c.say("reader", "%v reads a signal of %v: want partners", q.Reader, q.Giver)
	}
}
