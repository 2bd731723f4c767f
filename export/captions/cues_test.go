package captions

import (
	"errors"
	"math"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"homeside/export"
	_ "homeside/internal/fixedseed"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
	"homeside/model/rally"
	"homeside/model/units"
)

func someCues() []lesson.Cue {
	return []lesson.Cue{
		said(0.25, 1, "Move as soon as the ball has gone."),
		{Kind: lesson.Signal, Span: said(-1, 0.5, "").Span, Text: "yes", Giver: game.Near1, Reader: game.Near2, Meaning: lesson.Switch},
		said(-1.5, -0.9994, "One & <two> --> three"),
	}
}

// The clip starts 1.5 s before the serve, so 1.5 s more than said is the time.
func TestWebVTT(t *testing.T) {
	got := written(t, WriteWebVTT, playOf(t, drill(someCues()...)), nil)
	want := `WEBVTT

1
00:00:00.000 --> 00:00:00.501
One &amp; &lt;two&gt; --&gt; three

2
00:00:00.500 --> 00:00:02.000
A &amp; &lt;B&gt; shows Nell --&gt; Q: switch. Nell --&gt; Q answers: yes

3
00:00:01.750 --> 00:00:02.500
Move as soon as the ball has gone.
`
	if got != want {
		t.Errorf("WriteWebVTT:\n%s\nwant\n%s", got, want)
	}
}

func TestSRT(t *testing.T) {
	got := written(t, WriteSRT, playOf(t, drill(someCues()...)), nil)
	want := strings.ReplaceAll(`1
00:00:00,000 --> 00:00:00,501
One & <~two> → three

2
00:00:00,500 --> 00:00:02,000
A & <~B> shows Nell → Q: switch. Nell → Q answers: yes

3
00:00:01,750 --> 00:00:02,500
Move as soon as the ball has gone.
`, "~", "\u2060")
	if got != want {
		t.Errorf("WriteSRT:\n%q\nwant\n%q", got, want)
	}
}

// A stretch begins at 0, its ends cut cues, a cue outside is left out, and half
// the speed takes twice the time.
func TestStretchAndSpeed(t *testing.T) {
	p := playOf(t, drill(said(-1, 0, "before"), said(0, 0.5, "within"), said(0.25, 2, "across"), said(-1, 2, "around"), said(1, 2, "after")))
	for _, c := range []struct {
		speed float64
		want  []vttCue
	}{
		{0.5, []vttCue{{0, 2000, "around"}, {0, 1000, "within"}, {500, 2000, "across"}}},
		{1, []vttCue{{0, 1000, "around"}, {0, 500, "within"}, {250, 1000, "across"}}},
		{4, []vttCue{{0, 250, "around"}, {0, 125, "within"}, {63, 250, "across"}}},
	} {
		got, err := parseVTT(written(t, WriteWebVTT, p, part(0, 1, c.speed)))
		if err != nil || !slices.Equal(got, c.want) {
			t.Errorf("from 0 to 1 s at speed %v: %v, %v, want %v", c.speed, got, err, c.want)
		}
	}
}

// At the lowest speed clips last for hours.
func TestHours(t *testing.T) {
	p := Play{From: 0, To: 500, Cues: []Line{{From: 200, To: 499.5, Text: "late"}}}
	for _, c := range []struct {
		write writer
		want  string
	}{{WriteWebVTT, "01:06:40.000 --> 02:46:30.000\n"}, {WriteSRT, "01:06:40,000 --> 02:46:30,000\n"}} {
		if got := written(t, c.write, p, &export.Options{Speed: 0.05}); !strings.Contains(got, c.want) {
			t.Errorf("at speed 0.05: %q, want %q in it", got, c.want)
		}
	}
}

// Without cues, or with cues that no frame shows, the files are empty but sound.
func TestNoCues(t *testing.T) {
	for name, p := range map[string]Play{
		"none":       playOf(t, drill()),
		"no text":    playOf(t, drill(said(0, 1, ""), said(0, 1, " \n\x00\t\u2028"))),
		"no length":  playOf(t, drill(said(1, 1, "x"), said(1, 0, "x"))),
		"no moment":  {From: 2, To: 2, Cues: []Line{{From: 0, To: 3, Text: "x"}}},
		"all before": playOf(t, drill(said(-9, -5, "x"))),
	} {
		if got := written(t, WriteWebVTT, p, nil); got != "WEBVTT\n\n" {
			t.Errorf("%s: WriteWebVTT writes %q, want the header alone", name, got)
		}
		if got := written(t, WriteSRT, p, nil); got != "" {
			t.Errorf("%s: WriteSRT writes %q, want nothing", name, got)
		}
	}
}

func TestChapters(t *testing.T) {
	l := drill(someCues()...)
	p := playOf(t, l)
	got, err := parseVTT(written(t, WriteChapters, p, nil))
	r, err2 := rally.Solve(l, 0)
	if err := errors.Join(err, err2); err != nil {
		t.Fatal(err)
	}
	at := func(s units.Seconds) int { return int(math.Round(float64(s+1.5) * 1000)) }
	want := []vttCue{
		{0, 1500, "Before the serve"},
		{1500, at(r.Strokes[1].At), "Serve by Nell --> Q"},
		{at(r.Strokes[1].At), at(r.To), "Return by far1"},
	}
	if !slices.Equal(got, want) {
		t.Errorf("WriteChapters: %v, want %v", got, want)
	}
}

// A ball into the net has no chapters after it.
func TestChaptersEndWithTheRally(t *testing.T) {
	l := drill()
	intoNet(&l)
	p := playOf(t, l)
	if n := len(p.Chapters); n != 2 || p.Chapters[1].To != p.To {
		t.Errorf("a serve into the net has chapters %+v, want two, up to %v", p.Chapters, p.To)
	}
}

func TestOptionsOutOfBounds(t *testing.T) {
	p := playOf(t, drill(someCues()...))
	nan := units.Seconds(math.NaN())
	for _, o := range []*export.Options{part(-9, 1, 1), part(0, 99, 1), part(1, 0, 1), {Speed: 100}, {From: &nan}, {From: &p.To}} {
		for i, write := range []writer{WriteWebVTT, WriteSRT, WriteChapters, WriteScript} {
			var b strings.Builder
			if err := write(&b, p, o); err == nil || b.Len() > 0 {
				t.Errorf("writer %d with %+v: error %v and %d bytes, want an error and none", i, o, err, b.Len())
			}
		}
	}
}

// Every sound lesson's cues come out as the grammar has them: what the file
// says a frame shows at that time, and what a frame shows the file says.
func TestEveryLesson(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := lessontest.Lessons().Draw(t, "lesson")
		for i := range l.Plays {
			r, err := rally.Solve(l, i)
			if err != nil {
				t.Fatal(err)
			}
			checkPlay(t, l, r)
		}
	})
}

func checkPlay(t *rapid.T, l lesson.Lesson, r *rally.Rally) {
	p := Of(l, r)
	var vtt, chapters strings.Builder
	err := errors.Join(WriteWebVTT(&vtt, p, nil), WriteChapters(&chapters, p, nil))
	cues, err2 := parseVTT(vtt.String())
	_, err3 := parseVTT(chapters.String())
	if err := errors.Join(err, err2, err3); err != nil {
		t.Fatalf("%v in %q %q", err, vtt.String(), chapters.String())
	}
	for i := range 11 {
		checkFrame(t, l, r, cues, r.From+(r.To-r.From)*units.Seconds(i)/10)
	}
	for _, c := range cues {
		middle := r.From + units.Seconds(float64(c.from+c.to)/2000)
		live := func(i int) bool {
			return clean(cueLine(l, r, r.Play.Cues[i]).Text) == c.text
		}
		if c.to-c.from > 2 && !slices.ContainsFunc(r.At(middle).Cues, live) {
			t.Fatalf("the file says %q at %v, the frame's cues %v do not", c.text, middle, r.At(middle).Cues)
		}
	}
}

// checkFrame wants the frame's cues in the file; one of a millisecond may be lost.
func checkFrame(t *rapid.T, l lesson.Lesson, r *rally.Rally, cues []vttCue, at units.Seconds) {
	ms := int(math.Round(float64(at-r.From) * 1000))
	for _, i := range r.At(at).Cues {
		line := cueLine(l, r, r.Play.Cues[i])
		text := clean(line.Text)
		if text == "" || min(line.To, r.To)-max(line.From, r.From) < 0.001 {
			continue
		}
		if !slices.ContainsFunc(cues, func(c vttCue) bool { return c.text == text && c.from-1 <= ms && ms <= c.to+1 }) {
			t.Fatalf("the frame at %v shows %q, the file has %v", at, text, cues)
		}
	}
}
