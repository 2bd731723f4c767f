package reel_test

import (
	"slices"
	"testing"

	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
	"homeside/model/reel"
	"homeside/model/units"
)

// A take with several stretches at other speeds lasts as long as they make it, and
// says of each whether it counts.
func TestSeveralSlows(t *testing.T) {
	l := lessontest.Long(1)
	at := func(s units.Seconds) lesson.Anchor { return lesson.Anchor{Offset: s} }
	slow := func(from, to units.Seconds, v float64) lesson.Slow {
		return lesson.Slow{Span: lesson.Span{From: at(from), To: at(to)}, Speed: v}
	}
	from, to := at(0), at(1)
	for name, c := range map[string]struct {
		slows []lesson.Slow
		want  []reel.SlowFault
		lasts units.Seconds
	}{
		"apart":     {[]lesson.Slow{slow(0, 0.25, 0.5), slow(0.5, 0.75, 0.25)}, []reel.SlowFault{reel.SlowCounts, reel.SlowCounts}, 0.5 + 0.5 + 1},
		"touching":  {[]lesson.Slow{slow(0, 0.5, 0.5), slow(0.5, 1, 0.25)}, []reel.SlowFault{reel.SlowCounts, reel.SlowCounts}, 1 + 2},
		"overlaid":  {[]lesson.Slow{slow(0, 0.5, 0.5), slow(0.25, 1, 0.25)}, []reel.SlowFault{reel.SlowCovered, reel.SlowCounts}, 0.5 + 3},
		"backwards": {[]lesson.Slow{slow(0.5, 0.25, 0.5), slow(0.5, 0.5, 0.5)}, []reel.SlowFault{reel.SlowEmpty, reel.SlowEmpty}, 1},
		"outside":   {[]lesson.Slow{slow(1, 1.5, 0.5), slow(-0.5, 0, 0.5), slow(-0.5, 0.5, 0.5)}, []reel.SlowFault{reel.SlowOutside, reel.SlowOutside, reel.SlowCounts}, 1 + 0.5},
		"emptied":   {[]lesson.Slow{slow(0, 0.5, 0.5), slow(0.5, 0.25, 2)}, []reel.SlowFault{reel.SlowCounts, reel.SlowEmpty}, 1 + 0.5},
	} {
		r := reel.Solve(l, lesson.Reel{Takes: []lesson.Take{{Play: 1, From: &from, To: &to, Slows: c.slows}}})
		if got := r.Takes[0].SlowFaults(); !slices.Equal(got, c.want) {
			t.Errorf("%s: faults %v, want %v", name, got, c.want)
		}
		if d := r.Length() - c.lasts; max(d, -d) > 1e-9 {
			t.Errorf("%s: the take lasts %v, want %v", name, r.Length(), c.lasts)
		}
	}
}
