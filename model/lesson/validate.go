package lesson

import (
	"errors"
	"fmt"
	"slices"
	"strconv"
	"strings"
	"unicode/utf8"

	"homeside/model/court"
	"homeside/model/game"
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

// positive checks that v is an ordinary number above 0, at most hi.
func positive[T ~float64](c *checker, field string, v, hi T) {
	if !(v > 0 && v <= hi) { // also false for NaN
		c.say(field, "%v, want more than 0 and at most %v", float64(v), float64(hi))
	}
}

// member checks that v is one of the n members of a closed set.
func member[T ~uint8](c *checker, field string, v T, n int) {
	if int(v) >= n {
		c.say(field, "%d is not one of the %d choices", uint8(v), n)
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
		member(c, "format", l.Scoring.Format, len(game.Formats))
		if l.Scoring.To < 0 || l.Scoring.To > MaxPoints {
			c.say("to", "%d, want 1 to %d points", l.Scoring.To, MaxPoints)
		}
	})
	c.in("venue", func() {
		number(c, "behind_baseline_ft", l.Venue.BehindBaseline, 0, MaxRoom)
		number(c, "beside_sideline_ft", l.Venue.BesideSideline, 0, MaxRoom)
	})
	c.in("conditions", func() { c.conditions(l.Conditions) })
	for _, k := range ShotKinds {
		if m := l.Vocabulary[k]; m != nil {
			c.in("vocabulary/"+k.String(), func() { c.manner(*m) })
		}
	}
	for _, e := range court.Ends {
		c.in("teams/"+e.String(), func() { c.team(l.Teams[e], e) })
	}
	c.count("plays", len(l.Plays), MaxPlays)
	c.each("plays", len(l.Plays), func(i int) { c.play(l.Plays[i]) })
	c.in("match", func() { c.match(l.Match) })
	c.in("logo", func() { c.logo(l.Logo) })
	c.count("reels", len(l.Reels), MaxReels)
	c.each("reels", len(l.Reels), func(i int) { c.reel(l.Reels[i]) })
}

func (c *checker) team(t Team, e court.End) {
	c.text("name", t.Name, MaxName)
	if t.Starter < 0 || t.Starter > 2 {
		c.say("starter", "%d, want 1 or 2", t.Starter)
	}
	if t.Signs != (Signs{}) && !t.Signs.Whole() {
		c.say("signs", "%v, %v and %v, want each of %s once", t.Signs[0], t.Signs[1], t.Signs[2], orList(meaningNames[:]))
	}
	for i, p := range t.Players {
		c.in("players/"+game.PlayerOf(e, i+1).String(), func() { c.player(p) })
	}
}

func (c *checker) player(p Player) {
	c.text("name", p.Name, MaxName)
	c.text("initials", p.Initials, MaxInitials)
	member(c, "hand", p.Hand, len(handNames))
	member(c, "serving", p.Serving, len(wantNames))
	member(c, "receiving", p.Receiving, len(wantNames))
	if p.Pace == nil {
		return
	}
	c.in("pace", func() { c.pace(p) })
}

// tags are words to find a play by: each says something, none twice.
func (c *checker) tags(all []string) {
	c.count("tags", len(all), MaxTags)
	c.each("tags", len(all), func(i int) {
		c.text("", all[i], MaxTag)
		if strings.TrimSpace(all[i]) != all[i] || all[i] == "" {
			c.say("", "%q, want a word without blanks around it", all[i])
		}
		if slices.Contains(all[:i], all[i]) {
			c.say("", "%q stands here twice", all[i])
		}
	})
}

func (c *checker) play(p Play) {
	c.text("title", p.Title, MaxTitle)
	c.text("notes", p.Notes, MaxNotes)
	c.tags(p.Tags)
	number(c, "lead_s", p.Lead, 0, MaxOffset)
	c.in("situation", func() { c.situation(p.Situation) })
	if p.Front != nil {
		member(c, "front", *p.Front, len(game.Players))
	}
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
	if p.Photo != nil {
		c.in("photo", func() { c.photo(*p.Photo) })
	}
}

// situation leaves it to the rules whether a call can come up in a game.
func (c *checker) situation(s Situation) {
	call := s.Call
	if least, most := min(call.Serving, call.Receiving), max(call.Serving, call.Receiving); least < 0 || most > MaxCall {
		c.say("call", "%v, want scores from 0 to %d", call, MaxCall)
	}
	if call.Server < 0 || call.Server > 2 {
		c.say("call", "%v, want server 1 or 2", call)
	}
	member(c, "serving", s.Serving, len(court.Ends))
}

func (c *checker) shot(p Play, i int) {
	s := p.Shots[i]
	member(c, "by", s.By, len(game.Players))
	if i > 0 && p.Shots[i-1].By.Team() == s.By.Team() {
		c.say("by", "%v hits after %v: the teams take turns", s.By, p.Shots[i-1].By)
	}
	member(c, "kind", s.Kind, len(shotKindNames))
	c.in("aim", func() { c.point(s.Aim) })
	c.intent(s.Intent)
	member(c, "arc", s.Arc, len(arcNames))
	member(c, "meet", s.Meet.How, len(meetNames))
	number(c, "spin_rpm", s.Spin, -MaxSpin, MaxSpin)
	number(c, "side_rpm", s.Side, -MaxSpin, MaxSpin)
	if s.Airborne && i > 0 {
		c.say("airborne", "counts only for the serve")
	}
	if s.Meet.How.AtHeight() {
		number(c, "meet_ft", s.Meet.Height, 0, MaxHeight)
	}
	if s.From != nil && i > 0 {
		c.say("from", "counts only for the serve: later balls are struck where they are met")
	} else if s.From != nil {
		c.in("from", func() {
			c.point(s.From.Point)
			number(c, "z_ft", s.From.Height, 0, MaxHeight)
		})
	}
	c.scatter(s.Error)
}

func (c *checker) intent(in Intent) {
	switch in.Kind {
	case ByApex:
		positive(c, in.Kind.String(), in.Apex, MaxHeight)
	case BySpeed:
		positive(c, in.Kind.String(), in.Speed, MaxSpeed)
	case ByTime:
		positive(c, in.Kind.String(), in.Time, MaxFlight)
	case ByNetClear:
		number(c, in.Kind.String(), in.NetClear, -court.NetAtPosts, MaxHeight)
	default:
		c.say("", "intent %d is not one of %s", in.Kind, orList(IntentNames[:]))
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
		member(c, "event", a.Event.Moment, len(momentNames))
		if a.Event.Moment == End && a.Event.Shot != 0 {
			c.say("event", "the end of a play has no shot, not %d", a.Event.Shot)
		}
		if a.Event.Moment != End && (a.Event.Shot < 0 || a.Event.Shot >= len(p.Shots)) {
			c.say("event", "shot %d: the play has only %d", a.Event.Shot+1, len(p.Shots))
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
	member(c, "kind", m.Kind, len(markNames))
	if m.Kind.HasTip() {
		c.in("tip", func() { c.point(m.Tip) })
	}
	c.text("text", m.Text, MaxText)
}

func (c *checker) cue(p Play, q Cue) {
	c.span(p, q.Span)
	c.text("text", q.Text, MaxText)
	member(c, "kind", q.Kind, len(cueNames))
	if q.Kind == Signal {
		c.signal(q)
	}
}

func (c *checker) signal(q Cue) {
	member(c, "giver", q.Giver, len(game.Players))
	member(c, "reader", q.Reader, len(game.Players))
	member(c, "meaning", q.Meaning, len(meaningNames))
	if q.Reader != q.Giver.Partner() {
		c.say("reader", "%v reads a signal of %v: want partners", q.Reader, q.Giver)
	}
}
