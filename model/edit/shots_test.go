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
	"homeside/model/rally"
	"homeside/model/units"
)

// A play cut to its first shots is sound, and everything that is still there in
// time is when it was: keyframes, starts of runs, marks and cues.
func TestCutShotsKeepsTimes(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := lesson.Lesson{Plays: []lesson.Play{lessontest.Plays().Draw(t, "play")}}
		p := l.Plays[0]
		before, err := rally.Solve(l, 0)
		if err != nil {
			t.Fatal(err)
		}
		n := rapid.IntRange(0, len(p.Shots)+1).Draw(t, "kept")
		cut := edit.CutShots(p, n, before.TimeAt)
		if want := min(max(n, 1), len(p.Shots)); len(cut.Shots) != want {
			t.Fatalf("CutShots(%d) of %d shots leaves %d, want %d", n, len(p.Shots), len(cut.Shots), want)
		}
		after, err := rally.Solve(edit.ReplacePlay(l, 0, cut), 0)
		if bad := lesson.Validate(edit.ReplacePlay(l, 0, cut)); err != nil || bad != nil {
			t.Fatalf("CutShots(%d) leaves a play out of bounds: %v, %v", n, bad, err)
		}
		same := func(what string, a, b lesson.Anchor) {
			if a.Event.Moment == lesson.End {
				return // the end is another one
			}
			was, is := before.TimeAt(a), after.TimeAt(b)
			if d := was - is; (d > 1e-6 || d < -1e-6) && b.Offset > -lesson.MaxOffset && b.Offset < lesson.MaxOffset {
				t.Fatalf("CutShots(%d) of %d: %s was at %v, is at %v", n, len(p.Shots), what, was, is)
			}
		}
		for id := range p.Tracks {
			for i, k := range p.Tracks[id] {
				same("a keyframe", k.At, cut.Tracks[id][i].At)
				if k.Leave != nil {
					same("the start of a run", *k.Leave, *cut.Tracks[id][i].Leave)
				}
			}
		}
		for i, m := range p.Marks {
			same("a mark", m.Span.From, cut.Marks[i].Span.From)
		}
		for i, c := range p.Cues {
			same("a cue", c.Span.To, cut.Cues[i].Span.To)
		}
	})
}

// The teams take turns, and a full play stays as it is.
func TestAddShot(t *testing.T) {
	p := lessontest.SamplePlay() // its last shot is the far team's
	if got := edit.AddShot(p, lesson.Shot{By: game.Far2}); !reflect.DeepEqual(got, p) {
		t.Error("a team hits twice")
	}
	for i := len(p.Shots); i < lesson.MaxShots+3; i++ {
		by := game.PlayerOf(p.Shots[len(p.Shots)-1].By.Team().Other(), 1)
		p = edit.AddShot(p, edit.NextShot(lesson.Lesson{}, p, by, 8))
	}
	if len(p.Shots) != lesson.MaxShots {
		t.Errorf("a full play has %d shots, want %d", len(p.Shots), lesson.MaxShots)
	}
	if bad := lesson.Validate(lesson.Lesson{Plays: []lesson.Play{p}}); bad != nil {
		t.Errorf("a full play is out of bounds: %v", bad[0])
	}
}

// The usual next shots go into the other half, deep after the serve and short
// after that, across from where they are hit.
func TestNextShot(t *testing.T) {
	for _, c := range []struct {
		shots int
		by    game.Player
		x     units.Feet
		kind  lesson.ShotKind
		aim   court.Point
	}{
		{1, game.Far1, -6, lesson.DeepReturn, court.Pt(3, -18)},
		{2, game.Near2, 4, lesson.Drop, court.Pt(-2, 5)},
		{3, game.Far2, 9000, lesson.Dink, court.Pt(-5, -5)},
		{9, game.Far1, 0, lesson.Dink, court.Pt(0, -5)},
	} {
		got := edit.NextShot(lesson.Lesson{}, lesson.Play{Shots: make([]lesson.Shot, c.shots)}, c.by, c.x)
		if got.Kind != c.kind || got.Aim != c.aim || got.By != c.by || got.Intent == (lesson.Intent{}) {
			t.Errorf("after %d shots %v hits from %v ft %v to %v, want %v to %v", c.shots, c.by, c.x, got.Kind, got.Aim, c.kind, c.aim)
		}
	}
}

func TestHitBy(t *testing.T) {
	p := lessontest.SamplePlay()
	if got := edit.HitBy(p, 1, game.Near2).Shots[1].By; got != game.Near2 {
		t.Errorf("the return given to near2 is hit by %v", got)
	}
	if got := edit.HitBy(p, 1, game.Far2); !reflect.DeepEqual(got, p) {
		t.Error("an opponent takes the shot")
	}
}
