package drill

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"

	_ "homeside/internal/fixedseed"
	"homeside/model/lesson"
)

func signals(t testing.TB, o SignalOptions) *Signals {
	t.Helper()
	s, err := NewSignals(o)
	if err != nil {
		t.Fatalf("NewSignals(%+v): %v", o, err)
	}
	return s
}

// Of many signals the shares are those asked for, within four standard errors.
func TestSharesOfSignals(t *testing.T) {
	const n = 20000
	s := signals(t, SignalOptions{Switch: 0.3, Fake: 0.1, Unclear: 0.2, Seed: 7})
	var count [signs]float64
	for range n {
		count[s.Ask().Sign]++
		s.Next()
	}
	for sign, want := range map[Sign]float64{TwoFingers: 0.1, Unclear: 0.2, OpenHand: 0.7 * 0.3, Fist: 0.7 * 0.7} {
		if got, off := count[sign]/n, 4*math.Sqrt(want*(1-want)/n); math.Abs(got-want) > off {
			t.Errorf("%v: share %.4f, want %.4f within %.4f", sign, got, want, off)
		}
	}
}

// A reader is right with the pair's own meaning and, unsure, with stay.
func TestReader(t *testing.T) {
	own := Meanings{lesson.Switch, lesson.Fake, lesson.Stay}
	want := map[Sign]lesson.Meaning{Fist: lesson.Switch, OpenHand: lesson.Fake, TwoFingers: lesson.Stay, Unclear: lesson.Stay}
	s := signals(t, SignalOptions{Meanings: own, Switch: 0.5, Fake: 0.3, Unclear: 0.2, Seed: 1})
	seen := map[Sign]bool{}
	for range 200 {
		a := s.Ask()
		seen[a.Sign] = true
		for _, move := range Usual() {
			if got := s.Read(move); got != (move == want[a.Sign]) {
				t.Fatalf("at %v, Read(%v) = %v", a.Sign, move, got)
			}
		}
		s.Next()
	}
	if len(seen) != 4 {
		t.Errorf("200 signals show %v, want all four", seen)
	}
}

// A pair that has agreed on nothing means what is usual.
func TestMeaningsOf(t *testing.T) {
	own := lesson.Signs{lesson.Fake, lesson.Stay, lesson.Switch}
	if got := MeaningsOf(own); got != Meanings(own) || got.Check() != nil {
		t.Errorf("MeaningsOf(%v) = %v", own, got)
	}
	if got := MeaningsOf(lesson.Signs{}); got != Usual() {
		t.Errorf("MeaningsOf of nothing = %v, want %v", got, Usual())
	}
}

// A giver is asked for what can be shown, and is right with that sign alone.
func TestGiver(t *testing.T) {
	s := signals(t, SignalOptions{Role: Giver, Switch: 0.5, Fake: 0.3, Unclear: 0.7, Seed: 1})
	for range 200 {
		a := s.Ask()
		if a.Sign == Unclear {
			t.Fatal("a giver is asked for an unclear sign")
		}
		for sign := range signs {
			if got := s.Give(sign); got != (sign == a.Sign) {
				t.Fatalf("asked for %v, Give(%v) = %v", a.Meaning, sign, got)
			}
		}
		s.Next()
	}
}

// The same seed asks the same, whatever is answered; another seed does not.
func TestSameSeedSameSignals(t *testing.T) {
	o := SignalOptions{Switch: 0.5, Fake: 0.2, Seed: 3}
	a, b := signals(t, o), signals(t, o)
	o.Seed = 4
	c, differs := signals(t, o), false
	for range 50 {
		a.Read(lesson.Switch)
		x, y := a.Next(), b.Next()
		if x != y {
			t.Fatalf("the same seed asks %v and %v", x, y)
		}
		differs = differs || c.Next() != x
	}
	if !differs {
		t.Error("another seed asks the same 50 signals")
	}
}

func TestSignalOptionsOutOfRange(t *testing.T) {
	for _, c := range []struct {
		o    SignalOptions
		want error
	}{
		{SignalOptions{Switch: -0.1}, ErrShare},
		{SignalOptions{Switch: math.NaN()}, ErrShare},
		{SignalOptions{Fake: 0.6, Unclear: 0.5}, ErrShare},
		{SignalOptions{Meanings: Meanings{lesson.Switch, lesson.Switch, lesson.Stay}}, ErrMeanings},
		{SignalOptions{}, nil},
	} {
		if _, got := NewSignals(c.o); !errors.Is(got, c.want) || (got == nil) != (c.want == nil) {
			t.Errorf("NewSignals(%+v) = %v, want %v", c.o, got, c.want)
		}
	}
}

// A streak's run never passes its best, nor the right ones those asked.
func TestStreak(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var s Streak
		best, run := 0, 0
		for _, right := range rapid.SliceOf(rapid.Bool()).Draw(t, "answers") {
			s = s.With(right)
			if run++; !right {
				run = 0
			}
			best = max(best, run)
			if s.Run != run || s.Best != best || s.Right > s.Asked {
				t.Fatalf("streak %+v, want run %d and best %d", s, run, best)
			}
		}
	})
}
