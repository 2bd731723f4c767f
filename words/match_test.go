package words

import (
	"errors"
	"testing"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
)

// The sample's play is 4-7-2, served by far2; its far1 started, so at four far1
// belongs on the right and far2 serves from the left. Near2 started for the near
// team, which has 7: near2 is on the left and must receive (rulebook 2026, 5.B.3).
func TestSituation(t *testing.T) {
	l := lessontest.Sample()
	p := l.Plays[0]
	want := "4-7-2: Tilde serves from the left. Mara must receive. Started: Oskar for Fernmoor, Mara for Harbour Lane. Wanted sides: Ivo left, Mara left, Oskar right, Tilde right."
	if got := Situation(l, p); got != want {
		t.Errorf("Situation = %q, want %q", got, want)
	}
}

// What nobody has said is not said: without starters either may have to receive.
func TestSituationLeavesOutWhatIsMissing(t *testing.T) {
	l := lesson.Lesson{Plays: []lesson.Play{lessontest.SamplePlay()}}
	p := l.Plays[0]
	for _, c := range []struct {
		call   game.Call
		format game.Format
		want   string
	}{
		{game.Call{Serving: 4, Receiving: 7, Server: 2}, game.SideOut, "4-7-2: far2 serves from the left. near1 or near2 must receive."},
		{game.Call{}, game.SideOut, "far2 serves from the left."},
		{game.Call{Serving: 4, Receiving: 7}, game.RallyFixed, "4-7: far2 serves from the left. near1 or near2 must receive. Nobody swaps sides in this format, so stacking has no purpose."},
	} {
		l.Scoring.Format, p.Situation.Call = c.format, c.call
		if got := Situation(l, p); got != c.want {
			t.Errorf("Situation at %v = %q, want %q", c.call, got, c.want)
		}
	}
	if got, want := Situation(l, lesson.Play{}), "Nobody serves yet."; got != want {
		t.Errorf("Situation of no serve = %q, want %q", got, want)
	}
}

func TestMatchState(t *testing.T) {
	l := lessontest.Sample()
	l.Match = lesson.Match{}
	for winners, want := range map[string]string{
		"":                "0-0-2  Mara, right, to Oskar",
		"n":               "1-0-2  Mara, left, to Tilde",
		"nnnnnnnnnnnnnnn": "Harbour Lane won 15-0.",
	} {
		m, err := game.Replay(l.Settings(), winners)
		if err != nil {
			t.Fatal(err)
		}
		if got := MatchState(l, m.State()); got != want {
			t.Errorf("MatchState after %q = %q, want %q", winners, got, want)
		}
	}
}

func TestCounts(t *testing.T) {
	l := lessontest.Sample()
	if got, want := Counts(l, court.Far), "Fernmoor: ordinary places 1, won 0; stacked 1, won 1."; got != want {
		t.Errorf("Counts(far) = %q, want %q", got, want)
	}
	l.Match.Rallies = l.Match.Rallies[:0]
	if got := Counts(l, court.Far); got != "" {
		t.Errorf("Counts of no rally = %q, want nothing", got)
	}
}

// Every member of a closed set has its own words.
func TestEveryNoteHasWords(t *testing.T) {
	seen := map[string]bool{}
	for _, f := range lesson.Formations {
		seen[Formation(f)] = true
	}
	if seen[""] || len(seen) != len(lesson.Formations) {
		t.Errorf("Formation gives %d different words, want %d and none empty", len(seen), len(lesson.Formations))
	}
	seen = map[string]bool{}
	for _, r := range lesson.ReturnsTo {
		seen[ReturnTo(r)] = true
	}
	if seen[""] || len(seen) != len(lesson.ReturnsTo) {
		t.Errorf("ReturnTo gives %d different words, want %d and none empty", len(seen), len(lesson.ReturnsTo))
	}
}

func TestSentenceAndQuestions(t *testing.T) {
	if got, want := Sentence(errors.New("the game is over")), "The game is over."; got != want {
		t.Errorf("Sentence = %q, want %q", got, want)
	}
	l := lessontest.Sample()
	for q, want := range map[game.Question]string{
		{Kind: game.AskStarter, Team: court.Far}: "Who served first for Fernmoor in this game?",
		{Kind: game.AskBegan}:                    "Which team served first in this game?",
	} {
		if got := Question(l, q); got != want {
			t.Errorf("Question(%v) = %q, want %q", q, got, want)
		}
	}
	if got, want := Won(lesson.Lesson{}, court.Far), "The far team won the rally"; got != want {
		t.Errorf("Won = %q, want %q", got, want)
	}
}

// In a sentence a team's name begins with a small letter.
func TestWonInSpanish(t *testing.T) {
	Speak(Spanish)
	t.Cleanup(func() { Speak(English) })
	if got, want := Won(lesson.Lesson{}, court.Near), "Punto para el equipo cercano"; got != want {
		t.Errorf("%q, want %q", got, want)
	}
}
