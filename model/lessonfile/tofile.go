package lessonfile

import (
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
)

// toFile is a lesson as a file states it: what equals its default, and what
// does not count for its kind, is left out.
func toFile(l lesson.Lesson) file {
	near, far := l.Teams[court.Near], l.Teams[court.Far]
	return file{
		Format:     Format,
		Version:    Version,
		Title:      l.Title,
		Notes:      l.Notes,
		Scoring:    scoring{unlessZero(l.Scoring.Format), l.Scoring.To},
		Venue:      venue{l.Venue.BehindBaseline, l.Venue.BesideSideline},
		Conditions: toConditions(l.Conditions),
		Vocabulary: toVocabulary(l.Vocabulary),
		Teams: teams{
			Near: team[nearPlayers]{near.Name, near.Starter, toSigns(near.Signs), nearPlayers{toPlayer(near.Players[0]), toPlayer(near.Players[1])}},
			Far:  team[farPlayers]{far.Name, far.Starter, toSigns(far.Signs), farPlayers{toPlayer(far.Players[0]), toPlayer(far.Players[1])}},
		},
		Plays: mapped(l.Plays, toPlay),
		Match: toMatch(l.Match),
		Logo:  logo{[]byte(l.Logo.PNG)},
		Reels: mapped(l.Reels, toReel),
	}
}

// unlessZero is the name of a member of a closed set, none for the default.
func unlessZero[T interface {
	~uint8
	String() string
}](v T) string {
	if v == 0 {
		return ""
	}
	return v.String()
}

func mapped[T, F any](list []T, to func(T) F) []F {
	out := make([]F, len(list))
	for i, v := range list {
		out[i] = to(v)
	}
	return out
}

func toSigns(s lesson.Signs) signs {
	if s == (lesson.Signs{}) {
		return signs{}
	}
	return signs{s[0].String(), s[1].String(), s[2].String()}
}

func toPlayer(p lesson.Player) player {
	return player{p.Name, p.Initials, unlessZero(p.Hand), unlessZero(p.Serving), unlessZero(p.Receiving), p.Wheelchair, toPace(p.Pace)}
}

func toPlay(p lesson.Play) play {
	out := play{
		Title: p.Title,
		Notes: p.Notes,
		Tags:  mapped(p.Tags, func(t string) tag { return tag(t) }),
		Shots: mapped(p.Shots, toShot),
		Tracks: tracks{
			toTrack(p, game.Near1), toTrack(p, game.Near2), toTrack(p, game.Far1), toTrack(p, game.Far2),
		},
		Marks: mapped(p.Marks, toMark),
		Cues:  mapped(p.Cues, toCue),
		Photo: toPhoto(p.Photo),
	}
	if p.Lead != lesson.DefaultLead {
		out.Lead = &p.Lead
	}
	if p.Front != nil {
		out.Front = p.Front.String()
	}
	out.Situation.Call = callUnlessZero(p.Situation.Call)
	out.Situation.Serving = unlessZero(p.Situation.Serving)
	return out
}

func toShot(s lesson.Shot) shot {
	out := shot{
		By: s.By.String(), Kind: unlessZero(s.Kind), Aim: toPoint(s.Aim), figure: toFigure(s.Intent), Arc: unlessZero(s.Arc),
		Spin: s.Spin, Side: s.Side, Meet: unlessZero(s.Meet.How), Error: toAimError(s.Error), Airborne: s.Airborne,
	}
	if s.From != nil {
		out.From = &place{&s.From.Point.X, &s.From.Point.Y, &s.From.Height}
	}
	if s.Meet.How.AtHeight() {
		out.MeetAt = &s.Meet.Height
	}
	return out
}

func toTrack(p lesson.Play, id game.Player) []keyframe {
	return mapped(p.Tracks[id], func(k lesson.Keyframe) keyframe { return toKeyframe(k, id.Team()) })
}

func toKeyframe(k lesson.Keyframe, team court.End) keyframe {
	out := keyframe{At: anchorUnless(k.At, lesson.Event{}), X: &k.Place.X, Y: &k.Place.Y, Through: k.Through}
	if k.Facing != team.Facing() {
		out.Facing = &k.Facing
	}
	if k.Via != nil {
		out.Via = toPoint(*k.Via)
	}
	if k.Leave != nil {
		out.Leave = toAnchor(*k.Leave)
	}
	return out
}

func toPoint(p court.Point) *point { return &point{&p.X, &p.Y} }

func toAnchor(a lesson.Anchor) *anchor { return &anchor{a.Event.String(), a.Offset} }

// anchorUnless leaves out an anchor that stands at the event read in its absence.
func anchorUnless(a lesson.Anchor, absent lesson.Event) *anchor {
	if a == lesson.At(absent) {
		return nil
	}
	return toAnchor(a)
}

func toMark(m lesson.Mark) mark {
	out := mark{
		Kind: unlessZero(m.Kind),
		From: anchorUnless(m.Span.From, lesson.Event{}),
		To:   anchorUnless(m.Span.To, lesson.TheEnd),
		X:    &m.Place.X,
		Y:    &m.Place.Y,
		Text: m.Text,
	}
	if m.Kind.HasTip() {
		out.Tip = toPoint(m.Tip)
	}
	return out
}

func toCue(q lesson.Cue) cue {
	out := cue{
		Kind: unlessZero(q.Kind),
		From: anchorUnless(q.Span.From, lesson.Event{}),
		To:   anchorUnless(q.Span.To, lesson.TheEnd),
		Text: q.Text,
	}
	if q.Kind == lesson.Signal {
		out.Giver, out.Reader, out.Meaning = q.Giver.String(), q.Reader.String(), unlessZero(q.Meaning)
	}
	return out
}
