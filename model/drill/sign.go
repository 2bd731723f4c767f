package drill

import (
	"errors"
	"fmt"
	"slices"

	"homeside/model/lesson"
)

// Sign is what the hand behind the back shows.
type Sign uint8

// The signs. Closed and open hand are common practice; the third, two fingers
// here, is one that some pairs add.
const (
	Fist Sign = iota
	OpenHand
	TwoFingers
	Unclear // hidden, late or half shown
	signs
)

var signNames = [signs]string{"closed fist", "open hand", "two fingers", "unclear"}

// String is the sign in English.
func (s Sign) String() string { return signNames[s%signs] }

// Meanings say what a pair means by Fist, OpenHand and TwoFingers, in this order.
type Meanings [3]lesson.Meaning

// Usual is common practice: closed stays, open switches, the third sign is a fake.
func Usual() Meanings { return Meanings{lesson.Stay, lesson.Switch, lesson.Fake} }

// MeaningsOf is what a pair means, common practice where it has agreed on nothing.
func MeaningsOf(s lesson.Signs) Meanings {
	if s == (lesson.Signs{}) {
		return Usual()
	}
	return Meanings(s)
}

// ErrMeanings says that two signs mean the same, so that one is missing.
var ErrMeanings = errors.New("each sign needs a meaning of its own")

// Check is an ErrMeanings unless each meaning has one sign.
func (m Meanings) Check() error {
	for _, want := range Usual() {
		if !slices.Contains(m[:], want) {
			return fmt.Errorf("%w: none means %v", ErrMeanings, want)
		}
	}
	return nil
}

// Of is what a sign means; an unclear one means stay.
func (m Meanings) Of(s Sign) lesson.Meaning {
	if int(s) < len(m) {
		return m[s]
	}
	return lesson.Stay
}

// SignFor is the sign for a meaning.
func (m Meanings) SignFor(what lesson.Meaning) Sign {
	return Sign(max(slices.Index(m[:], what), 0)) // Check has found each meaning
}
