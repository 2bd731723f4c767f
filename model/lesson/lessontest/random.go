package lessontest

import (
	"pgregory.net/rapid"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/movement"
	"homeside/model/units"
)

// Most entries of each list in a random lesson: small, so that a failure shrinks well.
const (
	mostPlays     = 3
	mostShots     = 7
	mostKeyframes = 4
	mostNotes     = 3 // marks, and cues
	mostRallies   = 5
	mostReels     = 2
	mostTakes     = 3
)

// Lessons gives random lessons that lesson.Validate accepts.
func Lessons() *rapid.Generator[lesson.Lesson] {
	return rapid.Custom(func(t *rapid.T) lesson.Lesson {
		l := lesson.Lesson{
			Title:      text(t, "title", lesson.MaxTitle),
			Notes:      text(t, "notes", 80),
			Scoring:    lesson.Scoring{Format: rapid.SampledFrom(game.Formats[:]).Draw(t, "format"), To: rapid.IntRange(0, lesson.MaxPoints).Draw(t, "to")},
			Venue:      lesson.Venue{BehindBaseline: between(t, "behind", 0, lesson.MaxRoom), BesideSideline: between(t, "beside", 0, lesson.MaxRoom)},
			Conditions: conditions(t),
			Vocabulary: vocabulary(t),
			Plays:      some(t, 0, mostPlays, play),
			Match:      match(t),
			Logo:       logo(t),
			Reels:      some(t, 0, mostReels, reel),
		}
		for i := range l.Teams {
			l.Teams[i] = team(t)
		}
		return l
	})
}

// Plays gives random plays as they stand in Lessons.
func Plays() *rapid.Generator[lesson.Play] { return rapid.Custom(play) }

func text(t *rapid.T, label string, most int) string {
	return rapid.StringN(0, most, -1).Draw(t, label)
}

func between[T ~float64](t *rapid.T, label string, lo, hi T) T {
	return T(rapid.Float64Range(float64(lo), float64(hi)).Draw(t, label))
}

// member draws from a closed set of n members.
func member[T ~uint8](t *rapid.T, label string, n int) T {
	return T(rapid.IntRange(0, n-1).Draw(t, label))
}

// some draws a list, nil if it is empty.
func some[T any](t *rapid.T, least, most int, draw func(*rapid.T) T) (list []T) {
	for range rapid.IntRange(least, most).Draw(t, "entries") {
		list = append(list, draw(t))
	}
	return list
}

// maybe draws a value or nil.
func maybe[T any](t *rapid.T, draw func(*rapid.T) T) *T {
	if rapid.Bool().Draw(t, "present") {
		return new(draw(t))
	}
	return nil
}

func team(t *rapid.T) lesson.Team {
	out := lesson.Team{Name: text(t, "team", lesson.MaxName), Starter: rapid.IntRange(0, 2).Draw(t, "starter"), Signs: signs(t)}
	for i := range out.Players {
		out.Players[i] = lesson.Player{
			Name:       text(t, "name", lesson.MaxName),
			Initials:   text(t, "initials", lesson.MaxInitials),
			Hand:       member[lesson.Hand](t, "hand", 2),
			Serving:    member[lesson.Want](t, "serving", 3),
			Receiving:  member[lesson.Want](t, "receiving", 3),
			Wheelchair: rapid.Bool().Draw(t, "wheelchair"),
			Pace:       maybe(t, pace),
		}
	}
	return out
}

func signs(t *rapid.T) lesson.Signs {
	if !rapid.Bool().Draw(t, "signs") {
		return lesson.Signs{}
	}
	return lesson.Signs(rapid.Permutation([]lesson.Meaning{lesson.Stay, lesson.Switch, lesson.Fake}).Draw(t, "meanings"))
}

func pace(t *rapid.T) movement.Pace {
	p := rapid.SampledFrom(movement.Presets).Draw(t, "preset").Pace
	if rapid.Bool().Draw(t, "own speed") {
		p.TopSpeed = between[units.MetresPerSecond](t, "top speed", 0.1, 15)
	}
	if rapid.Bool().Draw(t, "own start") {
		p.Tau, p.Reaction, p.StrokeRecovery = between[units.Seconds](t, "tau", 0.05, 10), between[units.Seconds](t, "reaction", 0, 2), between[units.Seconds](t, "recovery", 0, 2)
	}
	if rapid.Bool().Draw(t, "own reach") {
		p.Arm, p.Paddle, p.Lunge = between[units.Metres](t, "arm", 0, 2), between[units.Metres](t, "paddle", 0, 2), between[units.Metres](t, "lunge", 0, 2)
	}
	if rapid.Bool().Draw(t, "own turns") {
		p.Braking, p.Turn = between(t, "braking", 0.1, 20), between[units.Seconds](t, "turn", 0, 5)
		p.ShuffleRatio, p.BackwardRatio = between(t, "shuffle", 0.05, 1), between(t, "backward", 0.05, 1)
	}
	return p
}

func play(t *rapid.T) lesson.Play {
	p := lesson.Play{
		Title:     text(t, "title", 40),
		Notes:     text(t, "notes", 40),
		Tags:      tags(t),
		Situation: situation(t),
		Front:     maybe(t, func(t *rapid.T) game.Player { return rapid.SampledFrom(game.Players[:]).Draw(t, "front") }),
		Lead:      rapid.OneOf(rapid.Just(lesson.DefaultLead), rapid.Just(units.Seconds(between(t, "lead", 0, lesson.MaxOffset)))).Draw(t, "lead"),
		Shots:     some(t, 1, mostShots, shot),
	}
	for i := range p.Shots[1:] { // only a serve has a place of its own, and the teams take turns
		p.Shots[i+1].From = nil
		if p.Shots[i+1].By.Team() == p.Shots[i].By.Team() {
			p.Shots[i+1].By ^= 2
		}
	}
	p.Shots[0].Airborne = rapid.Bool().Draw(t, "airborne")
	shots := len(p.Shots)
	for id := range p.Tracks {
		p.Tracks[id] = some(t, 1, mostKeyframes, func(t *rapid.T) lesson.Keyframe { return keyframe(t, shots) })
	}
	p.Marks = some(t, 0, mostNotes, func(t *rapid.T) lesson.Mark { return mark(t, shots) })
	p.Cues = some(t, 0, mostNotes, func(t *rapid.T) lesson.Cue { return cue(t, shots) })
	p.Photo = maybe(t, photo)
	return p
}

// tags are some different words.
func tags(t *rapid.T) []string {
	word := rapid.StringMatching(`[a-zé][a-zé ]{0,8}[a-zé]`)
	all := rapid.SliceOfNDistinct(word, 0, 3, rapid.ID).Draw(t, "tags")
	if len(all) == 0 {
		return nil
	}
	return all
}

func situation(t *rapid.T) lesson.Situation {
	points := rapid.IntRange(0, lesson.MaxCall)
	return lesson.Situation{
		Call:    game.Call{Serving: points.Draw(t, "serving"), Receiving: points.Draw(t, "receiving"), Server: rapid.IntRange(0, 2).Draw(t, "server")},
		Serving: member[court.End](t, "end", 2),
	}
}

func point(t *rapid.T) court.Point {
	most := lesson.MaxCoordinate
	return court.Pt(between(t, "x", -most, most), between(t, "y", -most, most))
}

func shot(t *rapid.T) lesson.Shot {
	s := lesson.Shot{
		By:     rapid.SampledFrom(game.Players[:]).Draw(t, "by"),
		Kind:   member[lesson.ShotKind](t, "shot kind", len(lesson.ShotKinds)+1),
		Aim:    point(t),
		Intent: intent(t),
		Arc:    member[lesson.Arc](t, "arc", 2),
		Spin:   between(t, "spin", -lesson.MaxSpin, lesson.MaxSpin),
		Side:   between(t, "side", -lesson.MaxSpin, lesson.MaxSpin),
		Meet:   lesson.Meet{How: member[lesson.MeetHow](t, "meet", 5)},
		From: maybe(t, func(t *rapid.T) lesson.Place {
			return lesson.Place{Point: point(t), Height: between(t, "z", 0, lesson.MaxHeight)}
		}),
	}
	s.Error = maybe(t, func(t *rapid.T) lesson.AimError {
		return lesson.AimError{Speed: between(t, "speed error", 0, lesson.MaxScatter), Angle: between(t, "angle error", 0, lesson.MaxAngle)}
	})
	if s.Meet.How.AtHeight() {
		s.Meet.Height = between(t, "meet height", 0, lesson.MaxHeight)
	}
	return s
}

func intent(t *rapid.T) lesson.Intent {
	const least = 1e-6 // of what must be more than nothing
	switch member[lesson.IntentKind](t, "intent", 4) {
	case lesson.ByApex:
		return lesson.Apex(between(t, "apex", least, lesson.MaxHeight))
	case lesson.BySpeed:
		return lesson.Speed(between(t, "speed", least, lesson.MaxSpeed))
	case lesson.ByTime:
		return lesson.Time(between(t, "time", least, lesson.MaxFlight))
	}
	return lesson.NetClear(between(t, "clear", -court.NetAtPosts, lesson.MaxHeight))
}

func anchor(t *rapid.T, shots int) lesson.Anchor {
	e := lesson.Event{Shot: rapid.IntRange(0, shots-1).Draw(t, "shot"), Moment: member[lesson.Moment](t, "moment", 4)}
	if e.Moment == lesson.End {
		e = lesson.TheEnd
	}
	a := lesson.At(e)
	if rapid.Bool().Draw(t, "offset") {
		a.Offset = between(t, "offset", -lesson.MaxOffset, lesson.MaxOffset)
	}
	return a
}

func span(t *rapid.T, shots int) lesson.Span {
	return lesson.Span{From: anchor(t, shots), To: anchor(t, shots)}
}

func keyframe(t *rapid.T, shots int) lesson.Keyframe {
	return lesson.Keyframe{
		At:      anchor(t, shots),
		Place:   point(t),
		Facing:  rapid.OneOf(rapid.SampledFrom([]units.Degrees{0, 180}), rapid.Just(between(t, "facing", -lesson.MaxTurn, lesson.MaxTurn))).Draw(t, "facing"),
		Via:     maybe(t, point),
		Through: rapid.Bool().Draw(t, "through"),
		Leave:   maybe(t, func(t *rapid.T) lesson.Anchor { return anchor(t, shots) }),
	}
}

func mark(t *rapid.T, shots int) lesson.Mark {
	m := lesson.Mark{Kind: member[lesson.MarkKind](t, "mark", len(lesson.MarkKinds)), Span: span(t, shots), Place: point(t), Text: text(t, "text", 40)}
	if m.Kind.HasTip() {
		m.Tip = point(t)
	}
	return m
}

func cue(t *rapid.T, shots int) lesson.Cue {
	q := lesson.Cue{Kind: member[lesson.CueKind](t, "cue", 2), Span: span(t, shots), Text: text(t, "text", 40)}
	if q.Kind == lesson.Signal {
		q.Giver = rapid.SampledFrom(game.Players[:]).Draw(t, "giver")
		q.Reader, q.Meaning = q.Giver.Partner(), member[lesson.Meaning](t, "meaning", 3)
	}
	return q
}

func conditions(t *rapid.T) lesson.Conditions {
	return lesson.Conditions{
		Indoor:      rapid.Bool().Draw(t, "indoor"),
		Altitude:    between(t, "altitude", -500, lesson.MaxAltitude),
		Temperature: maybe(t, func(t *rapid.T) float64 { return between(t, "heat", -lesson.MaxHeat, float64(lesson.MaxHeat)) }),
		WindX:       between(t, "wind x", -lesson.MaxWind, lesson.MaxWind),
		WindY:       between(t, "wind y", -lesson.MaxWind, lesson.MaxWind),
		Restitution: between(t, "restitution", 0, 1.0),
		Friction:    between(t, "friction", 0, 2.0),
		Lift:        between(t, "lift", 0, 2.0),
	}
}

func vocabulary(t *rapid.T) (v lesson.Vocabulary) {
	for _, k := range lesson.ShotKinds {
		v[k] = maybe(t, func(t *rapid.T) lesson.Manner {
			return lesson.Manner{
				Intent: intent(t), Arc: member[lesson.Arc](t, "arc", 2),
				Spin: between(t, "spin", -lesson.MaxSpin, lesson.MaxSpin), Side: between(t, "side", -lesson.MaxSpin, lesson.MaxSpin),
			}
		})
	}
	return v
}
