package lessonfile

import (
	"errors"
	"fmt"
	"strconv"

	"github.com/go-json-experiment/json/jsontext"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

// reader turns a file into a lesson. It keeps the first mistake and where it is.
type reader struct {
	at      string            // JSON pointer of the part at hand
	words   lesson.Vocabulary // of the lesson being read
	wrong   error
	wrongAt string
}

// fromFile is the lesson that a file states, or the file's first mistake and its place.
func fromFile(f file) (lesson.Lesson, jsontext.Pointer, error) {
	r := &reader{}
	l := r.lesson(f)
	if r.wrong != nil {
		return lesson.Lesson{}, jsontext.Pointer(r.wrongAt), r.wrong
	}
	return l, "", nil
}

// fail blames a field, or the part at hand if field is empty.
func (r *reader) fail(field string, err error) {
	if r.wrong != nil {
		return
	}
	r.wrong, r.wrongAt = err, r.at
	if field != "" {
		r.wrongAt += "/" + field
	}
}

// in reads a part of the file under its own name.
func (r *reader) in(name string, read func()) {
	outer := r.at
	r.at += "/" + name
	read()
	r.at = outer
}

// each reads a list; an empty one gives nil.
func each[F, T any](r *reader, name string, list []F, read func(F) T) []T {
	if len(list) == 0 || r.wrong != nil {
		return nil
	}
	out := make([]T, len(list))
	for i, entry := range list {
		r.in(name+"/"+strconv.Itoa(i), func() { out[i] = read(entry) })
	}
	return out
}

// named reads one of a closed set of names; an absent one is the set's zero.
func named[T any](r *reader, field, name string, parse func(string) (T, error)) (v T) {
	if name != "" {
		return needNamed(r, field, name, parse)
	}
	return v
}

func needNamed[T any](r *reader, field, name string, parse func(string) (T, error)) T {
	v, err := parse(shorten(name))
	if err != nil {
		r.fail(field, err)
	}
	return v
}

var errMissing = errors.New("is missing")

func need[T any](r *reader, field string, v *T) (zero T) {
	if v == nil {
		r.fail(field, errMissing)
		return zero
	}
	return *v
}

func (r *reader) place(x, y *units.Feet) court.Point {
	return court.Point{X: need(r, "x_ft", x), Y: need(r, "y_ft", y)}
}

func (r *reader) point(field string, p *point) (at court.Point) {
	if p == nil {
		r.fail(field, errMissing)
		return at
	}
	r.in(field, func() { at = r.place(p.X, p.Y) })
	return at
}

func (r *reader) anchor(field string, a *anchor, absent lesson.Event) lesson.Anchor {
	if a == nil {
		return lesson.At(absent)
	}
	event := absent
	if a.Event != "" {
		r.in(field, func() { event = needNamed(r, "event", a.Event, lesson.ParseEvent) })
	}
	return lesson.Anchor{Event: event, Offset: a.Offset}
}

func (r *reader) span(from, to *anchor) lesson.Span {
	return lesson.Span{
		From: r.anchor("from", from, lesson.Event{}),
		To:   r.anchor("to", to, lesson.TheEnd),
	}
}

func (r *reader) lesson(f file) lesson.Lesson {
	l := lesson.Lesson{
		Title: f.Title,
		Notes: f.Notes,
		Venue: lesson.Venue{BehindBaseline: f.Venue.BehindBaseline, BesideSideline: f.Venue.BesideSideline},
	}
	l.Scoring.To = f.Scoring.To
	r.in("conditions", func() { l.Conditions = r.conditions(f.Conditions) })
	r.in("vocabulary", func() { l.Vocabulary = r.vocabulary(f.Vocabulary) })
	r.words = l.Vocabulary
	r.in("scoring", func() { l.Scoring.Format = named(r, "format", f.Scoring.Format, game.ParseFormat) })
	near, far := f.Teams.Near, f.Teams.Far
	l.Teams[court.Near] = r.team(court.Near, near.Name, near.Starter, near.Signs, near.Players.One, near.Players.Two)
	l.Teams[court.Far] = r.team(court.Far, far.Name, far.Starter, far.Signs, far.Players.One, far.Players.Two)
	l.Plays = each(r, "plays", f.Plays, r.play)
	r.in("match", func() { l.Match = r.match(f.Match) })
	l.Logo.PNG = string(f.Logo.PNG)
	l.Reels = each(r, "reels", f.Reels, r.reel)
	return l
}

func (r *reader) team(e court.End, name string, starter int, s signs, players ...player) lesson.Team {
	t := lesson.Team{Name: name, Starter: starter}
	r.in("teams/"+e.String(), func() { t.Signs = r.signs(s) })
	for i, p := range players {
		r.in("teams/"+e.String()+"/players/"+game.PlayerOf(e, i+1).String(), func() { t.Players[i] = r.player(p) })
	}
	return t
}

// errAlike is said of signs that are all stay, too: in a lesson those are none.
var errAlike = errors.New("two signs mean the same, want each of stay, switch and fake once")

func (r *reader) signs(s signs) (out lesson.Signs) {
	if s == (signs{}) {
		return out
	}
	r.in("signs", func() {
		out = lesson.Signs{
			needNamed(r, "closed_fist", s.Fist, lesson.ParseMeaning),
			needNamed(r, "open_hand", s.Open, lesson.ParseMeaning),
			needNamed(r, "two_fingers", s.Two, lesson.ParseMeaning),
		}
		if !out.Whole() {
			r.fail("", errAlike)
		}
	})
	return out
}

func (r *reader) player(p player) lesson.Player {
	return lesson.Player{
		Name:       p.Name,
		Initials:   p.Initials,
		Hand:       named(r, "hand", p.Hand, lesson.ParseHand),
		Serving:    named(r, "serving", p.Serving, lesson.ParseWant),
		Receiving:  named(r, "receiving", p.Receiving, lesson.ParseWant),
		Wheelchair: p.Wheelchair,
		Pace:       r.pace(p.Pace),
	}
}

func (r *reader) play(p play) lesson.Play {
	out := lesson.Play{Title: p.Title, Notes: p.Notes, Lead: lesson.DefaultLead}
	if p.Lead != nil {
		out.Lead = *p.Lead
	}
	r.in("situation", func() {
		out.Situation.Call = named(r, "call", p.Situation.Call, game.ParseCall)
		out.Situation.Serving = named(r, "serving", p.Situation.Serving, parseEnd)
	})
	if p.Front != "" {
		out.Front = new(needNamed(r, "front", p.Front, game.ParsePlayer))
	}
	out.Tags = each(r, "tags", p.Tags, func(t tag) string { return string(t) })
	out.Shots = each(r, "shots", p.Shots, r.shot)
	for id, track := range p.Tracks.all() {
		out.Tracks[id] = each(r, "tracks/"+game.Player(id).String(), track, func(k keyframe) lesson.Keyframe {
			return r.keyframe(k, game.Player(id).Team())
		})
	}
	out.Marks = each(r, "marks", p.Marks, r.mark)
	out.Cues = each(r, "cues", p.Cues, r.cue)
	if p.Photo != nil {
		r.in("photo", func() { out.Photo = new(r.photo(*p.Photo)) })
	}
	return out
}

func (t tracks) all() [4][]keyframe { return [4][]keyframe{t.Near1, t.Near2, t.Far1, t.Far2} }

func parseEnd(s string) (court.End, error) {
	for _, e := range court.Ends {
		if e.String() == s {
			return e, nil
		}
	}
	return 0, fmt.Errorf("team %q: want near or far", s)
}

func (r *reader) shot(s shot) lesson.Shot {
	out := lesson.Shot{
		By:    needNamed(r, "by", s.By, game.ParsePlayer),
		Kind:  named(r, "kind", s.Kind, lesson.ParseShotKind),
		Aim:   r.point("aim", s.Aim),
		Arc:   named(r, "arc", s.Arc, lesson.ParseArc),
		Spin:  s.Spin,
		Side:  s.Side,
		Meet:  r.meet(s),
		Error: s.Error.aimError(),

		Airborne: s.Airborne,
	}
	r.hit(&out, s)
	if f := s.From; f != nil {
		r.in("from", func() { out.From = &lesson.Place{Point: r.place(f.X, f.Y), Height: need(r, "z_ft", f.Z)} })
	}
	return out
}

func (r *reader) meet(s shot) lesson.Meet {
	how := named(r, "meet", s.Meet, lesson.ParseMeet)
	if how.AtHeight() {
		return lesson.Meet{How: how, Height: need(r, "meet_ft", s.MeetAt)}
	}
	if s.MeetAt != nil {
		r.fail("meet_ft", errors.New(`counts only with "meet" rising, falling or volley`))
	}
	return lesson.Meet{How: how}
}

func (r *reader) keyframe(k keyframe, team court.End) lesson.Keyframe {
	out := lesson.Keyframe{
		At:      r.anchor("at", k.At, lesson.Event{}),
		Place:   r.place(k.X, k.Y),
		Facing:  team.Facing(),
		Through: k.Through,
	}
	if k.Facing != nil {
		out.Facing = *k.Facing
	}
	if k.Via != nil {
		out.Via = new(r.point("via", k.Via))
	}
	if k.Leave != nil {
		out.Leave = new(r.anchor("leave", k.Leave, lesson.Event{}))
	}
	return out
}

func (r *reader) mark(m mark) lesson.Mark {
	out := lesson.Mark{
		Kind:  named(r, "kind", m.Kind, lesson.ParseMark),
		Span:  r.span(m.From, m.To),
		Place: r.place(m.X, m.Y),
		Text:  m.Text,
	}
	if out.Kind.HasTip() {
		out.Tip = r.point("tip", m.Tip)
	} else if m.Tip != nil {
		r.fail("tip", errors.New(`counts only with "kind" arrow, zone, measure or highlight`))
	}
	return out
}

func (r *reader) cue(q cue) lesson.Cue {
	out := lesson.Cue{Kind: named(r, "kind", q.Kind, lesson.ParseCue), Span: r.span(q.From, q.To), Text: q.Text}
	if out.Kind == lesson.Signal {
		out.Giver = needNamed(r, "giver", q.Giver, game.ParsePlayer)
		out.Reader = needNamed(r, "reader", q.Reader, game.ParsePlayer)
		out.Meaning = named(r, "meaning", q.Meaning, lesson.ParseMeaning)
		return out
	}
	for _, f := range []struct{ name, said string }{{"giver", q.Giver}, {"reader", q.Reader}, {"meaning", q.Meaning}} {
		if f.said != "" {
			r.fail(f.name, errors.New(`counts only with "kind" signal`))
		}
	}
	return out
}
