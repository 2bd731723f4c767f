package reel_test

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"

	_ "homeside/internal/fixedseed"
	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
	"homeside/model/rally"
	"homeside/model/reel"
	"homeside/model/units"
)

const rounding = 1e-9 // s

func near(a, b units.Seconds) bool { return math.Abs(float64(a-b)) < rounding*(1+math.Abs(float64(b))) }

func sample() lesson.Lesson {
	l := lessontest.Long(2)
	l.Reels = nil
	return l
}

func solve(t *testing.T, l lesson.Lesson, takes ...lesson.Take) *reel.Reel {
	t.Helper()
	r := reel.Solve(l, lesson.Reel{Takes: takes})
	if len(r.Takes)+len(r.Left) != len(takes) {
		t.Fatalf("Solve shows %d takes and leaves %d, want %d in all", len(r.Takes), len(r.Left), len(takes))
	}
	return r
}

func rallyOf(t *testing.T, l lesson.Lesson) *rally.Rally {
	t.Helper()
	r, err := rally.Solve(l, 0)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

func TestCardsAndTakesFollowEachOther(t *testing.T) {
	l := sample()
	p := rallyOf(t, l)
	r := reel.Solve(l, lesson.Reel{
		Title: lesson.Card{Heading: "a"}, Takes: []lesson.Take{{Play: 1}, {Play: 2, Speed: 0.5}}, End: lesson.Card{Text: "b", Length: 1},
	})
	pass := p.To - p.From
	if want := 2.5 + 3*pass + 1; !near(r.Length(), want) {
		t.Fatalf("Length = %v, want %v", r.Length(), want)
	}
	for _, c := range []struct {
		at   units.Seconds
		card string // heading and text
		take int
		t    units.Seconds
	}{
		{0, "a", 0, 0}, {2.4, "a", 0, 0}, {-1, "a", 0, 0}, {units.Seconds(math.NaN()), "a", 0, 0},
		{2.5, "", 0, p.From}, {3.5, "", 0, p.From + 1}, {2.5 + pass, "", 1, p.From}, {4.5 + pass, "", 1, p.From + 1},
		{2.5 + 3*pass + 0.5, "b", 0, 0}, {1000, "b", 0, 0},
	} {
		m := r.At(c.at)
		card := ""
		if m.Card != nil {
			card = m.Card.Heading + m.Card.Text
		}
		if card != c.card || m.Take != c.take || c.card == "" && !near(m.T, c.t) {
			t.Errorf("At(%v) = card %q, take %d, %v; want %q, %d, %v", c.at, card, m.Take, m.T, c.card, c.take, c.t)
		}
	}
}

func TestSlowsFreezesAndLoops(t *testing.T) {
	at := func(s units.Seconds) lesson.Anchor { return lesson.Anchor{Offset: s} }
	from, to := at(-1), at(1)
	r := solve(t, sample(), lesson.Take{
		Play: 1, From: &from, To: &to, Loops: 2, Caption: "all the time",
		Slows:   []lesson.Slow{{Span: lesson.Span{From: at(-0.5), To: at(0.5)}, Speed: 0.25}, {Span: lesson.Span{From: at(0), To: at(0.25)}, Speed: 0.5}},
		Freezes: []lesson.Freeze{{At: at(0), Length: 2, Caption: "look"}, {At: at(0), Length: 1}, {At: at(5), Length: 9}},
	})
	// 0.5 s, 0.5 s at a quarter, a hold of 3 s, 0.25 s at half, 0.25 s at a quarter, 0.5 s
	const loop = 0.5 + 2 + 3 + 0.5 + 1 + 0.5
	if !near(r.Length(), 2*loop) {
		t.Fatalf("Length = %v, want %v", r.Length(), 2*loop)
	}
	for _, c := range []struct {
		at, t   units.Seconds
		speed   float64
		caption string
	}{
		{0, -1, 1, "all the time"}, {0.4, -0.6, 1, "all the time"}, {0.9, -0.4, 0.25, "all the time"}, {2.5, 0, 0, "look"}, {4.4, 0, 0, "look"},
		{4.6, 0, 0, "all the time"}, {5.7, 0.1, 0.5, "all the time"}, {6.2, 0.3, 0.25, "all the time"}, {7.2, 0.7, 1, "all the time"},
		{loop + 0.4, -0.6, 1, "all the time"}, {2 * loop, 1, 1, "all the time"},
	} {
		m := r.At(c.at)
		if !near(m.T, c.t) || m.Speed != c.speed || m.Caption != c.caption {
			t.Errorf("At(%v) = %v at %v with %q, want %v at %v with %q", c.at, m.T, m.Speed, m.Caption, c.t, c.speed, c.caption)
		}
	}
	if got := r.At(loop / 2).Gone; math.Abs(got-0.5) > rounding {
		t.Errorf("At(half a loop).Gone = %v, want 0.5", got)
	}
}

func TestWhatCannotBeShownIsListed(t *testing.T) {
	early, late := lesson.Anchor{Offset: -1}, lesson.Anchor{Offset: 1}
	r := solve(t, sample(),
		lesson.Take{Play: 3}, lesson.Take{Play: 1, Beside: 9}, lesson.Take{Play: 1, From: &late, To: &early}, lesson.Take{Play: 1, From: &late, To: &late},
		lesson.Take{Play: 1, From: &late, To: &late, Freezes: []lesson.Freeze{{At: late, Length: 2}}}, lesson.Take{Play: 2},
	)
	want := []reel.Left{{Index: 0, Reason: reel.NoSuchPlay}, {Index: 1, Reason: reel.NoSuchPlay}, {Index: 2, Reason: reel.Nothing}, {Index: 3, Reason: reel.Nothing}}
	if len(r.Left) != len(want) {
		t.Fatalf("Left = %v, want %v", r.Left, want)
	}
	for i := range want {
		if r.Left[i] != want[i] {
			t.Errorf("Left[%d] = %v, want %v", i, r.Left[i], want[i])
		}
	}
	if got := r.Takes[0]; got.Index != 4 || !near(got.End-got.Start, 2) {
		t.Errorf("a take that only holds = number %d of %v s, want 4, 2", got.Index, got.End-got.Start)
	}
	empty := reel.Solve(sample(), lesson.Reel{})
	if m := empty.At(1); !empty.Empty() || empty.Length() != 0 || m.Card == nil || m.Card.Shown() {
		t.Errorf("a reel of nothing: %v s, %+v; want 0 and an empty card", empty.Length(), m)
	}
}

// A missing event means the end of the play.
func TestAnchorsOfShotsThatAreGone(t *testing.T) {
	gone := lesson.At(lesson.ContactOf(40))
	r := solve(t, sample(), lesson.Take{Play: 1, To: &gone})
	if p := rallyOf(t, sample()); r.Takes[0].To != p.To {
		t.Errorf("a take to the 41st contact of three ends at %v, want the play's end %v", r.Takes[0].To, p.To)
	}
}

// reels draws a lesson and a reel of it.
func reels(t *rapid.T) (lesson.Lesson, lesson.Reel) {
	l := lesson.Lesson{Plays: rapid.SliceOfN(lessontest.Plays(), 1, 2).Draw(t, "plays")}
	return l, lesson.Reel{
		Title: lesson.Card{Heading: rapid.SampledFrom([]string{"", "a"}).Draw(t, "title")},
		Takes: rapid.SliceOfN(rapid.Custom(lessontest.Take), 0, 3).Draw(t, "takes"),
		End:   lesson.Card{Text: rapid.SampledFrom([]string{"", "b"}).Draw(t, "end")},
	}
}

// Whatever the reel: every moment is a card or a moment of a take within its
// ends, takes come in order, within a take the clock never goes back but for a
// loop, and nothing is not a number.
func TestEveryMomentIsShown(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l, of := reels(t)
		r := reel.Solve(l, of)
		const steps = 200
		last, loop := reel.Moment{T: units.Seconds(math.Inf(-1))}, 0.0
		for i := range steps + 1 {
			m := r.At(r.Length() * units.Seconds(i) / steps)
			if m.Card != nil {
				continue
			}
			take := r.Takes[m.Take]
			if !(m.T >= take.From && m.T <= take.To) || !(m.Gone >= 0 && m.Gone <= 1) || !(m.Speed >= 0) {
				t.Fatalf("At = %+v, want within %v to %v", m, take.From, take.To)
			}
			if m.Take < last.Take || m.Take == last.Take && m.T < last.T && m.Gone > loop && last.Card == nil {
				t.Fatalf("%+v comes after %+v", m, last)
			}
			last, loop = m, m.Gone
		}
	})
}

// Spans are the inverse of At: a stretch of the play is shown where At says so.
func TestSpansAreWhereTheClipShowsIt(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l, of := reels(t)
		r := reel.Solve(l, of)
		if len(r.Takes) == 0 {
			return
		}
		i := rapid.IntRange(0, len(r.Takes)-1).Draw(t, "take")
		take := r.Takes[i]
		draw := func(name string) units.Seconds {
			return take.From + (take.To-take.From)*units.Seconds(rapid.Float64Range(0, 1).Draw(t, name))
		}
		from, to := draw("from"), draw("to")
		spans := r.Spans(i, from, to)
		before := units.Seconds(-1)
		for _, s := range spans {
			if s.From < before || !(s.Length() > 0) || s.From < take.Start-rounding || s.To > take.End+rounding {
				t.Fatalf("Spans(%d, %v, %v) = %v: want none to overlap, within %v to %v", i, from, to, spans, take.Start, take.End)
			}
			before = s.To
		}
		for k := range 100 {
			at := take.Start + (take.End-take.Start)*units.Seconds(k)/100
			m := r.At(at)
			if m.Take != i || math.Abs(float64(m.T-from)) < 1e-6 || math.Abs(float64(m.T-to)) < 1e-6 {
				continue // at the very ends rounding decides
			}
			if got, want := covers(spans, at), from <= m.T && m.T < to; got != want {
				t.Fatalf("the clip at %v shows %v; Spans(%v, %v) = %v covers it: %v, want %v", at, m.T, from, to, spans, got, want)
			}
		}
	})
}

func covers(spans []reel.Span, at units.Seconds) bool {
	for _, s := range spans {
		if s.From <= at && at < s.To {
			return true
		}
	}
	return false
}

// Every event of a play that comes to pass is there once for every loop, at the
// moment of the clip that shows it.
func TestEventsAreWhereTheClipShowsThem(t *testing.T) {
	l := sample()
	from, to := lesson.Anchor{Offset: -1}, lesson.At(lesson.TheEnd)
	hold := lesson.Freeze{At: lesson.At(lesson.ContactOf(1)), Length: 2}
	r := solve(t, l, lesson.Take{Play: 1, From: &from, To: &to, Speed: 0.5, Freezes: []lesson.Freeze{hold}, Loops: 3}, lesson.Take{Play: 2, Beside: 1})
	events := r.Events()
	count := map[lesson.Event]int{}
	for _, e := range events {
		count[e.Name]++
		m := r.At(e.At)
		want, _ := r.Takes[e.Take].Rally.TimeOf(e.Name)
		if m.Card == nil && m.Take == e.Take && math.Abs(float64(m.T-want)) > 1e-6 && m.T != r.Takes[e.Take].From {
			t.Errorf("%v of take %d is at %v of the clip, which shows %v; want %v", e.Name, e.Take, e.At, m.T, want)
		}
	}
	p := rallyOf(t, l)
	for _, e := range p.Events {
		want := 0
		if e.Reached {
			want = 3 + 2 // in every loop, and in both of the plays side by side
		}
		if count[e.Name] != want {
			t.Errorf("%v is there %d times, want %d", e.Name, count[e.Name], want)
		}
	}
	for i := 1; i < len(events); i++ {
		if events[i].Take < events[i-1].Take {
			t.Errorf("event %v of take %d after one of take %d", events[i].Name, events[i].Take, events[i-1].Take)
		}
	}
	if at, _ := p.TimeOf(lesson.ContactOf(1)); !near(events[contact(events)].At, (at+1)/0.5) {
		t.Errorf("the return at which the picture holds is at %v, want when it begins to hold, %v", events[contact(events)].At, (at+1)/0.5)
	}
}

func contact(events []reel.Event) int {
	for i, e := range events {
		if e.Name == lesson.ContactOf(1) {
			return i
		}
	}
	return -1
}

func TestTimesAndCaptions(t *testing.T) {
	at := func(s units.Seconds) lesson.Anchor { return lesson.Anchor{Offset: s} }
	from, to := at(-1), at(1)
	r := reel.Solve(sample(), lesson.Reel{
		Title: lesson.Card{Heading: "a", Length: 2}, End: lesson.Card{Text: "b", Length: 1},
		Takes: []lesson.Take{
			{Play: 1, From: &from, To: &to, Loops: 2, Caption: "slow", Speed: 0.5, Freezes: []lesson.Freeze{{At: at(0), Length: 3, Caption: "look"}, {At: at(0.5), Length: 1}}},
			{Play: 2, From: &from, To: &to},
		},
	})
	for _, c := range []struct {
		take int
		at   units.Seconds
		want []units.Seconds
	}{
		{0, -1, []units.Seconds{2, 10}}, {0, 0, []units.Seconds{4, 12}}, {0, 0.25, []units.Seconds{7.5, 15.5}}, {0, 1, []units.Seconds{10, 18}}, {0, 1.5, nil}, {1, 0, []units.Seconds{19}},
	} {
		if got := r.Times(c.take, c.at); !slices.EqualFunc(got, c.want, near) {
			t.Errorf("Times(%d, %v) = %v, want %v", c.take, c.at, got, c.want)
		}
	}
	want := "[{{2 4} slow 0} {{4 7} look 0} {{7 12} slow 0} {{12 15} look 0} {{15 18} slow 0}]"
	if got := fmt.Sprint(r.Captions()); got != want {
		t.Errorf("Captions = %v, want %v", got, want)
	}
	if got, want := fmt.Sprint(r.Cards()), "[{{0 2} {a  2}} {{20 21} { b 1}}]"; got != want {
		t.Errorf("Cards = %v, want %v", got, want)
	}
}
