package edit

import (
	"reflect"
	"testing"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
)

// Moving and inserting a keyframe give a new play and leave the old one alone.
func TestKeyframeEdits(t *testing.T) {
	to := court.Pt(3, -9)
	k := lesson.Keyframe{At: lesson.Anchor{Offset: 0.5}, Place: to}
	old := lessontest.SamplePlay().Tracks[game.Near1]
	moved := old[1]
	moved.Place = to
	for _, c := range []struct {
		name string
		edit func(lesson.Play) lesson.Play
		want []lesson.Keyframe
	}{
		{"move the second", func(p lesson.Play) lesson.Play { return MoveKeyframe(p, game.Near1, 1, to) }, []lesson.Keyframe{old[0], moved}},
		{"insert first", func(p lesson.Play) lesson.Play { return InsertKeyframe(p, game.Near1, 0, k) }, []lesson.Keyframe{k, old[0], old[1]}},
		{"insert between", func(p lesson.Play) lesson.Play { return InsertKeyframe(p, game.Near1, 1, k) }, []lesson.Keyframe{old[0], k, old[1]}},
		{"insert last", func(p lesson.Play) lesson.Play { return InsertKeyframe(p, game.Near1, 2, k) }, []lesson.Keyframe{old[0], old[1], k}},
	} {
		p := lessontest.SamplePlay()
		got := c.edit(p)
		if !reflect.DeepEqual(got.Tracks[game.Near1], c.want) {
			t.Errorf("%s: the track is %+v, want %+v", c.name, got.Tracks[game.Near1], c.want)
		}
		if !reflect.DeepEqual(p, lessontest.SamplePlay()) {
			t.Errorf("%s changed the play it was given", c.name)
		}
		got.Tracks[game.Near1] = p.Tracks[game.Near1]
		if !reflect.DeepEqual(got, p) {
			t.Errorf("%s changed more than the track", c.name)
		}
	}
}

func TestReplacePlay(t *testing.T) {
	l := lessontest.Long(3)
	p := lessontest.SamplePlay()
	p.Title = "another"
	got := ReplacePlay(l, 1, p)
	for i, want := range []string{l.Plays[0].Title, "another", l.Plays[2].Title} {
		if got.Plays[i].Title != want {
			t.Errorf("play %d is %q, want %q", i, got.Plays[i].Title, want)
		}
	}
	if !reflect.DeepEqual(l, lessontest.Long(3)) {
		t.Error("ReplacePlay changed the lesson it was given")
	}
}
