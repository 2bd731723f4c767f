package rally

import (
	"testing"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
)

// Everything with a time is listed once, at the time the rally gives it.
func TestTimeline(t *testing.T) {
	p := play(four()...)
	leave := after(0.5)
	p.Tracks[game.Near2] = []lesson.Keyframe{
		{Place: court.Pt(-5, -22)}, {At: after(2), Place: court.Pt(-5, -10), Leave: &leave}, {At: after(3), Place: court.Pt(-5, -10.2)},
	}
	p.Cues = []lesson.Cue{{Span: lesson.Span{From: after(-1), To: after(1)}, Text: "watch"}}
	r := solved(t, p)
	want := map[Timed]Entry{
		{Arrival, game.Near2, 0}:        {From: 0, To: 0},
		{Arrival, game.Near2, 1}:        {From: 2, To: 2},
		{Arrival, game.Near2, 2}:        {From: 3, To: 3},
		{Start, game.Near2, 1}:          {From: 0.5, To: 0.5},
		{Running, game.Near2, 1}:        {From: 0.5, To: 2},
		{Kind: CueFrom}:                 {From: -1, To: -1},
		{Kind: CueTo}:                   {From: 1, To: 1},
		{Kind: Saying}:                  {From: -1, To: 1},
		{AtContact, r.Strokes[1].By, 1}: {From: r.Strokes[1].At, To: r.Strokes[1].At},
		{Kind: Landing, Index: 1}:       {From: timeOf(t, r, "return.bounce"), To: timeOf(t, r, "return.bounce")},
	}
	seen := map[Timed]int{}
	for _, e := range r.Timeline() {
		seen[e.What]++
		if w, ok := want[e.What]; ok && (e.From != w.From || e.To != w.To) {
			t.Errorf("%+v is from %v to %v, want %v to %v", e.What, e.From, e.To, w.From, w.To)
		}
	}
	for what := range want {
		if seen[what] != 1 {
			t.Errorf("%+v is listed %d times, want once", what, seen[what])
		}
	}
	for _, none := range []Timed{{Running, game.Near2, 2}, {Start, game.Near2, 2}, {Arrival, game.Near2, 3}} {
		if e, ok := r.EntryOf(none); ok { // a step on the spot, and a keyframe there is not
			t.Errorf("EntryOf(%+v) = %+v, want none", none, e)
		}
	}
	if got, ok := r.EntryOf(Timed{Start, game.Near2, 1}); !ok || got.From != 0.5 {
		t.Errorf("EntryOf(the start of near2's run) = %+v, %v, want 0.5 s", got, ok)
	}
}

// A volleyed ball never lands: its time is the volley's.
func TestTimelineOfAVolley(t *testing.T) {
	shots := four()
	shots[2].Meet = lesson.Meet{How: lesson.OnVolley, Height: 3}
	r := solved(t, play(shots...))
	if !r.Strokes[2].Volleyed {
		t.Fatal("the fourth is no volley")
	}
	if got, _ := r.EntryOf(Timed{Kind: Landing, Index: 2}); got.From != r.Strokes[3].At {
		t.Errorf("the third's time is %v, want the volley's %v", got.From, r.Strokes[3].At)
	}
}
