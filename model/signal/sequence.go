package signal

import (
	"errors"
	"fmt"
	"math/rand/v2"
	"strings"
)

// MostSignals is the length of the longest sequence, far more than a match needs.
const MostSignals = 10000

// ErrLength says that a sequence is too long or shorter than nothing.
var ErrLength = errors.New("number of signals out of range")

// stream keeps the sequences of one seed apart from other uses of it.
const stream = 0x7369676e616c

// Sequence is so many signals in an order that nobody can guess, o for the open
// hand and c for the closed one: each switches with the same chance whatever came
// before. The same seed gives the same sequence. The error is an ErrChance or
// ErrLength.
func Sequence(often float64, length int, seed uint64) (string, error) {
	if !(often >= 0 && often <= 1) {
		return "", fmt.Errorf("%w: to switch %v of the time, want 0 to 1", ErrChance, often)
	}
	if length < 0 || length > MostSignals {
		return "", fmt.Errorf("%w: %d, want 0 to %d", ErrLength, length, MostSignals)
	}
	r := rand.New(rand.NewPCG(seed, stream))
	var b strings.Builder
	for range length {
		if r.Float64() < often {
			b.WriteByte('o')
		} else {
			b.WriteByte('c')
		}
	}
	return b.String(), nil
}
