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

// RemovePlay is the lesson without play i. Rallies of the match that were shown
// by it are shown by none, the others keep theirs.
func RemovePlay(l lesson.Lesson, i int) lesson.Lesson {
	l.Plays = slices.Delete(slices.Clone(l.Plays), i, i+1)
	l.Match.Rallies = slices.Clone(l.Match.Rallies)
	for n, r := range l.Match.Rallies {
		switch {
		case r.Play == i+1: // counted from 1
			l.Match.Rallies[n].Play = 0
		case r.Play > i+1:
			l.Match.Rallies[n].Play--
		}
	}
	return l
}
