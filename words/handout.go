package words

import (
	"strings"

	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

// FiguresFrom says where the figures of a handout come from.
func FiguresFrom() string {
	return T("Distances follow from the lesson, times are computed: ball after Lindsey (2025) and Steyn et al. (2024), runs after Furusawa, Hill and Parkinson (1927); court: USA Pickleball Official Rulebook 2026, section 3. Cautions after Weiss (2021) and JAMA Ophthalmology (2025).")
}

// Invented is what a lesson's notes say of invented names, in the lesson's own
// words; empty if they say nothing.
func Invented(l lesson.Lesson) string {
	for line := range strings.Lines(l.Notes) {
		for sentence := range strings.SplitAfterSeq(strings.TrimSpace(line), ". ") {
			if s := strings.ToLower(sentence); strings.Contains(s, "invented") || strings.Contains(s, "inventad") {
				return strings.TrimSpace(sentence)
			}
		}
	}
	return ""
}

// Moves says how far a player moves: "Ines 6 ft 8 in (2.03 m)".
func Moves(l lesson.Lesson, id game.Player, far units.Feet) string {
	return T("%s %s (%s)", nameOf(l, id), FeetInches(far), InMetres(far))
}

// InMetres is a length in metres with two places, whatever the measures.
func InMetres(f units.Feet) string { return T("%.2f m", float64(f.Metres())) }

// StoryLegend says what the lines of a storyboard mean.
func StoryLegend() string {
	return T("Solid arrows: who has run since the picture before, from the small ring. Dots: the ball. The far team's discs have a second ring.")
}
