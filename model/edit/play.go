package edit

import (
	"slices"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
)

// ReplacePlay is the lesson with play i replaced.
func ReplacePlay(l lesson.Lesson, i int, p lesson.Play) lesson.Lesson { return l.WithPlay(i, p) }

// MoveKeyframe is the play with keyframe i of a player at another place.
func MoveKeyframe(p lesson.Play, id game.Player, i int, to court.Point) lesson.Play {
	track := slices.Clone(p.Tracks[id])
	track[i].Place = to
	return p.WithTrack(id, track)
}

// InsertKeyframe is the play with a keyframe put before number i of a player's track.
func InsertKeyframe(p lesson.Play, id game.Player, i int, k lesson.Keyframe) lesson.Play {
	return p.WithTrack(id, slices.Insert(slices.Clone(p.Tracks[id]), i, k))
}
