package rally

import (
	"math"
	"slices"
	"testing"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

// Before the serve the server carries the ball, as far from the place where it
// is struck as the server is from the place at the serve.
func TestBallIsCarriedBeforeTheServe(t *testing.T) {
	track := []lesson.Keyframe{{At: after(-1.5), Place: court.Pt(0, -27)}, {Place: court.Pt(4, -23)}}
	r := solved(t, play(four()...).WithTrack(game.Near1, track))
	if r.From != -1.5 {
		t.Fatalf("the rally starts at %v, want at its lead of 1.5 s", r.From)
	}
	for _, at := range []units.Seconds{-1.5, -1, -0.75, -0.1, 0} {
		f := r.At(at)
		if got, want := f.Ball.Ground().Sub(f.Players[game.Near1].Run.Place), court.Pt(2, 0); got.Distance(want) > 1e-9 {
			t.Errorf("At(%v s): the ball is %v ft from the server, want %v", at, got, want)
		}
		if got := f.Ball.Height().Feet(); !near(float64(got), 2.6, 1e-9) {
			t.Errorf("At(%v s): the ball is %v ft high, want 2.6", at, got)
		}
	}
	checkPoint(t, "ball at the serve", r.At(0).Ball.Ground(), court.Pt(6, -23))
}

func TestNoLead(t *testing.T) {
	p := play(four()...)
	p.Lead = 0
	r := solved(t, p)
	if got := r.At(-3).T; got != 0 || math.Signbit(float64(got)) {
		t.Errorf("without a lead the rally starts at %v, want 0 and not -0", got)
	}
}

// Times outside the rally show its ends, and what is not a number its start.
func TestAtOutside(t *testing.T) {
	r := solved(t, play(four()...))
	inf := units.Seconds(math.Inf(1))
	for at, want := range map[units.Seconds]units.Seconds{-100: r.From, -inf: r.From, 100: r.To, inf: r.To} {
		if got := r.At(at); got.T != want || got.Ball != r.At(want).Ball || got.Players != r.At(want).Players {
			t.Errorf("At(%v s) is the frame at %v, want at %v", at, got.T, want)
		}
	}
	if got := r.At(units.Seconds(math.NaN())).T; got != r.From {
		t.Errorf("At(NaN) is the frame at %v, want the start", got)
	}
}

func TestFeetStandSquareToTheFacing(t *testing.T) {
	for _, c := range []struct {
		facing      units.Degrees
		left, right court.Point
	}{
		{0, court.Pt(2.4, 20), court.Pt(3.6, 20)},
		{90, court.Pt(3, 20.6), court.Pt(3, 19.4)},
		{180, court.Pt(3.6, 20), court.Pt(2.4, 20)},
	} {
		r := solved(t, play(four()[:1]...).WithTrack(game.Far2, []lesson.Keyframe{{Place: court.Pt(3, 20), Facing: c.facing}}))
		feet := r.At(0).Players[game.Far2].Feet
		checkPoint(t, "left foot", feet[0], c.left)
		checkPoint(t, "right foot", feet[1], c.right)
	}
}

// Cues and marks live from their first anchor until just before their last,
// where the next may begin; one that ends with the rally stays to its end.
func TestLiveSpans(t *testing.T) {
	span := func(from, to lesson.Anchor) lesson.Span { return lesson.Span{From: from, To: to} }
	contact := lesson.At(lesson.ContactOf(1))
	p := play(four()...)
	p.Cues = []lesson.Cue{
		{Text: "before", Span: span(after(-1.5), after(-0.5))},
		{Text: "serve to return", Span: span(after(0), contact)},
		{Text: "never: it ends before it starts", Span: span(contact, after(0))},
	}
	p.Marks = []lesson.Mark{{Text: "from the return", Span: span(contact, lesson.At(lesson.TheEnd))}}
	r := solved(t, p)
	met := timeOf(t, r, "return.contact")
	for _, c := range []struct {
		at          units.Seconds
		cues, marks []int
	}{
		{-1.5, []int{0}, nil}, {-0.5001, []int{0}, nil}, {-0.5, nil, nil}, {0, []int{1}, nil},
		{met - 1e-9, []int{1}, nil}, {met, nil, []int{0}}, {r.To, nil, []int{0}},
	} {
		if f := r.At(c.at); !slices.Equal(f.Cues, c.cues) || !slices.Equal(f.Marks, c.marks) {
			t.Errorf("At(%v s): cues %v, marks %v, want %v, %v", c.at, f.Cues, f.Marks, c.cues, c.marks)
		}
	}
}

// A change hangs on the last contact at or before its moment.
func TestAnchorAt(t *testing.T) {
	r := solved(t, play(four()...))
	third := timeOf(t, r, "third.contact")
	for _, c := range []struct {
		at   units.Seconds
		want lesson.Anchor
	}{
		{-1, lesson.Anchor{Offset: -1}},
		{0, lesson.Anchor{}},
		{0.5, lesson.Anchor{Offset: 0.5}},
		{third, lesson.At(lesson.ContactOf(2))},
		{third + 0.25, lesson.Anchor{Event: lesson.ContactOf(2), Offset: 0.25}},
	} {
		got := r.AnchorAt(c.at)
		if got.Event != c.want.Event || !near(float64(got.Offset), float64(c.want.Offset), 1e-12) {
			t.Errorf("AnchorAt(%v s) = %+v, want %+v", c.at, got, c.want)
		}
		if back := r.TimeAt(got); !near(float64(back), float64(c.at), 1e-12) {
			t.Errorf("TimeAt(AnchorAt(%v s)) = %v", c.at, back)
		}
	}
}

func TestPlayer(t *testing.T) {
	r := solved(t, play(four()...))
	r.Teams[court.Far].Players[1].Name = "Oda"
	if got := r.Player(game.Far2).Name; got != "Oda" {
		t.Errorf("Player(far2) is %q, want Oda", got)
	}
}
