package compose

import (
	"math"
	"testing"

	"homeside/canvas"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"

	_ "homeside/internal/fixedseed"

	"pgregory.net/rapid"
)

// busy is a strip of a play with a run that waits, places and cues that overlap.
func busy(t *testing.T) Strip {
	l := invented()
	leave := lesson.Anchor{Offset: 0.75}
	p := l.Plays[0]
	p.Tracks[game.Near2][1].Leave = &leave
	p.Cues = append(p.Cues, lesson.Cue{Text: "And who runs?", Span: lesson.Span{From: lesson.Anchor{Offset: 0.5}, To: lesson.Anchor{Offset: 2}}})
	l.Plays[0] = p
	return Strip{Rally: pictureOf(t, l, 0, canvas.Upright).Rally, Width: 1000, Height: 190, PxPerPoint: 1.25}
}

// The pointer on a thing takes hold of it.
func TestThingUnderThePointer(t *testing.T) {
	s := busy(t)
	n := 0
	for _, shown := range []Span{{}, {-1.5, 1.2}, {0.4, 2.5}} {
		s.Shown = shown
		for _, e := range s.Rally.Timeline() {
			at, ok := s.PxOf(e.What)
			if !ok {
				continue
			}
			if e.To == e.From && (e.From < s.shown().From || e.From > s.shown().To) {
				t.Errorf("%+v at %v s is shown in %v", e.What, e.From, s.shown())
			}
			if e.What == (rally.Timed{Kind: rally.Arrival, Player: game.Near1}) {
				continue // the server's place at the contact lies over it: the server hits there
			}
			if got, ok := s.Thing(at); !ok || got != e.What {
				t.Errorf("in %v: Thing(where %+v is) = %+v, %v", s.shown(), e.What, got, ok)
			}
			n++
		}
	}
	if n < 20 {
		t.Errorf("only %d things were looked for", n)
	}
}

func TestThingBesideIsNone(t *testing.T) {
	s := busy(t)
	run := rally.Timed{Kind: rally.Running, Player: game.Near2, Index: 1}
	at, _ := s.PxOf(run)
	for _, c := range []struct {
		name string
		at   canvas.Px
	}{
		{"in the lane of who does not run", canvas.Px{X: at.X, Y: float64(s.lane(int(game.Far1)+1)) * s.PxPerPoint}},
		{"on the ruler", canvas.Px{X: at.X, Y: 35 * s.PxPerPoint}},
		{"among the names", canvas.Px{X: 10, Y: at.Y}},
		{"below", canvas.Px{X: at.X, Y: float64(s.Height) + 5}},
	} {
		if got, ok := s.Thing(c.at); ok && got.Kind == rally.Running {
			t.Errorf("%s: Thing = %+v, want no run", c.name, got)
		}
	}
	if lane, ok := s.LaneAt(at); !ok || lane != int(game.Near2)+1 {
		t.Errorf("LaneAt(the run of near2) = %d, %v, want %d", lane, ok, int(game.Near2)+1)
	}
	if _, ok := s.LaneAt(canvas.Px{X: at.X, Y: 10}); ok || !s.OnRuler(canvas.Px{X: at.X, Y: 10}) {
		t.Error("the labels of the events belong to a lane, or not to the ruler")
	}
}

func TestLoopEnds(t *testing.T) {
	s := busy(t)
	ruler := 34 * s.PxPerPoint
	at := func(u units.Seconds) canvas.Px { return canvas.Px{X: float64(s.x(u)) * s.PxPerPoint, Y: ruler} }
	if got := s.LoopEnd(at(1)); got != 0 {
		t.Errorf("without a loop LoopEnd = %d, want 0", got)
	}
	s.Loop = Span{0.5, 2}
	for u, want := range map[units.Seconds]int{0.5: -1, 2: 1, 1.2: 0} {
		if got := s.LoopEnd(at(u)); got != want {
			t.Errorf("LoopEnd(at %v s of a loop from 0.5 to 2) = %d, want %d", u, got, want)
		}
	}
	if got := s.LoopEnd(canvas.Px{X: at(2).X, Y: 100}); got != 0 {
		t.Errorf("below the ruler LoopEnd = %d, want 0", got)
	}
}

// What is outside the time shown is not drawn, and nothing is drawn over the names.
func TestZoomedStripIsInside(t *testing.T) {
	s := busy(t)
	s.Loop = Span{0.2, 3}
	for _, shown := range []Span{{}, {-1.5, -0.5}, {0.4, 0.9}, {1, 3.2}, {3, 4}} {
		s.Shown = shown
		for id, b := range extentsOf(s.Static()) {
			if !b.within(s.Width, s.Height) && b.right > namesEnd {
				t.Errorf("in %v: %s is %+v, not in %d x %d", shown, id, b, s.Width, s.Height)
			}
			if b.left < (namesEnd-6)*s.PxPerPoint && id[:6] != "names/" {
				t.Errorf("in %v: %s begins at %v px, among the names", shown, id, b.left)
			}
		}
	}
}

// Captions that overlap lie below one another.
func TestCuesThatOverlap(t *testing.T) {
	drawn := extentsOf(busy(t).Static())
	a, b := drawn["strip/cue.0"], drawn["strip/cue.2"]
	if a.overlaps(b) || b.top <= a.top {
		t.Errorf("captions at the same time are drawn at %+v and %+v, want one below the other", a, b)
	}
}

// The hand's time and the ring round what is chosen lie where the thing is.
func TestChosenAndHeld(t *testing.T) {
	s := busy(t)
	what := rally.Timed{Kind: rally.Arrival, Player: game.Near2, Index: 1}
	s.Chosen, s.Held = &what, &Held{At: 2.25, Text: "2.25 s"}
	drawn := extentsOf(s.Moving(0))
	at, _ := s.PxOf(what)
	if got := centre(drawn["strip/chosen"]); math.Hypot(got.X-at.X, got.Y-at.Y) > 1e-9 {
		t.Errorf("the ring is about %v, want about %v", got, at)
	}
	if got := drawn["strip/held"].left; math.Abs(got-at.X) > 1e-9 {
		t.Errorf("the hand's line is at %v px, want %v", got, at.X)
	}
}

// Zooming keeps the time under the pointer and what is shown within the whole.
func TestZoomedKeepsItsPlace(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		whole := Span{-1.5, 8}
		shown := Span{whole.From, whole.To}
		for range 6 {
			about := units.Seconds(rapid.Float64Range(float64(shown.From), float64(shown.To)).Draw(t, "about"))
			factor := rapid.Float64Range(0.3, 3).Draw(t, "factor")
			next := Zoomed(shown, whole, about, factor)
			if next.From < whole.From-1e-9 || next.To > whole.To+1e-9 || next.To-next.From < LeastShown-1e-9 {
				t.Fatalf("Zoomed(%v, about %v by %v) = %v, not within %v", shown, about, factor, next, whole)
			}
			inside := next.From > whole.From+1e-9 && next.To < whole.To-1e-9
			was, is := (about-shown.From)/(shown.To-shown.From), (about-next.From)/(next.To-next.From)
			if inside && math.Abs(float64(was-is)) > 1e-6 {
				t.Fatalf("Zoomed(%v, about %v by %v) = %v: the time has moved from %v to %v of the width", shown, about, factor, next, was, is)
			}
			shown = next
		}
	})
}

func TestScrolledStaysWithin(t *testing.T) {
	for _, c := range []struct {
		by   units.Seconds
		want Span
	}{{1, Span{2, 4}}, {-5, Span{0, 2}}, {50, Span{8, 10}}} {
		if got := Scrolled(Span{1, 3}, Span{0, 10}, c.by); got != c.want {
			t.Errorf("Scrolled(1 to 3, by %v) = %v, want %v", c.by, got, c.want)
		}
	}
}

// The ruler has a figure at least every few inches and none over another.
func TestRulerFigures(t *testing.T) {
	s := Strip{Rally: pictureOf(t, invented(), 0, canvas.Upright).Rally, Width: 1000, Height: 190, PxPerPoint: 1.25}
	for _, shown := range []Span{{}, {0, 0.3}, {-1, 1}, {0, 2.6}} {
		s.Shown = shown
		texts := []box{}
		for id, b := range extentsOf(s.Static()) {
			if len(id) > 11 && id[:11] == "strip/tick." && b.right-b.left > 2 {
				texts = append(texts, b)
			}
		}
		if len(texts) < 3 {
			t.Errorf("in %v the ruler has %d figures, want at least 3", shown, len(texts))
		}
		for i, a := range texts {
			for _, b := range texts[:i] {
				if a.overlaps(b) {
					t.Errorf("in %v: figures at %+v and %+v overlap", shown, a, b)
				}
			}
		}
	}
}
