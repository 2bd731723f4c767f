package lesson

import "slices"

// Signs are what a pair means by the signs of a hand behind the back: a closed fist,
// an open hand and two fingers, in this order. The zero Signs, all Stay, are those of a
// pair that has agreed on none of its own: common practice.
type Signs [3]Meaning

// Whole says whether each meaning has one sign.
func (s Signs) Whole() bool {
	for m := range Meaning(len(meaningNames)) {
		if !slices.Contains(s[:], m) {
			return false
		}
	}
	return true
}
