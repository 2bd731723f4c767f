package edit

import (
	"reflect"
	"testing"

	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
)

// Plays come in where they are put, and every rally keeps the play it was shown
// by; one shown by none, or by a play that is gone, still is.
func TestInsertPlays(t *testing.T) {
	one, two := lesson.Play{Title: "one"}, lesson.Play{Title: "two"}
	for _, c := range []struct {
		at    int
		plays []lesson.Play
		want  []string // titles
		shown []int    // by the rallies
	}{
		{0, []lesson.Play{one}, []string{"one", "0", "1", "2"}, []int{0, 2, 3, 4, 10}},
		{1, []lesson.Play{one, two}, []string{"0", "one", "two", "1", "2"}, []int{0, 1, 4, 5, 11}},
		{3, []lesson.Play{two}, []string{"0", "1", "2", "two"}, []int{0, 1, 2, 3, 10}},
		{2, nil, []string{"0", "1", "2"}, []int{0, 1, 2, 3, 9}},
	} {
		l := shownLesson()
		got := InsertPlays(l, c.at, c.plays...)
		for i, want := range c.want {
			if got.Plays[i].Title != want {
				t.Errorf("InsertPlays(%d, %d plays): play %d is %q, want %q", c.at, len(c.plays), i, got.Plays[i].Title, want)
			}
		}
		if len(got.Plays) != len(c.want) {
			t.Errorf("InsertPlays(%d, %d plays) has %d plays, want %d", c.at, len(c.plays), len(got.Plays), len(c.want))
		}
		for i, want := range c.shown {
			if r := got.Match.Rallies[i]; r.Play != want {
				t.Errorf("InsertPlays(%d, %d plays): rally %d is shown by play %d, want %d", c.at, len(c.plays), i, r.Play, want)
			}
		}
		if !reflect.DeepEqual(l, shownLesson()) {
			t.Errorf("InsertPlays(%d, %d plays) changed the lesson it was given", c.at, len(c.plays))
		}
	}
}

// shownLesson has three plays and five rallies: shown by none, by each, and by one that is gone.
func shownLesson() lesson.Lesson {
	l := lessontest.Long(3)
	for i, title := range []string{"0", "1", "2"} {
		l.Plays[i].Title = title
	}
	l.Match.Rallies = []lesson.MatchRally{{}, {Play: 1}, {Play: 2}, {Play: 3}, {Play: 9}}
	return l
}

func TestRemovePlay(t *testing.T) {
	l := lessontest.Long(3)
	l.Match.Rallies = []lesson.MatchRally{{Play: 1}, {Play: 2}, {Play: 3}, {Play: 0}}
	got := RemovePlay(l, 1)
	if len(got.Plays) != 2 || got.Plays[1].Title != l.Plays[2].Title {
		t.Errorf("RemovePlay(1) leaves %d plays, want the first and the last", len(got.Plays))
	}
	for n, want := range []int{1, 0, 2, 0} {
		if got.Match.Rallies[n].Play != want {
			t.Errorf("after RemovePlay(1) rally %d shows play %d, want %d", n, got.Match.Rallies[n].Play, want)
		}
	}
	if len(l.Plays) != 3 || l.Match.Rallies[2].Play != 3 {
		t.Error("RemovePlay changed the lesson it was given")
	}
}

// A play moves, those between make room, and every rally keeps the play it was
// shown by.
func TestMovePlay(t *testing.T) {
	for _, c := range []struct {
		i, to int
		want  string
		shown []int
	}{
		{0, 2, "120", []int{0, 3, 1, 2, 9}}, {2, 0, "201", []int{0, 2, 3, 1, 9}}, {0, 1, "102", []int{0, 2, 1, 3, 9}}, {1, 1, "012", []int{0, 1, 2, 3, 9}},
	} {
		l := shownLesson()
		got := MovePlay(l, c.i, c.to)
		titles := ""
		for _, p := range got.Plays {
			titles += p.Title
		}
		if titles != c.want {
			t.Errorf("MovePlay(%d, %d) = %s, want %s", c.i, c.to, titles, c.want)
		}
		for i, want := range c.shown {
			if r := got.Match.Rallies[i]; r.Play != want {
				t.Errorf("MovePlay(%d, %d): rally %d is shown by play %d, want %d", c.i, c.to, i, r.Play, want)
			}
		}
		if !reflect.DeepEqual(l, shownLesson()) {
			t.Errorf("MovePlay(%d, %d) changed the lesson it was given", c.i, c.to)
		}
		if back := MovePlay(got, c.to, c.i); !reflect.DeepEqual(back, l) {
			t.Errorf("MovePlay(%d, %d) and back is another lesson", c.i, c.to)
		}
	}
}
