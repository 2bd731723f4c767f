package edit

import (
	"slices"

	"homeside/model/lesson"
)

// InsertPlays is the lesson with plays put before play i, or behind the last
// where i is their number. The rallies of the match keep the plays they were
// shown by.
func InsertPlays(l lesson.Lesson, i int, plays ...lesson.Play) lesson.Lesson {
	l.Plays = slices.Concat(l.Plays[:i], plays, l.Plays[i:])
	l.Match.Rallies = slices.Clone(l.Match.Rallies)
	for n, r := range l.Match.Rallies {
		if r.Play > i { // counted from 1
			l.Match.Rallies[n].Play += len(plays)
		}
	}
	return l
}
