package reel_test

import (
	"errors"
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
	"homeside/model/rally"
	"homeside/model/reel"
	"homeside/model/units"
)

// aFrame is the shortest frame that a clip can have, of 60 a second.
const aFrame units.Seconds = 1.0 / 60

// Whatever play, recipe and length: the reel lasts as long as was wanted, within
// a frame, and is a sound one; or the length is refused because one pass does not
// fit or too many would be needed.
func TestFitLastsAsLongAsWanted(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := lesson.Lesson{Plays: rapid.SliceOfN(lessontest.Plays(), 1, 2).Draw(t, "plays")}
		n := units.Seconds(rapid.OneOf(rapid.Float64Range(0, 30), rapid.Float64Range(0, 600)).Draw(t, "n"))
		o := reel.FitOptions{
			Recipe: rapid.SampledFrom(reel.Recipes[:]).Draw(t, "recipe"), Beside: rapid.IntRange(0, len(l.Plays)).Draw(t, "beside"),
			Say: func(*rally.Rally, int) string { return strings.Repeat("x", rapid.IntRange(0, 300).Draw(t, "letters")) },
		}
		f, err := reel.Fit(l, 0, n, o)
		least := passOf(l, o.Beside)
		var length *reel.LengthError
		if errors.As(err, &length) {
			if n >= least && n <= length.Most || !near(length.Least, least) {
				t.Fatalf("Fit(%v) = %v, want a reel: a pass takes %v", n, err, least)
			}
			return
		}
		if err != nil {
			t.Fatalf("Fit(%v) = %v", n, err)
		}
		if problems := lesson.Validate(lesson.Lesson{Plays: l.Plays, Reels: []lesson.Reel{f.Reel}}); problems != nil {
			t.Fatalf("Fit(%v) = %+v: %v", n, f.Reel, problems)
		}
		solved := reel.Solve(l, f.Reel)
		if d := math.Abs(float64(solved.Length() - n)); d > float64(aFrame) || len(solved.Left) > 0 {
			t.Fatalf("Fit(%v) lasts %v and leaves %v, want it to last that long: %+v", n, solved.Length(), solved.Left, f.Reel)
		}
	})
}

// passOf is how long one pass of the first play takes at match speed.
func passOf(l lesson.Lesson, beside int) units.Seconds {
	return reel.Solve(l, lesson.Reel{Takes: []lesson.Take{{Play: 1, Beside: beside}}}).Length()
}

// taught is a lesson whose first play has a title, a signal and a caption.
func taught() lesson.Lesson {
	l := sample()
	l.Plays[0].Cues[1].Span.To = lesson.Anchor{} // to the serve
	return l
}

func fit(t *testing.T, l lesson.Lesson, n units.Seconds, o reel.FitOptions) reel.Fitted {
	t.Helper()
	f, err := reel.Fit(l, 0, n, o)
	if err != nil {
		t.Fatalf("Fit(%v, %+v) = %v", n, o, err)
	}
	return f
}

// The shorter the clip, the more is left out: the signal first, then the title,
// freezes, the slow pass; a longer one repeats the pass at match speed.
func TestWhatIsLeftOut(t *testing.T) {
	l := taught()
	pass := passOf(l, 0)
	before := -1
	seen := map[string]bool{}
	for n := 80.0; n >= float64(pass); n -= 0.25 {
		f := fit(t, l, units.Seconds(n), reel.FitOptions{})
		if len(f.Left) < before {
			t.Errorf("Fit(%v) leaves out %v, a longer one %d parts", n, f.Left, before)
		}
		before = len(f.Left)
		seen[fmt.Sprint(f.Left)] = true
		for part, there := range map[reel.Part]bool{
			reel.TitlePart:  f.Reel.Title.Shown(),
			reel.SignalPart: slices.ContainsFunc(f.Reel.Takes, func(t lesson.Take) bool { return t.Camera.Kind == lesson.PushIn }),
			reel.SlowPart:   slices.ContainsFunc(f.Reel.Takes, func(t lesson.Take) bool { return t.To == nil && t.Rate() < 1 }),
		} {
			if there == slices.Contains(f.Left, part) {
				t.Errorf("Fit(%v) says that it leaves out %v; part %d is there: %v", n, f.Left, part, there)
			}
		}
		if last := f.Reel.Takes[len(f.Reel.Takes)-1]; last.Rate() != 1 {
			t.Errorf("Fit(%v) ends with a pass at %v, want match speed", n, last.Rate())
		}
	}
	if len(seen) < 5 {
		t.Errorf("from 80 s to %.1f s there are only %d ways: %v", float64(pass), len(seen), seen)
	}
}

func TestFitExplains(t *testing.T) {
	say := func(_ *rally.Rally, shot int) string { return fmt.Sprint("contact ", shot) }
	f := fit(t, taught(), 40, reel.FitOptions{Say: say})
	slow := f.Reel.Takes[1]
	if got, want := f.Reel.Title.Heading, "Stack behind the serve"; got != want || len(f.Left) > 0 {
		t.Errorf("Fit(40) has title %q and leaves %v, want %q and nothing", got, f.Left, want)
	}
	if slow.Rate() < 0.25-rounding || slow.Rate() > 0.75+rounding || len(slow.Freezes) == 0 {
		t.Errorf("the slow pass is at %v with %d freezes, want 0.25 to 0.75 and some", slow.Rate(), len(slow.Freezes))
	}
	captions := ""
	for _, z := range slow.Freezes {
		captions += z.Caption + ";"
		if z.Length < 1-rounding || z.Length > 10 {
			t.Errorf("a freeze of %v s, want 1 to 10", z.Length)
		}
	}
	if !strings.Contains(captions, "contact 1") {
		t.Errorf("the freezes say %q, want contact 1 among them", captions)
	}
}

func TestFitRefuses(t *testing.T) {
	l := taught()
	pass := float64(passOf(l, 0))
	for _, c := range []struct {
		n    units.Seconds
		o    reel.FitOptions
		want string
	}{
		{1, reel.FitOptions{}, fmt.Sprintf("1.0 s is too short: one pass at match speed takes %.1f s", pass)},
		{-5, reel.FitOptions{Recipe: reel.Loop}, "-5.0 s is too short"},
		{2000, reel.FitOptions{Recipe: reel.Loop}, fmt.Sprintf("2000.0 s is too long: at most %.0f s", math.Floor(20*pass))},
		{units.Seconds(math.NaN()), reel.FitOptions{}, "must be a number"},
		{units.Seconds(math.Inf(1)), reel.FitOptions{}, "is too long"},
		{20, reel.FitOptions{Beside: 7}, "play 7"},
	} {
		if _, err := reel.Fit(l, 0, c.n, c.o); err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("Fit(%v, %+v) = %v, want %q", c.n, c.o, err, c.want)
		}
	}
	if _, err := reel.Fit(l, 5, 20, reel.FitOptions{}); err == nil {
		t.Error("Fit of play 6 of 2 gives no error")
	}
}

func TestRecipeNames(t *testing.T) {
	for _, r := range reel.Recipes {
		if got, err := reel.ParseRecipe(r.String()); err != nil || got != r {
			t.Errorf("ParseRecipe(%q) = %v, %v; want %v", r.String(), got, err, r)
		}
	}
	if _, err := reel.ParseRecipe("soup"); err == nil || !strings.Contains(err.Error(), "teach, slow-fast, loop") {
		t.Errorf("ParseRecipe(soup) = %v, want the recipes that there are", err)
	}
}
