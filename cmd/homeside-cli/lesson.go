package main

import (
	"fmt"

	"homeside/model/lesson"
	"homeside/model/lessonfile"
	"homeside/model/rally"
	"homeside/words"
)

// openPlay reads a lesson and solves one of its plays; plays count from 1, as
// in the window.
func openPlay(path string, play int) (lesson.Lesson, *rally.Rally, error) {
	l, err := lessonfile.Open(path)
	if err != nil {
		return l, nil, err
	}
	if play < 1 || play > len(l.Plays) {
		return l, nil, fmt.Errorf("%s: --play %d: the lesson has %s", path, play, words.Plays(len(l.Plays)))
	}
	r, err := rally.Solve(l, play-1)
	if err != nil {
		return l, nil, fmt.Errorf("%s: %w", path, err)
	}
	return l, r, nil
}
