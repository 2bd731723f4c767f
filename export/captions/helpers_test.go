package captions

import (
	"io"
	"strings"
	"testing"

	"homeside/export"
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
)

// drill is a serve from 1.5 s after the start and its return, with these cues.
// All names are invented.
func drill(cues ...lesson.Cue) lesson.Lesson {
	l := lesson.Lesson{Title: "Drill", Plays: []lesson.Play{{
		Title: "from the odd court", Lead: 1.5,
		Shots: []lesson.Shot{
			{By: game.Near2, Aim: court.Pt(5, 17.5), Intent: lesson.Apex(7.5)},
			{By: game.Far1, Aim: court.Pt(-3, -18.5), Intent: lesson.Apex(8)},
		},
		Tracks: [4][]lesson.Keyframe{
			{{Place: court.Pt(-7, -23)}},
			{{Place: court.Pt(-1.6, -22.9)}, {At: lesson.At(lesson.TheEnd), Place: court.Pt(4, -20)}},
			{{Place: court.Pt(5.5, 24.5), Facing: 180}},
			{{Place: court.Pt(-5, 7.8), Facing: 180}},
		},
		Cues: cues,
	}}}
	l.Teams[court.Near].Players[0].Name = "A & <B>"
	l.Teams[court.Near].Players[1].Name = "Nell --> Q"
	return l
}

// said is a caption from one second after the serve to another.
func said(from, to units.Seconds, text string) lesson.Cue {
	return lesson.Cue{Span: lesson.Span{From: lesson.Anchor{Offset: from}, To: lesson.Anchor{Offset: to}}, Text: text}
}

func playOf(t testing.TB, l lesson.Lesson) Play {
	t.Helper()
	if err := lesson.Validate(l); err != nil {
		t.Fatalf("the test's lesson is unsound: %v", err)
	}
	r, err := rally.Solve(l, 0)
	if err != nil {
		t.Fatal(err)
	}
	return Of(l, r)
}

type writer func(io.Writer, Play, *export.Options) error

func written(t testing.TB, write writer, p Play, o *export.Options) string {
	t.Helper()
	var b strings.Builder
	if err := write(&b, p, o); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

// part is the stretch of a play at a speed.
func part(from, to units.Seconds, speed float64) *export.Options {
	return &export.Options{From: &from, To: &to, Speed: speed}
}
