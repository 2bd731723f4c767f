package edit

import (
	"slices"

	"homeside/model/court"
	"homeside/model/lesson"
)

// ReplaceMatch is the lesson with its match replaced.
func ReplaceMatch(l lesson.Lesson, m lesson.Match) lesson.Lesson {
	l.Match = m
	return l
}

// AddPlay is the lesson with a play put behind its last.
func AddPlay(l lesson.Lesson, p lesson.Play) lesson.Lesson {
	l.Plays = append(slices.Clip(l.Plays), p)
	return l
}

// Starter is the lesson with another starting server of a team, 1 or 2.
func Starter(l lesson.Lesson, e court.End, number int) lesson.Lesson {
	l.Teams[e].Starter = number // Teams is an array: l is a copy
	return l
}

// Signs is the lesson with what a team's signs mean.
func Signs(l lesson.Lesson, e court.End, s lesson.Signs) lesson.Lesson {
	l.Teams[e].Signs = s
	return l
}

// FirstTeam is the lesson with the team that served first in its match.
func FirstTeam(l lesson.Lesson, e court.End) lesson.Lesson {
	l.Match.First = &e
	return l
}

// Situate is the play at another score.
func Situate(p lesson.Play, s lesson.Situation) lesson.Play {
	p.Situation = s
	return p
}
