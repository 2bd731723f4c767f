package session_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"homeside/app/session"
	"homeside/model/game"
	"homeside/model/lesson"
)

func tagged() lesson.Lesson {
	return lesson.Lesson{Plays: []lesson.Play{
		{Title: "Saque con señal", Notes: "Walk it first.", Tags: []string{"stack", "serve"}},
		{Title: "Return and stay", Tags: []string{"return", "Stay"}},
		{Title: "Poach", Situation: lesson.Situation{Call: game.Call{Serving: 4, Receiving: 7, Server: 2}}, Tags: []string{"stack"}},
	}}
}

func TestFindPlays(t *testing.T) {
	for _, c := range []struct {
		query string
		want  []int
	}{
		{"", []int{0, 1, 2}}, {"  ", []int{0, 1, 2}}, {"stack", []int{0, 2}}, {"STACK poach", []int{2}}, {"SENAL", []int{0}}, {"señal", []int{0}},
		{"stay", []int{1}}, {"walk", []int{0}}, {"4-7-2", []int{2}}, {"lob", []int{}}, {"stack lob", []int{}},
	} {
		if got := session.FindPlays(tagged(), c.query); !slices.Equal(got, c.want) {
			t.Errorf("FindPlays(%q) = %v, want %v", c.query, got, c.want)
		}
	}
}

func TestTagsOf(t *testing.T) {
	if got, want := strings.Join(session.TagsOf(tagged()), " "), "stack serve return Stay"; got != want {
		t.Errorf("TagsOf = %s, want %s", got, want)
	}
}

// Whatever is typed, a lesson takes the tags.
func TestSplitTags(t *testing.T) {
	var many []string
	for i := range lesson.MaxTags + 5 {
		many = append(many, fmt.Sprint("t", i))
	}
	for _, c := range []struct{ text, want string }{
		{"", ""}, {" , ,", ""}, {"a", "a"}, {" stack ,serve,, stack", "stack|serve"}, {"two words,b", "two words|b"},
		{strings.Repeat("é", lesson.MaxTag) + "x", strings.Repeat("é", lesson.MaxTag)}, {strings.Join(many, ","), strings.Join(many[:lesson.MaxTags], "|")},
		{strings.Repeat("a", lesson.MaxTag-1) + " b", strings.Repeat("a", lesson.MaxTag-1)},
	} {
		got := session.SplitTags(c.text)
		if strings.Join(got, "|") != c.want {
			t.Errorf("SplitTags(%q) = %q, want %s", c.text, got, c.want)
		}
		l := drill()
		l.Plays[0].Tags = got
		if problems := lesson.Validate(l); len(problems) > 0 {
			t.Errorf("the tags of %q are refused: %v", c.text, problems)
		}
	}
}
