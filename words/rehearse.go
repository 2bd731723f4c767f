package words

import (
	"homeside/model/advice"
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
)

// PathsCross warns partners where their paths cross.
func PathsCross(l lesson.Lesson, a advice.Approach) string {
	one, other := nameOf(l, a.Front), nameOf(l, a.Front.Partner())
	if a.Level {
		return T("Paths cross here: %s and %s, %s apart, neither in front. Agree who goes in front!", one, other, Length(a.Distance))
	}
	return T("Paths cross here: %s in front of %s, %s apart. Agree who goes in front!", one, other, Length(a.Distance))
}

// PathsCrossAt is PathsCross on paper, with the moment.
func PathsCrossAt(l lesson.Lesson, a advice.Approach) string {
	one, other := nameOf(l, a.Front), nameOf(l, a.Front.Partner())
	if a.Level {
		return T("Paths cross at %s: %s and %s, %s apart, neither in front. Agree who goes in front!", Seconds(a.When), one, other, Length(a.Distance))
	}
	return T("Paths cross at %s: %s in front of %s, %s apart. Agree who goes in front!", Seconds(a.When), one, other, Length(a.Distance))
}

// Partners are the two of a team, short enough for a list to choose from.
func Partners(l lesson.Lesson, e court.End) string {
	const most = 28 // letters
	return clipped(T("%s and %s", nameOf(l, game.PlayerOf(e, 1)), nameOf(l, game.PlayerOf(e, 2))), most)
}
