package signal

import (
	"errors"
	"math"
	"strings"
	"testing"
)

// The generator is PCG-DXSM, whose output Go promises to keep: the sequence can
// be printed again.
func TestSequenceRepeats(t *testing.T) {
	a, err := Sequence(0.6, 40, 7)
	if err != nil || len(a) != 40 || strings.Trim(a, "oc") != "" {
		t.Fatalf("Sequence(0.6, 40, 7) = %q, %v, want 40 of o and c", a, err)
	}
	if b, _ := Sequence(0.6, 40, 7); b != a {
		t.Errorf("the same seed gives %q and %q", a, b)
	}
	if b, _ := Sequence(0.6, 40, 8); b == a {
		t.Errorf("seeds 7 and 8 both give %q", a)
	}
	if b, _ := Sequence(0.6, 20, 7); b != a[:20] {
		t.Errorf("a shorter sequence is %q, want the beginning of %q", b, a)
	}
}

func TestSequencePure(t *testing.T) {
	for often, want := range map[float64]string{0: "ccccc", 1: "ooooo"} {
		if got, err := Sequence(often, 5, 3); got != want || err != nil {
			t.Errorf("Sequence(%v, 5, 3) = %q, %v, want %q", often, got, err, want)
		}
	}
	if got, err := Sequence(0.5, 0, 3); got != "" || err != nil {
		t.Errorf("no signals: %q, %v", got, err)
	}
}

// As often as asked, and the next signal does not depend on the last: both
// within four standard errors of 10,000 signals.
func TestSequenceIsFair(t *testing.T) {
	const n = MostSignals
	for _, often := range []float64{0.1, 0.5, 7. / 12} {
		s, _ := Sequence(often, n, 11)
		se := math.Sqrt(often * (1 - often) / n)
		if got := float64(strings.Count(s, "o")) / n; math.Abs(got-often) > 4*se {
			t.Errorf("switches %v of the time, want %v within %v", got, often, 4*se)
		}
		opens, after := 0, 0
		for i := range n - 1 {
			if s[i] == 'o' {
				opens++
				after += strings.Count(s[i+1:i+2], "o")
			}
		}
		if got, se := float64(after)/float64(opens), math.Sqrt(often*(1-often)/float64(opens)); math.Abs(got-often) > 4*se {
			t.Errorf("after an open hand %v switch again, want %v within %v", got, often, 4*se)
		}
	}
}

func TestSequenceRefuses(t *testing.T) {
	for _, often := range []float64{-0.1, 1.1, math.NaN()} {
		if _, err := Sequence(often, 5, 1); !errors.Is(err, ErrChance) {
			t.Errorf("Sequence(%v, 5, 1): %v, want ErrChance", often, err)
		}
	}
	for _, n := range []int{-1, MostSignals + 1} {
		if _, err := Sequence(0.5, n, 1); !errors.Is(err, ErrLength) {
			t.Errorf("Sequence(0.5, %d, 1): %v, want ErrLength", n, err)
		}
	}
}
