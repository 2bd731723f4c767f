package session

import (
	"math"
	"strings"
	"testing"

	_ "homeside/internal/fixedseed"
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"

	"pgregory.net/rapid"
)

// serve is a lesson with a serve from ordinary places.
func serve() lesson.Lesson {
	return lesson.Lesson{Plays: []lesson.Play{{
		Lead:  1.5,
		Shots: []lesson.Shot{{By: game.Near1, Aim: court.Pt(-5, 18), Intent: lesson.Apex(8)}},
		Tracks: [4][]lesson.Keyframe{
			{{Place: court.Pt(5, -23)}}, {{Place: court.Pt(-5, -23)}},
			{{Place: court.Pt(-5, 24), Facing: 180}}, {{Place: court.Pt(5, 7.5), Facing: 180}},
		},
	}}}
}

// timed is a lesson of two shots with a run that waits, a place after it and cues.
func timed() lesson.Lesson {
	after := func(t units.Seconds) lesson.Anchor { return lesson.Anchor{Offset: t} }
	leave := after(0.5)
	l := serve()
	p := l.Plays[0]
	p.Lead = 1.5
	p.Shots = []lesson.Shot{
		{By: game.Near1, Aim: court.Pt(-5, 18), Intent: lesson.Time(1.2)},
		{By: game.Far1, Aim: court.Pt(4, -18), Intent: lesson.Apex(9)},
	}
	p.Tracks[game.Far2] = []lesson.Keyframe{
		{Place: court.Pt(5, 7.5), Facing: 180},
		{At: after(1.5), Place: court.Pt(-5, 7.5), Facing: 180, Leave: &leave},
		{At: after(2.5), Place: court.Pt(-5, 14), Facing: 180},
	}
	p.Cues = []lesson.Cue{
		{Text: "watch", Span: lesson.Span{From: after(-1), To: after(0.6)}},
		{Kind: lesson.Signal, Giver: game.Far2, Reader: game.Far1, Span: lesson.Span{From: after(-1), To: after(-0.2)}},
	}
	l.Plays[0] = p
	return l
}

func held(t *testing.T, s *Session, what rally.Timed) Retime {
	t.Helper()
	m, err := s.Retime(what)
	if err != nil {
		t.Fatalf("Retime(%+v): %v", what, err)
	}
	return m
}

// rounding is how far a time may be from the one asked for: offsets from a contact
// are whole hundredths.
const rounding = 0.0051

// Things go to the time asked for, to whole hundredths after a contact, or stop at
// what is before and behind them.
func TestRetime(t *testing.T) {
	far2 := func(k rally.TimedKind, i int) rally.Timed { return rally.Timed{Kind: k, Player: game.Far2, Index: i} }
	cue := func(k rally.TimedKind) rally.Timed { return rally.Timed{Kind: k} }
	for _, c := range []struct {
		what     rally.Timed
		to, want units.Seconds
	}{
		{far2(rally.Arrival, 1), 1.804, 1.804},
		{far2(rally.Arrival, 1), 0.1, 0.5}, // not before the run starts
		{far2(rally.Arrival, 1), 9, 2.5},   // not after the next keyframe
		{far2(rally.Arrival, 0), -0.8, -0.8},
		{far2(rally.Start, 1), 0.9, 0.9},
		{far2(rally.Start, 1), -3, 0},  // at once
		{far2(rally.Start, 1), 3, 1.4}, // a tenth before the arrival
		{far2(rally.Running, 1), 1, 1},
		{far2(rally.Running, 1), -1, 0},
		{far2(rally.Running, 1), 5, 1.5},
		{cue(rally.CueFrom), -0.5, -0.5},
		{cue(rally.CueFrom), 3, 0.4}, // two tenths before its end
		{cue(rally.CueTo), -3, -0.8},
		{cue(rally.Saying), 0.2, 0.2},
		{cue(rally.Saying), -9, -1.5},
	} {
		s := New(timed(), "", nil)
		m := held(t, s, c.what)
		long := m.entry.To - m.entry.From
		got := m.To(c.to, 0)
		s.Do("move", got.Lesson)
		e, _ := s.Current().EntryOf(c.what)
		if math.Abs(float64(got.At-c.want)) > rounding || math.Abs(float64(e.From-got.At)) > 1e-9 {
			t.Errorf("%+v to %v s: says %v, is at %v, want %v", c.what, c.to, got.At, e.From, c.want)
		}
		if now := e.To - e.From; math.Abs(float64(now-long)) > 0.011 {
			t.Errorf("%+v to %v s: is %v s long, was %v", c.what, c.to, now, long)
		}
		if bad := lesson.Validate(s.Lesson()); bad != nil {
			t.Errorf("%+v to %v s: %v", c.what, c.to, bad)
		}
	}
}

// Near an event a thing hangs on the event itself, and moves with it later; with
// no reach it hangs on the contact before.
func TestRetimeSnaps(t *testing.T) {
	s := New(timed(), "", nil)
	r := s.Current()
	bounce, _ := r.TimeOf(lesson.Event{Moment: lesson.Bounce})
	met, _ := r.TimeOf(lesson.ContactOf(1))
	arrival := rally.Timed{Kind: rally.Arrival, Player: game.Far2, Index: 1}
	for _, c := range []struct {
		to, reach units.Seconds
		want      lesson.Anchor
	}{
		{bounce + 0.03, 0.05, lesson.At(lesson.Event{Moment: lesson.Bounce})},
		{met - 0.02, 0.05, lesson.At(lesson.ContactOf(1))},
		{met + 0.1, 0.05, lesson.Anchor{Event: lesson.ContactOf(1), Offset: 0.1}},
		{met + 0.01, 0, lesson.Anchor{Event: lesson.ContactOf(1), Offset: 0.01}},
	} {
		got := held(t, s, arrival).To(c.to, c.reach)
		if a := got.Lesson.Plays[0].Tracks[game.Far2][1].At; a.Event != c.want.Event || math.Abs(float64(a.Offset-c.want.Offset)) > 1e-9 || got.Exact != (c.want.Offset == 0) {
			t.Errorf("to %v s within %v: hangs on %+v, exact %v, want %+v", c.to, c.reach, a, got.Exact, c.want)
		}
	}
}

// A caption moved as a whole snaps by either end, and keeps its length.
func TestRetimeSnapsByEitherEnd(t *testing.T) {
	s := New(timed(), "", nil)
	met, _ := s.Current().TimeOf(lesson.ContactOf(1))
	m := held(t, s, rally.Timed{Kind: rally.Saying})
	got := m.To(met-1.6+0.02, 0.05) // its end is near the return
	if span := got.Lesson.Plays[0].Cues[0].Span; span.To != lesson.At(lesson.ContactOf(1)) || math.Abs(float64(got.At-(met-1.6))) > 0.011 {
		t.Errorf("its end near the return: span %+v from %v, want its end on the return, from %v", span, got.At, met-1.6)
	}
	got = m.To(0.02, 0.05)
	if span := got.Lesson.Plays[0].Cues[0].Span; span.From != (lesson.Anchor{}) {
		t.Errorf("its start near the serve: span %+v, want it to begin on the serve", span)
	}
}

// A run that starts as early as it can says so no longer.
func TestStartAtOnceIsNotStated(t *testing.T) {
	s := New(timed(), "", nil)
	got := held(t, s, rally.Timed{Kind: rally.Start, Player: game.Far2, Index: 1}).To(0.01, 0.05)
	if k := got.Lesson.Plays[0].Tracks[game.Far2][1]; k.Leave != nil {
		t.Errorf("started at the place before: leaves at %+v, want nothing stated", k.Leave)
	}
}

// A shot that is said by its time comes down where it is dragged to, also to a volley.
func TestRetimeAShot(t *testing.T) {
	for _, meet := range []lesson.Meet{{}, {How: lesson.OnVolley, Height: 3}} {
		l := timed()
		l.Plays[0].Shots[0].Meet = meet
		s := New(l, "", nil)
		landing := rally.Timed{Kind: rally.Landing}
		before := s.Current().Strokes[0].Volleyed
		for _, to := range []units.Seconds{1.0, 1.4} {
			got := held(t, s, landing).To(to, 0.05)
			if math.Abs(float64(got.At-to)) > 0.02 || got.Lesson.Plays[0].Shots[0].Intent.Kind != lesson.ByTime {
				t.Errorf("met %+v (a volley: %v), dragged to %v s: comes down at %v by %+v", meet, before, to, got.At, got.Lesson.Plays[0].Shots[0].Intent)
			}
		}
		if got := held(t, s, landing).To(-4, 0); got.Lesson.Plays[0].Shots[0].Intent.Time < leastFlight {
			t.Errorf("dragged before the serve: %+v", got.Lesson.Plays[0].Shots[0].Intent)
		}
	}
}

// What has no time of its own says why.
func TestRetimeRefuses(t *testing.T) {
	s := New(timed(), "", nil)
	for what, word := range map[rally.Timed]string{
		{Kind: rally.Landing, Index: 1}:                      "by its time",
		{Kind: rally.AtContact, Player: game.Far1, Index: 1}: "to hit",
		{Kind: rally.Arrival, Player: game.Far2, Index: 9}:   "nothing",
		{Kind: rally.Saying, Index: 7}:                       "nothing",
	} {
		if _, err := s.Retime(what); err == nil || !strings.Contains(err.Error(), word) {
			t.Errorf("Retime(%+v) refuses with %v, want a reason with %q", what, err, word)
		}
	}
	if _, err := New(lesson.Lesson{}, "", nil).Retime(rally.Timed{}); err == nil {
		t.Error("an empty lesson has something to move")
	}
}

// Wherever things are dragged, the lesson stays sound and their order as it was.
func TestRetimeKeepsTheLessonSound(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := New(timed(), "", nil)
		for range 5 {
			all := s.Current().Timeline()
			what := rapid.SampledFrom(all).Draw(t, "what").What
			m, err := s.Retime(what)
			if err != nil {
				continue
			}
			to := units.Seconds(rapid.Float64Range(-5, 12).Draw(t, "to"))
			reach := units.Seconds(rapid.SampledFrom([]float64{0, 0.05, 0.3}).Draw(t, "reach"))
			got := m.To(to, reach)
			if bad := lesson.Validate(got.Lesson); bad != nil {
				t.Fatalf("%+v to %v: %v", what, to, bad)
			}
			s.Do("move", got.Lesson)
			for _, stop := range s.Current().Tracks[game.Far2].Stops {
				if stop.Clamped && what.Kind != rally.Landing {
					t.Fatalf("%+v to %v within %v: keyframe %d has lost its place in the order", what, to, reach, stop.Index)
				}
			}
			for i, c := range s.Lesson().Plays[0].Cues {
				if s.CueLasts(c) <= 0 && what.Kind != rally.Landing {
					t.Fatalf("%+v to %v within %v: cue %d lasts %v", what, to, reach, i, s.CueLasts(c))
				}
			}
		}
	})
}

// Not a number leaves the thing where it is.
func TestRetimeToNoNumber(t *testing.T) {
	s := New(timed(), "", nil)
	got := held(t, s, rally.Timed{Kind: rally.Arrival, Player: game.Far2, Index: 2}).To(units.Seconds(math.NaN()), 0)
	if math.Abs(float64(got.At-2.5)) > rounding || math.IsNaN(float64(got.At)) {
		t.Errorf("dragged to NaN: at %v", got.At)
	}
}
