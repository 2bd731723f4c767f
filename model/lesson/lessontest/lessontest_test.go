package lessontest

import (
	"reflect"
	"testing"

	"pgregory.net/rapid"

	_ "homeside/internal/fixedseed"
	"homeside/model/lesson"
)

func TestLessonsAreSound(t *testing.T) {
	for _, l := range []lesson.Lesson{Sample(), Long(5)} {
		if got := lesson.Validate(l); got != nil {
			t.Errorf("Validate(%q) = %v, want nil", l.Title, got)
		}
	}
	rapid.Check(t, func(t *rapid.T) {
		l := Lessons().Draw(t, "lesson")
		if got := lesson.Validate(l); got != nil {
			t.Fatalf("Validate(%+v) = %v, want nil", l, got)
		}
	})
}

func TestLong(t *testing.T) {
	if got := len(Long(7).Plays); got != 7 {
		t.Errorf("Long(7) has %d plays, want 7", got)
	}
}

// Tests may spoil what Sample gives: nothing is shared between two calls.
func TestSampleIsFresh(t *testing.T) {
	spoilt := Sample()
	spoilt.Plays[0].Shots[0].From.Height = 99
	spoilt.Plays[0].Tracks[2][1].Via.X = 99
	spoilt.Teams[0].Players[0].Pace.TopSpeed = 99
	if reflect.DeepEqual(spoilt, Sample()) {
		t.Error("Sample() shares what a test changed in an earlier one")
	}
	if got := lesson.Validate(Sample()); got != nil {
		t.Errorf("Validate(Sample()) = %v after another was spoilt, want nil", got)
	}
}
