package rehearsal

import (
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"homeside/export/sound"
	_ "homeside/internal/fixedseed"
	"homeside/model/lesson/lessontest"
	"homeside/model/rally"
	"homeside/model/units"
)

func solved(t testing.TB) *rally.Rally {
	t.Helper()
	r, err := rally.Solve(lessontest.Sample(), 0)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

func ready(t testing.TB, p Plan) *Rehearsal {
	t.Helper()
	h := New(solved(t), p)
	h.Read()
	if !h.Start() {
		t.Fatal("Start() = false after the cautions have been read")
	}
	return h
}

// Nobody runs before the cautions have been read.
func TestCautionsComeFirst(t *testing.T) {
	h := New(solved(t), Plan{Count: 2})
	h.Toggle()
	h.Step(true)
	if h.Start() || h.Phase() != Waiting || h.Advance(1) != nil {
		t.Errorf("phase %v before the cautions have been read, want %v", h.Phase(), Waiting)
	}
	h.Read()
	h.Toggle()
	if h.Phase() != Counting {
		t.Errorf("phase %v after, want %v", h.Phase(), Counting)
	}
}

// Two rounds with a count of three beats and a rest: each phase takes its time.
func TestPhasesTakeTheirTime(t *testing.T) {
	h := ready(t, Plan{Speed: Half, Count: 3, Beat: 0.5, Rounds: 2, Rest: 4})
	run := (h.rally.To - h.rally.From) / Half
	for i, c := range []struct {
		pass  units.Seconds
		phase Phase
		round int
	}{{1.4, Counting, 1}, {0.2, Running, 1}, {run - 0.2, Running, 1}, {0.2, Resting, 1}, {3.8, Resting, 1}, {0.2, Counting, 2}, {1.5, Running, 2}, {run, Done, 2}, {9, Done, 2}} {
		h.Advance(c.pass)
		if round, _ := h.Round(); h.Phase() != c.phase || round != c.round {
			t.Fatalf("step %d: phase %v of round %d, want %v of %d", i, h.Phase(), round, c.phase, c.round)
		}
	}
	if h.Moment() != h.rally.To {
		t.Errorf("in the end it shows %v, want the end %v", h.Moment(), h.rally.To)
	}
}

// However time is cut up, the same beeps are told, each once and at its time.
func TestEveryBeepOnce(t *testing.T) {
	r := solved(t)
	rapid.Check(t, func(t *rapid.T) {
		speed := rapid.SampledFrom(Speeds[:]).Draw(t, "speed")
		p := Plan{Speed: speed, Count: rapid.IntRange(0, 4).Draw(t, "count"), Rounds: 2, Rest: 1}
		h := New(r, p)
		h.Read()
		h.Start()
		var got []Heard
		var now units.Seconds
		for h.Passing() {
			dt := units.Seconds(rapid.Float64Range(0.001, 3).Draw(t, "dt"))
			for _, b := range h.Advance(dt) {
				if b.After < 0 || b.After > dt {
					t.Fatalf("a beep is due %v after a stretch of %v", b.After, dt)
				}
				got = append(got, Heard{now + b.After, b.Kind})
			}
			now += dt
		}
		checkHeard(t, got, wanted(r, h.plan))
	})
}

// wanted are the beeps of all rounds by plain arithmetic.
func wanted(r *rally.Rally, p Plan) []Heard {
	var all []Heard
	var start units.Seconds
	for range p.Rounds {
		for i := range p.Count {
			all = append(all, Heard{start + p.Beat*units.Seconds(i), sound.Count})
		}
		start += p.Beat * units.Seconds(p.Count)
		for _, b := range sound.Of(r).Beeps {
			if b.At < r.To {
				all = append(all, Heard{start + (b.At-r.From)/units.Seconds(p.Speed), b.Kind})
			}
		}
		start += (r.To-r.From)/units.Seconds(p.Speed) + p.Rest
	}
	return all
}

func checkHeard(t *rapid.T, got, want []Heard) {
	same := func(a, b Heard) bool { return a.Kind == b.Kind && math.Abs(float64(a.After-b.After)) < 1e-6 }
	if !slices.EqualFunc(got, want, same) {
		t.Fatalf("heard %v, want %v", got, want)
	}
}

// A pause stands still, a change of speed keeps the moment.
func TestPauseAndSpeed(t *testing.T) {
	h := ready(t, Plan{Speed: Walk})
	h.Advance(2)
	at := h.Moment()
	h.Toggle()
	h.Advance(5)
	h.SetSpeed(Match)
	if got := h.Moment(); math.Abs(float64(got-at)) > 1e-9 || !h.Paused() {
		t.Errorf("after a pause and another speed it shows %v, want %v", got, at)
	}
	h.Toggle()
	h.Advance(0.25)
	if got := h.Moment(); math.Abs(float64(got-at-0.25)) > 1e-9 {
		t.Errorf("0.25 s later at match speed it shows %v, want %v", got, at+0.25)
	}
}

// Steps visit every event that comes to pass, forward and back, and pause.
func TestSteps(t *testing.T) {
	h := New(solved(t), Plan{})
	h.Read()
	var want []units.Seconds
	for _, e := range h.rally.Events {
		if e.Reached && (len(want) == 0 || e.At > want[len(want)-1]+sameMoment) && e.At > h.rally.From {
			want = append(want, e.At)
		}
	}
	for _, at := range want {
		if h.Step(true); math.Abs(float64(h.Moment()-at)) > 1e-9 || !h.Paused() {
			t.Fatalf("a step goes to %v, want %v", h.Moment(), at)
		}
	}
	h.Step(true)
	for i := len(want) - 2; i >= 0; i-- {
		if h.Step(false); math.Abs(float64(h.Moment()-want[i])) > 1e-9 {
			t.Fatalf("a step back goes to %v, want %v", h.Moment(), want[i])
		}
	}
}

// onEvent says whether an event is at a moment.
func onEvent(h *Rehearsal, at units.Seconds) bool {
	return slices.ContainsFunc(h.rally.Events, func(e rally.Event) bool { return e.Reached && e.At == at })
}

// What stands still stands for all until the next event, what runs for its moment.
func TestStretch(t *testing.T) {
	h := ready(t, Plan{})
	h.Advance(3)
	if from, to := h.Stretch(); from != to || from != h.Moment() {
		t.Errorf("running, the picture stands for %v to %v, want %v alone", from, to, h.Moment())
	}
	h.Step(true)
	if from, to := h.Stretch(); !onEvent(h, from) || !onEvent(h, to) || to <= from {
		t.Errorf("stepped, the picture stands for %v to %v, want from one event to the next", from, to)
	}
}

// Another plan keeps the moment; fewer rounds than are over end it.
func TestChange(t *testing.T) {
	h := ready(t, Plan{Rounds: 5})
	h.Advance(3)
	at := h.Moment()
	h.Change(Plan{Speed: Half, Rounds: 1, Rest: 3})
	if got := h.Moment(); math.Abs(float64(got-at)) > 1e-9 || h.Phase() != Running {
		t.Errorf("after a change it is %v at %v, want still %v", h.Phase(), got, at)
	}
	h.Advance(60)
	if h.Phase() != Done {
		t.Errorf("after the one round left: %v, want %v", h.Phase(), Done)
	}
}

// Skip goes from phase to phase, but from the end of nothing.
func TestSkip(t *testing.T) {
	h := ready(t, Plan{Count: 4, Rounds: 2, Rest: 9})
	var got []Phase
	for range 6 {
		got = append(got, h.Phase())
		h.Skip()
	}
	if want := []Phase{Counting, Running, Resting, Counting, Running, Done}; !slices.Equal(got, want) {
		t.Errorf("skipping goes through %v, want %v", got, want)
	}
}

// With cuts only events are shown.
func TestCuts(t *testing.T) {
	h := ready(t, Plan{Speed: Match, Cuts: true})
	for h.Phase() == Running || h.Phase() == Counting {
		at := h.Moment()
		if at != h.rally.From && !onEvent(h, at) {
			t.Fatalf("%v is shown, which is no event", at)
		}
		h.Advance(0.05)
	}
}
