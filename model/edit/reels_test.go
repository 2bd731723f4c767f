package edit_test

import (
	"reflect"
	"testing"

	"pgregory.net/rapid"

	"homeside/model/edit"
	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
)

// titles are the plays that the takes of a lesson's reels show, by title.
func titles(l lesson.Lesson) [][]string {
	out := make([][]string, len(l.Reels))
	name := func(n int) string {
		if n < 1 || n > len(l.Plays) {
			return ""
		}
		return l.Plays[n-1].Title
	}
	for i, r := range l.Reels {
		for _, t := range r.Takes {
			out[i] = append(out[i], name(t.Play)+" beside "+name(t.Beside))
		}
	}
	return out
}

// named is a lesson with plays of distinct titles and one reel of all, in pairs.
func named(titles ...string) lesson.Lesson {
	l := lesson.Lesson{Reels: []lesson.Reel{{}}}
	for i, title := range titles {
		p := lessontest.SamplePlay()
		p.Title = title
		l.Plays = append(l.Plays, p)
		l.Reels[0].Takes = append(l.Reels[0].Takes, lesson.Take{Play: i + 1, Beside: (i + 1) % (len(titles) + 1)})
	}
	return l
}

func TestTakesKeepTheirPlays(t *testing.T) {
	l := named("a", "b", "c")
	for _, c := range []struct {
		name string
		got  lesson.Lesson
		want []string
	}{
		{"InsertPlays(1)", edit.InsertPlays(l, 1, lessontest.SamplePlay(), lessontest.SamplePlay()), []string{"a beside a", "b beside b", "c beside c"}},
		{"InsertPlays(3)", edit.InsertPlays(l, 3, lessontest.SamplePlay()), []string{"a beside a", "b beside b", "c beside c"}},
		{"RemovePlay(1)", edit.RemovePlay(l, 1), []string{"a beside a", "c beside c"}},
	} {
		if got := titles(c.got)[0]; !reflect.DeepEqual(got, c.want) {
			t.Errorf("%s: the takes show %q, want %q", c.name, got, c.want)
		}
	}
	l.Reels[0].Takes[0].Beside = 2
	if got := edit.RemovePlay(l, 1).Reels[0].Takes[0].Beside; got != 0 {
		t.Errorf("RemovePlay of the play beside leaves %d beside, want none", got)
	}
}

// Whatever is inserted and removed again, the lesson is as it was and was never
// changed in place.
func TestTakesThereAndBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := lesson.Reel{Takes: rapid.SliceOfN(rapid.Custom(lessontest.Take), 1, 5).Draw(t, "takes")}
		before := lesson.Reel{Takes: append([]lesson.Take(nil), r.Takes...)}
		i, to := rapid.IntRange(0, len(r.Takes)-1).Draw(t, "i"), rapid.IntRange(0, len(r.Takes)-1).Draw(t, "to")
		if got := edit.MoveTake(edit.MoveTake(r, i, to), to, i); !reflect.DeepEqual(got, before) {
			t.Fatalf("MoveTake(%d, %d) and back = %v, want %v", i, to, got, before)
		}
		if got := edit.MoveTake(r, i, to).Takes[to]; !reflect.DeepEqual(got, before.Takes[i]) {
			t.Fatalf("MoveTake(%d, %d) has %v there, want %v", i, to, got, before.Takes[i])
		}
		if got := edit.RemoveTake(edit.InsertTake(r, i, r.Takes[to]), i); !reflect.DeepEqual(got, before) {
			t.Fatalf("InsertTake(%d) and RemoveTake = %v, want %v", i, got, before)
		}
		edit.ReplaceTake(r, i, lesson.Take{})
		if !reflect.DeepEqual(r, before) {
			t.Fatalf("the reel was changed in place: %v, want %v", r, before)
		}
	})
}

func TestReelsOfALesson(t *testing.T) {
	l := edit.AddReel(edit.AddReel(lesson.Lesson{}, lesson.Reel{Name: "a"}), lesson.Reel{Name: "b"})
	l = edit.ReplaceReel(edit.RemoveReel(l, 0), 0, lesson.Reel{Name: "c"})
	l = edit.ReplaceLogo(l, lessontest.SampleLogo())
	if len(l.Reels) != 1 || l.Reels[0].Name != "c" || l.Logo != lessontest.SampleLogo() {
		t.Errorf("add a, add b, remove a, replace b by c: %+v, want c with the logo", l.Reels)
	}
}
