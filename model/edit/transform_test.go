package edit_test

import (
	"reflect"
	"testing"

	"pgregory.net/rapid"

	"homeside/model/court"
	"homeside/model/edit"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
)

// Both transforms undo themselves; facings come back within one turn.
func TestTwiceIsTheSame(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := lessontest.Plays().Draw(t, "play")
		for name, f := range map[string]func(lesson.Play) lesson.Play{"Mirrored": edit.Mirrored, "Turned": edit.Turned} {
			once := f(p)
			if got := f(f(once)); !near(got, once) {
				t.Fatalf("%s three times = %+v, want as once %+v", name, got, once)
			}
		}
	})
}

// near compares plays but for the rounding of facings.
func near(a, b lesson.Play) bool {
	for id := range a.Tracks {
		for i := range a.Tracks[id] {
			if d := (a.Tracks[id][i].Facing - b.Tracks[id][i].Facing).Normal(); d > 1e-9 && d < 360-1e-9 {
				return false
			}
			a.Tracks[id][i].Facing = b.Tracks[id][i].Facing
		}
	}
	return reflect.DeepEqual(a, b)
}

func TestMirrored(t *testing.T) {
	p := edit.Mirrored(lessontest.SamplePlay())
	if got, want := p.Tracks[game.Near1][0], (lesson.Keyframe{Place: court.Pt(5, -24), Facing: 345}); got != want {
		t.Errorf("Mirrored: near1 starts at %+v, want %+v", got, want)
	}
	if s := p.Shots[0]; s.Aim != court.Pt(4, -18) || s.Side != 120 || s.From.Point != court.Pt(-2, 23) || s.By != game.Far2 {
		t.Errorf("Mirrored: the serve is %+v, want aim (4, -18), side 120, from (-2, 23), by far2", s)
	}
}

func TestTurned(t *testing.T) {
	p := edit.Turned(lessontest.SamplePlay())
	if got, want := p.Tracks[game.Far1][0], (lesson.Keyframe{Place: court.Pt(5, 24), Facing: 195}); got != want {
		t.Errorf("Turned: far1 starts at %+v, want %+v", got, want)
	}
	if s := p.Shots[0]; s.By != game.Near2 || s.Side != -120 || p.Situation.Serving != court.Near {
		t.Errorf("Turned: the serve is %+v of the %v team, want near2's with side -120", s, p.Situation.Serving)
	}
	if c := p.Cues[1]; c.Giver != game.Far2 || c.Reader != game.Far1 {
		t.Errorf("Turned: %v signals to %v, want far2 to far1", c.Giver, c.Reader)
	}
}
