package words

import (
	"fmt"
	"math"

	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

// Clock is a time in minutes and seconds, to the second: "6:15".
func Clock(t units.Seconds) string {
	s := int(math.Round(float64(t)))
	return fmt.Sprintf("%d:%02d", s/60, s%60)
}

// CourseTime says what a session holds and how long it lasts.
func CourseTime(plays int, total units.Seconds, students int) string {
	if plays == 1 {
		return T("One play in %s minutes for %d students on one court. Every time follows from the play's own length and runs.", Clock(total), students)
	}
	return T("%d plays in %s minutes for %d students on one court. Every time follows from the plays' own lengths and runs.", plays, Clock(total), students)
}

// Stage is a step from a walk to a rally, counted from 0.
func Stage(i int) string {
	switch i {
	case 0:
		return T("Walk")
	case 1:
		return T("Shadow")
	case 2:
		return T("Fed ball")
	default:
		return T("Live")
	}
}

// StageTimes says how a stage's time is made up.
func StageTimes(rounds, reps int, once units.Seconds, slow float64) string {
	if slow > 1 {
		return T("%d rounds, the play %d times in each at 1/%s of match speed, about %.0f s a time", rounds, reps, Factor(slow), float64(once))
	}
	return T("%d rounds, the play %d times in each at match speed, about %.0f s a time", rounds, reps, float64(once))
}

// Factor is a number with at most one decimal: "2", "2.7".
func Factor(v float64) string {
	if s := fmt.Sprintf("%.1f", v); s[len(s)-2:] != ".0" {
		return s
	}
	return fmt.Sprintf("%.0f", v)
}

// StageDoes says what is done in a stage.
func StageDoes(i int, slow float64) string {
	switch i {
	case 0:
		return T("no ball, no paddle up. The caller says each event aloud; everybody walks to the next cone, so slowly (1/%s of match speed) that nobody has to run.", Factor(slow))
	case 1:
		return T("paddles up, no ball, at half speed. Swing at the contacts, stand still at the places.")
	case 2:
		return T("the feeder plays the balls below, one after the other; each is played to the next place and no further. Nobody sprints for a ball.")
	default:
		return T("serve and play it out at match speed. Keep the places up to the third, then play.")
	}
}

// RotationReads says how the rotation works.
func RotationReads(rounds int) string {
	return T("Each stage has %d rounds; after a round every pair moves on by one role. Near and far: the teams on court. Feed: one feeds, one calls the events. Shadow: the near team's steps beside the court, clear of the run-off. Watch: look at the places and tell the pair that follows.", rounds)
}

// PairLetter names a pair of students: "A (1, 2)".
func PairLetter(i int) string {
	return T("%s (%d, %d)", string(rune('A'+i)), 2*i+1, 2*i+2)
}

// Role is what a pair does in a round, counted from 0.
func Role(i int) string {
	switch i {
	case 0:
		return T("near")
	case 1:
		return T("far")
	case 2:
		return T("feed")
	case 3:
		return T("shadow")
	default:
		return T("watch")
	}
}

// Equipment is what to bring.
func Equipment(students, balls, cones int) string {
	return T("%d paddles; eye protection made for racket sports for all %d; %d balls; %d flat cones with numbers and the cone sheet; a tape measure or a stick of 3 ft (0.91 m); a watch; a wristband for each starting server; water.", students, students, balls, cones)
}

// Feed says where a ball is fed from, where it lands and how high it goes.
func Feed(l lesson.Lesson, shot int, by game.Player, from, lands string, top units.Feet) string {
	return T("%s: feed it from %s. It lands %s (their view); top %s.", Struck(l, shot, by), from, lands, FeetInches(top))
}
