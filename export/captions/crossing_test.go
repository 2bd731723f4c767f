package captions

import (
	"fmt"
	"strings"
	"testing"

	"homeside/model/court"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
)

// crossed is the drill with partners who change sides after the serve.
func crossed() lesson.Lesson {
	l := drill()
	l.Plays[0].Tracks[0] = []lesson.Keyframe{{Place: court.Pt(-7, -23)}, {At: lesson.At(lesson.TheEnd), Place: court.Pt(4, -23)}}
	l.Plays[0].Tracks[1] = []lesson.Keyframe{{Place: court.Pt(-1.6, -22.9)}, {At: lesson.At(lesson.TheEnd), Place: court.Pt(-7, -19)}}
	return l
}

// A script warns once where partners change sides, at the moment that a walk through
// the rally finds; of a play in which nobody does, it warns of nothing.
func TestScriptWarnsWherePathsCross(t *testing.T) {
	r, err := rally.Solve(crossed(), 0)
	if err != nil {
		t.Fatal(err)
	}
	across := func(at units.Seconds) units.Feet {
		f := r.At(at)
		return f.Players[0].Run.Place.X - f.Players[1].Run.Place.X
	}
	when := r.From
	for across(when) < 0 && when < r.To {
		when += 0.001
	}
	want := fmt.Sprintf("0:%05.2f            Paths cross here: Nell → Q in front of A & <B>, ", float64(when-r.From))
	got := written(t, WriteScript, playOf(t, crossed()), nil)
	if strings.Count(got, "Paths cross") != 1 || !strings.Contains(got, want) {
		t.Errorf("no line %q, or several, in\n%s", want, got)
	}
	if got := written(t, WriteScript, playOf(t, drill()), nil); strings.Contains(got, "Paths cross") {
		t.Errorf("nobody crosses in\n%s", got)
	}
}
