package app

import (
	"io/fs"
	"reflect"
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
		if err == nil && !d.IsDir() && path != assets.SpanishLessons+"/"+d.Name() {
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
	if en, es := len(inEnglish()), len(inSpanish()); en != len(assets.LessonNames) || es != en {
		t.Errorf("of %d built-in lessons %d can be read in English, %d in Spanish", len(assets.LessonNames), en, es)
	}
}

// The Spanish lessons are the English ones with other words, and all of them.
func TestSpanishLessonsAreTheSame(t *testing.T) {
	for i, en := range inEnglish() {
		es := inSpanish()[i]
		if a, b := said(en), said(es); len(a) != len(b) {
			t.Errorf("%s: %d texts, in Spanish %d", en.Title, len(a), len(b))
		} else {
			for n := range a {
				if a[n] == b[n] && a[n] != "" {
					t.Errorf("%s: %q is not translated", en.Title, a[n])
				}
			}
		}
		if !reflect.DeepEqual(wordless(en), wordless(es)) {
			t.Errorf("%s: the Spanish lesson differs in more than its words", en.Title)
		}
	}
}

// said are a lesson's texts, in their order; a score is said alike everywhere.
func said(l lesson.Lesson) []string {
	all := []string{l.Title, l.Notes}
	for _, p := range l.Plays {
		all = append(append(all, p.Title, p.Notes), p.Tags...)
		for _, m := range p.Marks {
			all = append(all, m.Text)
		}
		for _, c := range p.Cues {
			if c.Text != p.Situation.Call.String() {
				all = append(all, c.Text)
			}
		}
	}
	return all
}

// wordless is a lesson without its texts.
func wordless(l lesson.Lesson) lesson.Lesson {
	l.Title, l.Notes = "", ""
	l.Plays = slices.Clone(l.Plays)
	for i, p := range l.Plays {
		p.Title, p.Notes, p.Tags = "", "", nil
		p.Marks, p.Cues = slices.Clone(p.Marks), slices.Clone(p.Cues)
		for n := range p.Marks {
			p.Marks[n].Text = ""
		}
		for n := range p.Cues {
			p.Cues[n].Text = ""
		}
		l.Plays[i] = p
	}
	return l
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
	until := r.From
	for _, c := range p.Cues {
		if c.Kind == lesson.Caption {
			if from := r.TimeAt(c.Span.From); from < until {
				t.Errorf("%s, %s: the caption %q begins before the one before it ends", l.Title, p.Title, c.Text)
			}
			until = r.TimeAt(c.Span.To)
		}
	}
	for _, f := range slices.Concat(rules.Check(r, l), advice.Check(r)) {
		if f.Severity == finding.Fault || f.Severity == finding.Late {
			t.Errorf("%s, %s: %s", l.Title, p.Title, words.Finding(f, l))
		}
	}
}
