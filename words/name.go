package words

import (
	"strings"

	"golang.org/x/text/unicode/bidi"

	"homeside/model/game"
	"homeside/model/lesson"
)

// nameOf is a player's name within a sentence.
func nameOf(l lesson.Lesson, id game.Player) string { return inSentence(l.NameOf(id)) }

// leftToRight is a mark that nobody sees (Unicode's U+200E): what stands beside it
// runs from left to right.
const leftToRight = "\u200e"

// inSentence is a name that leaves the sentence round it as it runs: one of a script
// that runs from right to left would turn the sentence it begins, and take the
// figures after it along.
func inSentence(name string) string {
	if !strings.ContainsFunc(name, backward) {
		return name
	}
	return leftToRight + name + leftToRight
}

// backward says whether a letter is of a script that runs from right to left.
func backward(r rune) bool {
	p, _ := bidi.LookupRune(r)
	return p.Class() == bidi.R || p.Class() == bidi.AL
}
