package rehearsal

import (
	"bytes"
	"math"
	"testing"

	"homeside/assets"
	"homeside/model/advice"
	"homeside/model/lessonfile"
	"homeside/model/rally"
	"homeside/model/units"
)

// builtIn is a play of a built-in lesson, solved.
func builtIn(t *testing.T, lesson string, play int) *rally.Rally {
	t.Helper()
	data, err := assets.Lessons.ReadFile(lesson)
	if err != nil {
		t.Fatal(err)
	}
	l, err := lessonfile.Read(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	r, err := rally.Solve(l, play)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

// At a crossing neither partner is to the right of the other, just before and just
// after one is. It is found in the play in
// which the partners switch, and in no play in which they stay.
func TestCrossings(t *testing.T) {
	for _, c := range []struct {
		play, want int
	}{{0, 0}, {1, 1}, {2, 0}} {
		r := builtIn(t, "lessons/stack-on-return.json", c.play)
		got := New(r, Plan{}).Crossings()
		if len(got) != c.want {
			t.Errorf("play %d has %d crossings, want %d", c.play, len(got), c.want)
		}
		for _, a := range got {
			if d := acrossAt(r, a, a.When); math.Abs(d) > 0.01 || acrossAt(r, a, a.When-0.2)*acrossAt(r, a, a.When+0.2) >= 0 {
				t.Errorf("at %v the partners are %v ft apart across the court, before %v, after %v", a.When, d, acrossAt(r, a, a.When-0.2), acrossAt(r, a, a.When+0.2))
			}
		}
	}
}

func acrossAt(r *rally.Rally, a advice.Approach, t units.Seconds) float64 {
	f := r.At(t)
	return float64(f.Players[a.Front].Run.Place.X - f.Players[a.Front.Partner()].Run.Place.X)
}

// Where paths cross that is said before the first count, for its time, and again
// about the crossing, at every speed as long; where none cross nobody is held up.
func TestWarning(t *testing.T) {
	r := builtIn(t, "lessons/stack-on-return.json", 1)
	for _, speed := range Speeds {
		h := New(r, Plan{Speed: speed, Count: 2, Rounds: 2, Rest: 1, Warn: 4})
		h.Read()
		h.Start()
		h.Advance(3.5)
		if _, ok := h.CrossingNow(); h.Phase() != Warning || !ok || math.Abs(float64(h.Left())-0.5) > 1e-9 {
			t.Fatalf("3.5 s after the start: %v, warned %v, %v left", h.Phase(), ok, h.Left())
		}
		h.Advance(0.6)
		if h.Phase() != Counting {
			t.Fatalf("after the warning: %v, want %v", h.Phase(), Counting)
		}
		const dt = 0.01
		warned := units.Seconds(0)
		for h.Phase() != Resting {
			if _, ok := h.CrossingNow(); ok {
				warned += dt
			}
			h.Advance(dt)
		}
		if want := warnBefore + warnAfter; math.Abs(float64(warned-want)) > 3*dt {
			t.Errorf("at speed %v it is warned of the crossing for %v, want %v", speed, warned, want)
		}
		h.Advance(1)
		if h.Phase() != Counting {
			t.Errorf("the second round begins with %v, want %v", h.Phase(), Counting)
		}
	}
	h := New(builtIn(t, "lessons/stack-on-return.json", 2), Plan{Warn: 4, Count: 1})
	h.Read()
	h.Start()
	if h.Phase() != Counting {
		t.Errorf("where no paths cross the start is %v, want %v", h.Phase(), Counting)
	}
}

// Step by step, the event before a crossing warns of it.
func TestWarningStepByStep(t *testing.T) {
	r := builtIn(t, "lessons/stack-on-return.json", 1)
	h := New(r, Plan{})
	h.Read()
	warned := 0
	for h.Step(true) {
		from, to := h.Stretch()
		a, ok := h.CrossingNow()
		if ok {
			warned++
		} else if at := h.Crossings()[0].When; at >= from && at < to {
			t.Errorf("at %v nothing is said of the crossing at %v, before the next event at %v", from, at, to)
		}
		if ok && a != h.Crossings()[0] {
			t.Errorf("warned of %+v, want %+v", a, h.Crossings()[0])
		}
	}
	if warned == 0 {
		t.Error("step by step nobody is warned")
	}
}
