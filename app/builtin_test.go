package app

import (
	"io/fs"
	"slices"
	"strings"
	"testing"

	"homeside/assets"
	"homeside/model/advice"
	"homeside/model/finding"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/rules"
	"homeside/words"
)

// Every built-in lesson is listed and can be read.
func TestBuiltInLessonsAreListed(t *testing.T) {
	var there []string
	err := fs.WalkDir(assets.Lessons, "lessons", func(path string, d fs.DirEntry, err error) error {
		if err == nil && !d.IsDir() {
			there = append(there, path)
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	listed := slices.Sorted(slices.Values(assets.LessonNames[:]))
	if !slices.Equal(there, listed) {
		t.Errorf("embedded %v, listed %v", there, listed)
	}
	if got := len(builtIn()); got != len(assets.LessonNames) {
		t.Errorf("%d of %d built-in lessons can be read", got, len(assets.LessonNames))
	}
}

// The built-in lessons are of invented people with names, and every play of
// them is legal at a score that a game comes to.
func TestBuiltInLessonsAreSound(t *testing.T) {
	for _, l := range builtIn() {
		if !strings.Contains(l.Notes, "invented") {
			t.Errorf("%s: its notes do not say that the people are invented", l.Title)
		}
		for _, id := range game.Players {
			if l.Player(id).Name == "" {
				t.Errorf("%s: %v has no name", l.Title, id)
			}
		}
		for i, p := range l.Plays {
			checkBuiltIn(t, l, i, p)
		}
	}
}

func checkBuiltIn(t *testing.T, l lesson.Lesson, i int, p lesson.Play) {
	t.Helper()
	states, err := l.QueryOf(p).Who()
	if err != nil || len(states) == 0 {
		t.Errorf("%s, %s: no game comes to it: %v", l.Title, p.Title, err)
	}
	if !strings.HasPrefix(p.Title, p.Situation.Call.String()+": ") {
		t.Errorf("%s: the title %q does not begin with the score %v", l.Title, p.Title, p.Situation.Call)
	}
	r, err := rally.Solve(l, i)
	if err != nil {
		t.Fatalf("%s, %s: %v", l.Title, p.Title, err)
	}
	for _, f := range slices.Concat(rules.Check(r, l), advice.Check(r)) {
		if f.Severity == finding.Fault || f.Severity == finding.Late {
			t.Errorf("%s, %s: %s", l.Title, p.Title, words.Finding(f, l))
		}
	}
}
