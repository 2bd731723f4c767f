package words

import (
	"homeside/model/lesson"
	"homeside/model/movement"
	"homeside/model/units"
)

// Hands are the words for the paddle hands, by lesson.Hand.
func Hands() []string { return []string{T("right-handed"), T("left-handed")} }

// Paddle names a player's paddle: "Ivo's paddle, left hand".
func Paddle(p lesson.Player) string {
	if p.Hand == lesson.LeftHanded {
		return T("%s's paddle, left hand", p.Name)
	}
	return T("%s's paddle, right hand", p.Name)
}

// Wants are the words for the side a player wants, by lesson.Want.
func Wants() []string { return []string{T("either side"), T("wants the right"), T("wants the left")} }

// Balls are the words for the balls: outdoor, then indoor.
func Balls() []string { return []string{T("outdoor, 40 holes"), T("indoor, 26 holes")} }

// PaceMeans says what a pace means on court: the times for 10 and 15 ft, run
// through and stopped. Times are estimates.
func PaceMeans(p movement.Pace) string {
	text := T("Estimates, from standing:")
	for _, d := range []units.Feet{10, 15} {
		stopped, err := p.Fastest(movement.Run{Distance: d.Metres()})
		if err != nil {
			return Refused(err)
		}
		text += T(" %s in %s, stopped in %s.", Length(d), Seconds(p.Through(d.Metres())), Seconds(stopped.Duration()))
	}
	return text + T(" Not instructions to sprint.")
}

// Refused is an error as one plain sentence.
func Refused(err error) string { return T("Not taken: %s.", err) }
