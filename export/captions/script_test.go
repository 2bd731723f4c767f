package captions

import (
	"regexp"
	"slices"
	"strings"
	"testing"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
	"homeside/words"
)

// scriptBody are the timed lines of a script, after its head and its cautions.
func scriptBody(t *testing.T, script string) []string {
	t.Helper()
	parts := strings.Split(strings.TrimSuffix(script, "\n"), "\n\n")
	if len(parts) != 3 {
		t.Fatalf("a script of %d parts, want head, cautions, lines: %q", len(parts), script)
	}
	return strings.Split(parts[2], "\n")
}

func TestScriptHead(t *testing.T) {
	got := written(t, WriteScript, playOf(t, drill()), part(-1, 1.5, 0.5))
	want := "from the odd court\nTimes are minutes and seconds from the start of the clip, which lasts 0:05.00 at 0.5 times match speed.\n\n- " +
		strings.Join(words.Cautions(), "\n- ") + "\n\n"
	if !strings.HasPrefix(got, want) || len(words.Cautions()) == 0 {
		t.Errorf("WriteScript begins %q, want %q", got[:min(len(got), len(want))], want)
	}
}

// The serve is struck 1.5 s after the start; all else of it is timed by the rally.
func TestScriptLines(t *testing.T) {
	l := drill(someCues()...)
	p := playOf(t, l)
	got := scriptBody(t, written(t, WriteScript, p, nil))
	for _, want := range []string{
		"0:00.00 - 0:00.50  SAY: One & <two> → three [5 words in 0.5 s: more than can be said calmly]",
		"0:00.50 - 0:02.00  A & <B> shows Nell → Q: switch. Nell → Q answers: yes",
		"0:01.50            Serve by Nell → Q.",
		"0:01.75 - 0:02.50  SAY: Move as soon as the ball has gone. [8 words in 0.8 s: more than can be said calmly]",
	} {
		if !slices.Contains(got, want) {
			t.Errorf("WriteScript has no line %q in\n%s", want, strings.Join(got, "\n"))
		}
	}
	for _, want := range []string{
		`^0:0\d\.\d\d            The serve bounces\.$`, `^0:0\d\.\d\d            Return by far1\.$`, `^0:0\d\.\d\d            The return bounces\.$`,
		`^0:0\d\.\d\d - 0:0\d\.\d\d  Nell → Q goes 6 ft 4 in (forward|sideways|backward), to 2 ft inside the baseline, .*\.$`,
	} {
		if !slices.ContainsFunc(got, regexp.MustCompile(want).MatchString) {
			t.Errorf("WriteScript has no line like %q in\n%s", want, strings.Join(got, "\n"))
		}
	}
	if !slices.IsSortedFunc(got, func(a, b string) int { return strings.Compare(a[:7], b[:7]) }) {
		t.Errorf("WriteScript is not in the order of time:\n%s", strings.Join(got, "\n"))
	}
}

// Slowly enough, a caption can be said.
func TestScriptSpeed(t *testing.T) {
	p := playOf(t, drill(someCues()...))
	for speed, marks := range map[float64]int{1: 2, 0.25: 0} {
		got := written(t, WriteScript, p, part(-1.5, 1, speed))
		if n := strings.Count(got, "more than can be said calmly"); n != marks {
			t.Errorf("at speed %v %d captions are marked as too long, want %d:\n%s", speed, n, marks, got)
		}
	}
}

// A stretch has only what happens in it.
func TestScriptStretch(t *testing.T) {
	got := scriptBody(t, written(t, WriteScript, playOf(t, drill(said(-1, 1, "hold"))), part(-0.5, 0, 1)))
	want := []string{"0:00.00 - 0:00.50  SAY: hold", "0:00.50            Serve by Nell → Q."}
	if !slices.Equal(got, want) {
		t.Errorf("from -0.5 to 0 s: %q, want %q", got, want)
	}
}

// Whatever a text holds, it stays on its line and has no --> to mislead a reader.
func TestScriptHostile(t *testing.T) {
	l := drill(hostileCues()...)
	plain := len(scriptBody(t, written(t, WriteScript, playOf(t, drill()), nil)))
	l.Plays[0].Title = "a\n\n0:00.00 b --> c"
	got := written(t, WriteScript, playOf(t, l), nil)
	if n := len(scriptBody(t, got)); n != plain+len(hostile) || strings.Contains(got, "-->") {
		t.Errorf("a script with %d captions more has %d lines, want %d, and no -->:\n%s", len(hostile), n, plain+len(hostile), got)
	}
}

// A ball into the net ends what there is to tell of the ball.
func TestScriptIntoNet(t *testing.T) {
	l := drill()
	intoNet(&l)
	got := written(t, WriteScript, playOf(t, l), nil)
	if !strings.Contains(got, words.IntoNet()) || strings.Contains(got, "Return by") || strings.Contains(got, "bounces") {
		t.Errorf("a serve into the net is told as\n%s", got)
	}
}

// Half an inch is a run, less is standing still.
func TestScriptLeastRun(t *testing.T) {
	for inches, told := range map[float64]bool{0: false, 0.4: false, 0.6: true} {
		l := drill()
		track := l.Plays[0].Tracks[game.Near1]
		to := track[0]
		to.At, to.Place.X = lesson.At(lesson.TheEnd), to.Place.X+units.Inches(inches)
		l.Plays[0].Tracks[game.Near1] = append(track, to)
		got := written(t, WriteScript, playOf(t, l), nil)
		if strings.Contains(got, "A & <B> goes 1 in ") != told || strings.Contains(got, "goes 0 in") {
			t.Errorf("a run of %v in is told: want %v:\n%s", inches, told, got)
		}
	}
}

// intoNet lets the first ball of a drill be hit half a foot below the net's top.
func intoNet(l *lesson.Lesson) {
	s := &l.Plays[0].Shots[0]
	s.Aim, s.Intent, s.From = court.Pt(-5, 18), lesson.NetClear(-0.5), &lesson.Place{Point: court.Pt(5, -12), Height: 2.6}
}
