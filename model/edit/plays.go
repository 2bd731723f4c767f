package edit

import (
	"slices"

	"homeside/model/lesson"
)

// InsertPlays is the lesson with plays put before play i, or behind the last
// where i is their number. The rallies of the match and the takes of the reels
// keep the plays they were shown by.
func InsertPlays(l lesson.Lesson, i int, plays ...lesson.Play) lesson.Lesson {
	l.Plays = slices.Concat(l.Plays[:i], plays, l.Plays[i:])
	return renumber(l, func(n int) int {
		if n > i {
			return n + len(plays)
		}
		return n
	})
}

// MovePlay is the lesson with play i put where play to stands; those between
// make room. The rallies of the match and the takes of the reels keep the plays
// they were shown by.
func MovePlay(l lesson.Lesson, i, to int) lesson.Lesson {
	p := l.Plays[i]
	l.Plays = slices.Insert(slices.Delete(slices.Clone(l.Plays), i, i+1), to, p)
	return renumber(l, func(n int) int {
		switch n--; { // from 0
		case n == i:
			n = to
		case i < n && n <= to:
			n--
		case to <= n && n < i:
			n++
		}
		return n + 1
	})
}

// RemovePlay is the lesson without play i. Rallies of the match that were shown
// by it are shown by none and its takes go with it; the others keep theirs.
func RemovePlay(l lesson.Lesson, i int) lesson.Lesson {
	l.Plays = slices.Delete(slices.Clone(l.Plays), i, i+1)
	return renumber(l, func(n int) int {
		switch {
		case n == i+1: // counted from 1
			return 0
		case n > i+1:
			return n - 1
		}
		return n
	})
}
