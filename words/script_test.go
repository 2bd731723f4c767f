package words

import (
	"strings"
	"testing"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/movement"
	"homeside/model/rally"
	"homeside/model/units"
)

func TestSignalled(t *testing.T) {
	var l lesson.Lesson
	l.Teams[court.Near].Players[0].Name = "Nell"
	c := lesson.Cue{Kind: lesson.Signal, Giver: game.Near1, Reader: game.Near2, Meaning: lesson.Fake}
	if got, want := Signalled(l, c), "Nell shows near2: fake."; got != want {
		t.Errorf("Signalled without an answer = %q, want %q", got, want)
	}
	c.Text = "seen"
	if got, want := Signalled(l, c), "Nell shows near2: fake. near2 answers: seen"; got != want {
		t.Errorf("Signalled = %q, want %q", got, want)
	}
}

func TestGoes(t *testing.T) {
	var l lesson.Lesson
	leg := rally.Leg{Run: movement.Run{Distance: units.Feet(10).Metres()}, Gait: rally.Sideways}
	place := court.Pt(8, -24)
	for _, c := range []struct {
		margin units.Seconds
		cut    bool
		want   string
	}{
		{1, false, "near1 goes 10 ft sideways, to 2 ft behind the baseline, 2 ft inside the right sideline."},
		{-0.004, false, "near1 goes 10 ft sideways, to 2 ft behind the baseline, 2 ft inside the right sideline."},
		{-0.3, false, "near1 goes 10 ft sideways, to 2 ft behind the baseline, 2 ft inside the right sideline, 0.30 s late."},
		{-0.3, true, "near1 goes sideways, toward 2 ft behind the baseline, 2 ft inside the right sideline, and turns to the next place before getting there."},
	} {
		leg.Margin = c.margin
		if got := Goes(l, game.Near1, leg, place, c.cut); got != c.want {
			t.Errorf("Goes with margin %v, cut %v = %q, want %q", c.margin, c.cut, got, c.want)
		}
	}
}

// 160 words a minute are the most: 8 words in 3 s.
func TestSay(t *testing.T) {
	for seconds, marked := range map[float64]bool{3.001: false, 2.999: true, 0.001: true} {
		if got := Say("a b c d e f g h", 8, seconds); strings.Contains(got, "more than can be said") != marked || !strings.HasPrefix(got, "SAY: a b") {
			t.Errorf("Say(8 words, %v s) = %q, marked as too much: want %v", seconds, got, marked)
		}
	}
}

func TestShotSentences(t *testing.T) {
	for got, want := range map[string]string{
		Struck(lesson.Lesson{}, 1, game.Far2): "Return by far2",
		Bounces(2):                            "The third bounces.",
		ScriptHead("0:05.00", 0.5):            "Times are minutes and seconds from the start of the clip, which lasts 0:05.00 at 0.5 times match speed.",
	} {
		if got != want {
			t.Errorf("got %q, want %q", got, want)
		}
	}
}
