package words

import (
	"testing"

	"homeside/model/advice"
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

// A name of a script that runs from right to left stands between two marks that run
// from left to right, so that the sentence begins at the left and its figures stay
// behind the name (Unicode Standard Annex 9, rules P2 and W7); others stand as they are.
func TestNamesInSentences(t *testing.T) {
	var l lesson.Lesson
	l.Teams[court.Near].Players[0].Name = "\u05d3\u05d5\u05d3"
	l.Teams[court.Near].Players[1].Name = "Linnea"
	for want, got := range map[string]string{
		"\u200e\u05d3\u05d5\u05d3\u200e 3 ft 6 in (1.07 m)": Moves(l, game.Near1, 3.5),
		"Linnea 3 ft 6 in (1.07 m)":                         Moves(l, game.Near2, 3.5),
		"Paths cross at 2.00 s: \u200e\u05d3\u05d5\u05d3\u200e in front of Linnea, 4 ft apart. Agree who goes in front!":           PathsCrossAt(l, advice.Approach{When: 2, Distance: 4, Front: game.Near1}),
		"Paths cross at 2.00 s: Linnea and \u200e\u05d3\u05d5\u05d3\u200e, 4 ft apart, neither in front. Agree who goes in front!": PathsCrossAt(l, advice.Approach{When: 2, Distance: units.Feet(4), Front: game.Near2, Level: true}),
	} {
		if got != want {
			t.Errorf("got %q, want %q", got, want)
		}
	}
}
