package edit

import (
	"slices"

	"homeside/model/lesson"
)

// AddReel is the lesson with a reel put behind its last.
func AddReel(l lesson.Lesson, r lesson.Reel) lesson.Lesson {
	l.Reels = append(slices.Clip(l.Reels), r)
	return l
}

// ReplaceReel is the lesson with reel i replaced.
func ReplaceReel(l lesson.Lesson, i int, r lesson.Reel) lesson.Lesson { return l.WithReel(i, r) }

// RemoveReel is the lesson without reel i.
func RemoveReel(l lesson.Lesson, i int) lesson.Lesson {
	l.Reels = slices.Delete(slices.Clone(l.Reels), i, i+1)
	return l
}

// ReplaceLogo is the lesson with another logo for its reels.
func ReplaceLogo(l lesson.Lesson, g lesson.Logo) lesson.Lesson {
	l.Logo = g
	return l
}

// InsertTake is the reel with a take put before take i, or behind the last
// where i is their number.
func InsertTake(r lesson.Reel, i int, t lesson.Take) lesson.Reel {
	r.Takes = slices.Insert(slices.Clone(r.Takes), i, t)
	return r
}

// ReplaceTake is the reel with take i replaced.
func ReplaceTake(r lesson.Reel, i int, t lesson.Take) lesson.Reel { return r.WithTake(i, t) }

// RemoveTake is the reel without take i.
func RemoveTake(r lesson.Reel, i int) lesson.Reel {
	r.Takes = slices.Delete(slices.Clone(r.Takes), i, i+1)
	return r
}

// MoveTake is the reel with take i at place to, the others in their order.
func MoveTake(r lesson.Reel, i, to int) lesson.Reel {
	t := r.Takes[i]
	return InsertTake(RemoveTake(r, i), to, t)
}

// renumber tells what refers to the lesson's plays that play n, counted from 1,
// is number of(n) now, 0 where it is gone. A rally of the match that was shown by
// a play that is gone is shown by none, a take of it goes with it; so do those of
// plays that were never there and would be numbered past lesson.MaxPlays.
func renumber(l lesson.Lesson, to func(n int) int) lesson.Lesson {
	of := func(n int) int {
		if n = to(n); n > lesson.MaxPlays {
			return 0
		}
		return n
	}
	l.Match.Rallies = slices.Clone(l.Match.Rallies)
	for i, r := range l.Match.Rallies {
		if r.Play > 0 {
			l.Match.Rallies[i].Play = of(r.Play)
		}
	}
	l.Reels = slices.Clone(l.Reels)
	for i, r := range l.Reels {
		l.Reels[i].Takes = renumberTakes(r.Takes, of)
	}
	return l
}

func renumberTakes(takes []lesson.Take, of func(n int) int) (kept []lesson.Take) {
	for _, t := range takes {
		if t.Play = of(t.Play); t.Play == 0 {
			continue
		}
		if t.Beside > 0 {
			t.Beside = of(t.Beside)
		}
		kept = append(kept, t)
	}
	return kept
}
