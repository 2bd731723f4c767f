package captions

import (
	"fmt"
	"strings"
	"testing"

	"homeside/model/lesson"
	"homeside/model/reel"
	"homeside/model/units"
)

// aReel shows the second about the serve slowly, twice, with a hold at the serve,
// and then at match speed.
func aReel(l lesson.Lesson) *reel.Reel {
	from, to := lesson.Anchor{Offset: -0.5}, lesson.Anchor{Offset: 0.5}
	return reel.Solve(l, lesson.Reel{
		Name:  "Two passes",
		Title: lesson.Card{Heading: "Drill", Text: "slowly <first>", Length: 2},
		Takes: []lesson.Take{
			{Play: 1, From: &from, To: &to, Speed: 0.5, Loops: 2, Freezes: []lesson.Freeze{{Length: 1, Caption: "Hold & look"}}},
			{Play: 1, From: &from, To: &to, Caption: "At match speed"},
		},
		End: lesson.Card{Text: "Thank you", Length: 1},
	})
}

func TestReelInWords(t *testing.T) {
	l := drill(said(-0.25, 0.25, "now"))
	p := OfReel(l, aReel(l))
	if p.Title != "Two passes" || p.From != 0 || p.To != 10 {
		t.Errorf("OfReel: %q from %v to %v, want Two passes, 0 to 10", p.Title, p.From, p.To)
	}
	want := []string{
		"0-2 Drill\nslowly <first>", "2.5-4.5 now", "3-4 Hold & look", "5.5-7.5 now", "6-7 Hold & look", "8-9 At match speed", "8.25-8.75 now", "9-10 Thank you",
	}
	if got := told(p.Cues); got != strings.Join(want, "\n") {
		t.Errorf("OfReel says\n%s\nwant\n%s", got, strings.Join(want, "\n"))
	}
	if got, want := told(p.Chapters), "0-2 Drill\n2-8 from the odd court (0.5×)\n8-9 from the odd court\n9-10 Thank you"; got != want {
		t.Errorf("OfReel has the chapters\n%s\nwant\n%s", got, want)
	}
	served := []string{}
	for _, e := range p.Events {
		if strings.HasPrefix(e.Text, "Serve by") {
			served = append(served, fmt.Sprintf("%.4g", float64(e.From)))
		}
	}
	if got := strings.Join(served, " "); got != "3 6 8.5" {
		t.Errorf("the serve is told of at %s s, want 3 6 8.5", got)
	}
}

// told are lines with their times, which are rounded to milliseconds.
func told(lines []Line) string {
	all := make([]string, len(lines))
	for i, l := range lines {
		all[i] = fmt.Sprintf("%.4g-%.4g %s", float64(l.From), float64(l.To), l.Text)
	}
	return strings.Join(all, "\n")
}

// Of two plays side by side only what the take says is told, as in the picture.
func TestTwoPlaysInWords(t *testing.T) {
	l := drill(said(-0.25, 0.25, "now"))
	r := reel.Solve(l, lesson.Reel{Takes: []lesson.Take{{Play: 1, Beside: 1, Caption: "compare"}}})
	if got := told(OfReel(l, r).Cues); !strings.HasSuffix(got, " compare") || strings.Contains(got, "now") {
		t.Errorf("two plays side by side say %q, want compare alone", got)
	}
}

// A card's lines are lines of its cue, none of them empty, whatever stands in them; a
// script has them in one.
func TestACardOfSeveralLines(t *testing.T) {
	l := drill()
	p := OfReel(l, reel.Solve(l, lesson.Reel{
		Title: lesson.Card{Heading: "Stack\r\n  on the return ", Text: "\n\n1. walk\n \t\n2. a --> b\u2028\x003. go\n", Length: 2},
		Takes: []lesson.Take{{Play: 1}},
		End:   lesson.Card{Text: " \n "},
	}))
	if len(p.Cues) != 1 {
		t.Fatalf("it has the cues\n%s\nwant the title alone", told(p.Cues))
	}
	want := "00:00:00.000 --> 00:00:02.000\nStack\non the return\n1. walk\n2. a --&gt; b\n3. go\n"
	if got := written(t, WriteWebVTT, p, nil); !strings.HasSuffix(got, want) {
		t.Errorf("WriteWebVTT = %q, want %q at its end", got, want)
	}
	want = "00:00:00,000 --> 00:00:02,000\nStack\non the return\n1. walk\n2. a → b\n3. go\n"
	if got := written(t, WriteSRT, p, nil); !strings.HasSuffix(got, want) {
		t.Errorf("WriteSRT = %q, want %q at its end", got, want)
	}
	if got := written(t, WriteScript, p, nil); !strings.Contains(got, " Stack on the return 1. walk 2. a → b 3. go\n") {
		t.Errorf("WriteScript = %s, want the card in one line", got)
	}
}

// The files of a reel end with the clip, whatever is cut of it.
func TestReelFiles(t *testing.T) {
	l := drill(said(-0.25, 0.25, "now"))
	p := OfReel(l, aReel(l))
	vtt := written(t, WriteWebVTT, p, nil)
	if !strings.Contains(vtt, "00:00:00.000 --> 00:00:02.000\nDrill\nslowly &lt;first&gt;\n") || !strings.Contains(vtt, "00:00:03.000 --> 00:00:04.000\nHold &amp; look\n") {
		t.Errorf("WriteWebVTT = %s, want the card and the hold", vtt)
	}
	for _, write := range []writer{WriteWebVTT, WriteSRT, WriteChapters, WriteScript} {
		if got := written(t, write, p, part(units.Seconds(8), units.Seconds(9), 1)); !strings.Contains(got, "00:00.00") && !strings.Contains(got, "00:01") && !strings.Contains(got, "0:01.00") {
			t.Errorf("from 8 to 9 s: %q, want times of one second", got)
		}
	}
}
