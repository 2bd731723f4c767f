package lessontest

import (
	"pgregory.net/rapid"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
)

func match(t *rapid.T) lesson.Match {
	return lesson.Match{
		First:   maybe(t, end),
		From:    maybe(t, opening),
		Rallies: some(t, 0, mostRallies, matchRally),
	}
}

func end(t *rapid.T) court.End { return member[court.End](t, "end", 2) }

func opening(t *rapid.T) lesson.Opening {
	s := situation(t)
	return lesson.Opening{Call: s.Call, Serving: s.Serving, Server: rapid.SampledFrom(game.Players[:]).Draw(t, "server")}
}

func matchRally(t *rapid.T) lesson.MatchRally {
	formations := rapid.SampledFrom(lesson.Formations[:])
	return lesson.MatchRally{
		Winner:     end(t),
		Formations: [2]lesson.Formation{formations.Draw(t, "near"), formations.Draw(t, "far")},
		Return:     rapid.SampledFrom(lesson.ReturnsTo[:]).Draw(t, "return"),
		Play:       rapid.IntRange(0, lesson.MaxPlays).Draw(t, "play"),
	}
}
