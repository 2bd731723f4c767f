package drilling

import (
	"testing"

	"homeside/model/drill"
	"homeside/model/lesson"
)

func signalRunOf(t *testing.T, o drill.SignalOptions) *signalRun {
	t.Helper()
	r, err := newSignalRun(o)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

func (r *signalRun) check(t *testing.T, when string, o outcome, want drill.Streak) {
	t.Helper()
	if got := r.drill.Streak(); r.now().outcome != o || got != want {
		t.Errorf("%s: %v, %+v, want %v, %+v", when, r.now().outcome, got, o, want)
	}
}

// An answer counts once; what is shown before anybody answered counts only as the
// partners say.
func TestReaderRun(t *testing.T) {
	r := signalRunOf(t, drill.SignalOptions{Switch: 0.5, Fake: 0.2, Unclear: 0.1, Seed: 3})
	r.read(r.now().ask.Meaning)
	r.check(t, "answered", right, drill.Streak{Asked: 1, Right: 1, Run: 1, Best: 1})
	r.read(lesson.Switch)
	r.say(false)
	r.check(t, "answered again", right, drill.Streak{Asked: 1, Right: 1, Run: 1, Best: 1})

	r.step()
	r.step()
	r.check(t, "shown", shown, drill.Streak{Asked: 1, Right: 1, Run: 1, Best: 1})
	r.say(true)
	r.check(t, "said to be known", right, drill.Streak{Asked: 2, Right: 2, Run: 2, Best: 2})
	r.say(false)
	r.step()
	r.step()
	r.say(false)
	r.check(t, "said not to be known", wrong, drill.Streak{Asked: 3, Right: 2, Run: 0, Best: 2})
	r.step()
	r.step()
	r.step()
	r.check(t, "shown and left", asked, drill.Streak{Asked: 3, Right: 2, Run: 0, Best: 2})
}

// Looked at again, a question is as it was and takes no answer.
func TestLookBack(t *testing.T) {
	r := signalRunOf(t, drill.SignalOptions{Switch: 0.5, Seed: 3})
	first := r.now().ask
	r.read(first.Meaning)
	r.step()
	second := r.now().ask
	if !r.back() || r.now().ask != first || r.open() {
		t.Fatalf("back: %v, %v is looked at, open %v", r.now().ask, first, r.open())
	}
	r.read(lesson.Stay)
	r.reveal()
	r.check(t, "back", right, drill.Streak{Asked: 1, Right: 1, Run: 1, Best: 1})
	if r.step(); r.now().ask != second || !r.open() {
		t.Errorf("forward again %v is asked, open %v, want %v", r.now().ask, r.open(), second)
	}
}

// A giver is right with the one sign, also by the pair's own meanings, and a sign
// made for real is judged by the partners.
func TestGiverRun(t *testing.T) {
	own := drill.Meanings{lesson.Switch, lesson.Fake, lesson.Stay}
	r := signalRunOf(t, drill.SignalOptions{Role: drill.Giver, Meanings: own, Switch: 0.5, Fake: 0.3, Seed: 1})
	r.give(own.SignFor(r.now().ask.Meaning))
	r.check(t, "the sign", right, drill.Streak{Asked: 1, Right: 1, Run: 1, Best: 1})
	r.step()
	r.give(own.SignFor((r.now().ask.Meaning + 1) % 3))
	r.check(t, "another sign", wrong, drill.Streak{Asked: 2, Right: 1, Run: 0, Best: 1})
	r.step()
	r.reveal()
	r.say(true)
	r.check(t, "made for real", right, drill.Streak{Asked: 3, Right: 2, Run: 1, Best: 1})
	r.step()
	r.reveal()
	r.say(false)
	r.check(t, "made wrong", wrong, drill.Streak{Asked: 4, Right: 2, Run: 0, Best: 1})
}
