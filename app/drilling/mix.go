package drilling

import (
	"homeside/model/court"
	"homeside/model/lesson"
	"homeside/model/signal"
)

// mixOf is the best mix of a pair that serves from a court, by the tally of the
// lesson's match; false while one of the four chances has no rally.
func mixOf(l lesson.Lesson, team court.End, from court.Side) (signal.Mix, bool) {
	t, err := signal.TallyOf(l, team, from)
	if err != nil {
		return signal.Mix{}, false
	}
	g, ok := t.Game()
	return g.Best(), ok
}
