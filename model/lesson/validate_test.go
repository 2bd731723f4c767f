package lesson_test

import (
	"errors"
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
	"homeside/model/units"
)

// inSample is what Validate says of the sample after spoil.
func inSample(spoil func(l *lesson.Lesson, p *lesson.Play)) []lesson.Problem {
	l := lessontest.Sample()
	spoil(&l, &l.Plays[0])
	return lesson.Validate(l)
}

func TestValidateNamesPlaceAndReason(t *testing.T) {
	for _, c := range []struct {
		spoil   func(l *lesson.Lesson, p *lesson.Play)
		pointer string
		text    string
	}{
		{func(l *lesson.Lesson, _ *lesson.Play) { l.Title = strings.Repeat("é", 201) }, "/title", "201 characters, want at most 200"},
		{func(l *lesson.Lesson, _ *lesson.Play) { l.Notes = "\xff" }, "/notes", "is not valid UTF-8 text"},
		{func(l *lesson.Lesson, _ *lesson.Play) { l.Scoring.To = 100 }, "/scoring/to", "100, want 1 to 99 points"},
		{func(l *lesson.Lesson, _ *lesson.Play) { l.Scoring.Format = 4 }, "/scoring/format", "4 is not one of the 4 choices"},
		{func(l *lesson.Lesson, _ *lesson.Play) { l.Venue.BesideSideline = -1 }, "/venue/beside_sideline_ft", "-1, want a number from 0 to 200"},
		{func(l *lesson.Lesson, _ *lesson.Play) { l.Teams[1].Starter = 3 }, "/teams/far/starter", "3, want 1 or 2"},
		{func(l *lesson.Lesson, _ *lesson.Play) {
			l.Teams[0].Signs = lesson.Signs{lesson.Stay, lesson.Switch, lesson.Stay}
		}, "/teams/near/signs", "stay, switch and stay, want each of stay, switch or fake once"},
		{func(l *lesson.Lesson, _ *lesson.Play) { l.Teams[0].Players[1].Initials = "ABCD" }, "/teams/near/players/near2/initials", "4 characters, want at most 3"},
		{func(l *lesson.Lesson, _ *lesson.Play) { l.Teams[1].Players[0].Hand = 2 }, "/teams/far/players/far1/hand", "2 is not one of the 2 choices"},
		{func(l *lesson.Lesson, _ *lesson.Play) { l.Teams[1].Players[1].Pace.TopSpeed = 16 }, "/teams/far/players/far2/pace", "top speed is 16 m/s, want 0.1 to 15"},
		{func(_ *lesson.Lesson, p *lesson.Play) { p.Lead = -0.1 }, "/plays/0/lead_s", "-0.1, want a number from 0 to 60"},
		{func(_ *lesson.Lesson, p *lesson.Play) { p.Situation.Call.Receiving = -1 }, "/plays/0/situation/call", "want scores from 0 to 200"},
		{func(_ *lesson.Lesson, p *lesson.Play) { p.Situation.Call.Serving = 201 }, "/plays/0/situation/call", "201-7-2, want scores from 0 to 200"},
		{func(_ *lesson.Lesson, p *lesson.Play) { p.Situation.Call.Server = 3 }, "/plays/0/situation/call", "4-7-3, want server 1 or 2"},
		{func(_ *lesson.Lesson, p *lesson.Play) { p.Shots = nil }, "/plays/0/shots", "a play needs at least a serve"},
		{func(_ *lesson.Lesson, p *lesson.Play) { p.Shots[2].By = game.Near2 }, "/plays/0/shots/2/by", "near2 hits after near1: the teams take turns"},
		{func(_ *lesson.Lesson, p *lesson.Play) { p.Shots[2].Aim.Y = -201 }, "/plays/0/shots/2/aim/y_ft", "-201, want a number from -200 to 200"},
		{func(_ *lesson.Lesson, p *lesson.Play) { p.Shots[1].Intent = lesson.Intent{} }, "/plays/0/shots/1/apex_ft", "0, want more than 0 and at most 100"},
		{func(_ *lesson.Lesson, p *lesson.Play) { p.Shots[1].Intent = lesson.Time(31) }, "/plays/0/shots/1/time_s", "31, want more than 0 and at most 30"},
		{func(_ *lesson.Lesson, p *lesson.Play) { p.Shots[1].Intent.Kind = 4 }, "/plays/0/shots/1", "intent 4 is not one of apex_ft, speed_mps, time_s or net_clear_ft"},
		{func(_ *lesson.Lesson, p *lesson.Play) { p.Shots[0].From.Height = -1 }, "/plays/0/shots/0/from/z_ft", "-1, want a number from 0 to 100"},
		{func(_ *lesson.Lesson, p *lesson.Play) { p.Shots[0].Meet.Height = -1 }, "/plays/0/shots/0/meet_ft", "-1, want a number from 0 to 100"},
		{func(_ *lesson.Lesson, p *lesson.Play) { p.Tracks[game.Far2] = nil }, "/plays/0/tracks/far2", "far2 has no place: want at least one keyframe"},
		{func(_ *lesson.Lesson, p *lesson.Play) { p.Tracks[2][1].At.Event.Shot = 3 }, "/plays/0/tracks/far1/1/at/event", "shot 4: the play has only 3"},
		{func(_ *lesson.Lesson, p *lesson.Play) { p.Tracks[2][1].Leave.Offset = 61 }, "/plays/0/tracks/far1/1/leave/offset_s", "61, want a number from -60 to 60"},
		{func(_ *lesson.Lesson, p *lesson.Play) {
			p.Marks[0].Span.To.Event = lesson.Event{Shot: 1, Moment: lesson.End}
		}, "/plays/0/marks/0/to/event", "the end of a play has no shot"},
		{func(_ *lesson.Lesson, p *lesson.Play) { p.Marks[0].Tip.X = 300 }, "/plays/0/marks/0/tip/x_ft", "300, want"},
		{func(_ *lesson.Lesson, p *lesson.Play) { p.Cues[1].Reader = game.Far1 }, "/plays/0/cues/1/reader", "far1 reads a signal of near2: want partners"},
		{func(_ *lesson.Lesson, p *lesson.Play) { p.Tags = []string{"a", "b", "a"} }, "/plays/0/tags/2", `"a" stands here twice`},
		{func(_ *lesson.Lesson, p *lesson.Play) { p.Tags = []string{" a"} }, "/plays/0/tags/0", `" a", want a word without blanks around it`},
		{func(_ *lesson.Lesson, p *lesson.Play) { p.Tags = []string{""} }, "/plays/0/tags/0", `"", want a word without blanks around it`},
		{func(_ *lesson.Lesson, p *lesson.Play) { p.Cues[1].Reader = game.Near2 }, "/plays/0/cues/1/reader", "near2 reads a signal of near2: want partners"},
	} {
		got := inSample(c.spoil)
		if len(got) != 1 || got[0].Pointer != c.pointer || !strings.Contains(got[0].Text, c.text) {
			t.Errorf("Validate = %v, want one problem %s: %s", got, c.pointer, c.text)
		}
	}
}

func TestValidateCountsEntries(t *testing.T) {
	for _, c := range []struct {
		spoil   func(l *lesson.Lesson, p *lesson.Play)
		pointer string
	}{
		{func(l *lesson.Lesson, _ *lesson.Play) { *l = lessontest.Long(lesson.MaxPlays + 1) }, "/plays"},
		{func(_ *lesson.Lesson, p *lesson.Play) {
			for len(p.Shots) <= lesson.MaxShots {
				p.Shots = append(p.Shots, p.Shots[len(p.Shots)-2])
			}
		}, "/plays/0/shots"},
		{func(_ *lesson.Lesson, p *lesson.Play) {
			p.Tracks[1] = slices.Repeat(p.Tracks[1], lesson.MaxKeyframes+1)
		}, "/plays/0/tracks/near2"},
		{func(_ *lesson.Lesson, p *lesson.Play) { p.Marks = slices.Repeat(p.Marks[:1], lesson.MaxMarks+1) }, "/plays/0/marks"},
		{func(_ *lesson.Lesson, p *lesson.Play) { p.Cues = slices.Repeat(p.Cues[:1], lesson.MaxCues+1) }, "/plays/0/cues"},
		{func(_ *lesson.Lesson, p *lesson.Play) { p.Tags = numbered(lesson.MaxTags + 1) }, "/plays/0/tags"},
	} {
		got := inSample(c.spoil)
		if len(got) != 1 || got[0].Pointer != c.pointer || !strings.Contains(got[0].Text, "entries, want at most") {
			t.Errorf("Validate = %v, want one problem of too many entries at %s", got, c.pointer)
		}
	}
}

// numbered are so many different tags.
func numbered(n int) (all []string) {
	for i := range n {
		all = append(all, strconv.Itoa(i))
	}
	return all
}

func TestValidateAcceptsTheBounds(t *testing.T) {
	got := inSample(func(l *lesson.Lesson, p *lesson.Play) {
		l.Title = strings.Repeat("é", lesson.MaxTitle)
		l.Scoring.To = lesson.MaxPoints
		l.Venue = lesson.Venue{BehindBaseline: lesson.MaxRoom}
		p.Lead = lesson.MaxOffset
		p.Situation.Call = game.Call{Serving: lesson.MaxCall, Server: 1}
		p.Shots[0].Aim = court.Pt(-lesson.MaxCoordinate, lesson.MaxCoordinate)
		p.Shots[0].Intent = lesson.Speed(lesson.MaxSpeed)
		p.Shots[1].Intent = lesson.Apex(units.Feet(math.SmallestNonzeroFloat64))
		p.Shots[2].Intent = lesson.NetClear(-court.NetAtPosts)
		p.Shots[2].Spin = -lesson.MaxSpin
		p.Tracks[0][0].Facing = -lesson.MaxTurn
		p.Tracks[0][1].At = lesson.Anchor{Event: lesson.TheEnd, Offset: -lesson.MaxOffset}
	})
	if got != nil {
		t.Errorf("Validate of a lesson at its bounds = %v, want nil", got)
	}
}

func TestValidateKeepsTheOrderOfTheDocument(t *testing.T) {
	got := inSample(func(l *lesson.Lesson, p *lesson.Play) {
		p.Cues[0].Text, p.Lead, l.Teams[0].Starter, l.Title = "\xff", 99, 9, "\xff"
	})
	want := []string{"/title", "/teams/near/starter", "/plays/0/lead_s", "/plays/0/cues/0/text"}
	var pointers []string
	for _, p := range got {
		pointers = append(pointers, p.Pointer)
	}
	if !slices.Equal(pointers, want) {
		t.Errorf("Validate found problems at %v, want %v", pointers, want)
	}
}

func TestZeroLessonIsSound(t *testing.T) {
	if got := lesson.Validate(lesson.Lesson{}); got != nil {
		t.Errorf("Validate(Lesson{}) = %v, want nil", got)
	}
}

func TestProblemIsAnError(t *testing.T) {
	var err error = lesson.Problem{Pointer: "/title", Text: "too long"}
	if !errors.Is(err, lesson.ErrInvalid) {
		t.Errorf("errors.Is(%v, ErrInvalid) = false, want true", err)
	}
	if got, want := err.Error(), "/title: too long"; got != want {
		t.Errorf("Problem.Error() = %q, want %q", got, want)
	}
}

// Whether a foot is on the ground counts for the serve alone (rulebook 2026, 7.A).
func TestOnlyAServeIsAirborne(t *testing.T) {
	l := lessontest.Sample()
	l.Plays[0].Shots[1].Airborne = true
	got := lesson.Validate(l)
	if len(got) != 1 || got[0].Pointer != "/plays/0/shots/1/airborne" {
		t.Errorf("Validate(a jumped return) = %v, want one problem at /plays/0/shots/1/airborne", got)
	}
}
