package words

import (
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
)

// BeforeServe heads the time before the serve.
func BeforeServe() string { return T("Before the serve") }

// IntoNet says that a ball does not pass the net.
func IntoNet() string { return T("The ball goes into the net: the rally stops there.") }

// Signalled says a signal: "Ana shows Ben: switch. Ben answers: yes".
func Signalled(l lesson.Lesson, c lesson.Cue) string {
	text := T("%s shows %s: %s.", nameOf(l, c.Giver), nameOf(l, c.Reader), Name(c.Meaning))
	if c.Text != "" {
		text += T(" %s answers: %s", nameOf(l, c.Reader), c.Text)
	}
	return text
}

// Struck names shot i, counted from 0, and who hits it: "Return by near1".
func Struck(l lesson.Lesson, i int, by game.Player) string {
	return T("%s by %s", capital(Shot(i)), nameOf(l, by))
}

// Bounces says that the ball of shot i bounces.
func Bounces(i int) string { return capital(T("%s bounces.", TheShot(i))) }

// Goes says a run as the legs make it; cut if the next one begins before its end.
func Goes(l lesson.Lesson, id game.Player, leg rally.Leg, to court.Point, cut bool) string {
	if cut {
		return T("%s goes %s, toward %s, and turns to the next place before getting there.", nameOf(l, id), Name(leg.Gait), Place(id.Team(), to))
	}
	text := T("%s goes %s %s, to %s", nameOf(l, id), Length(leg.Run.Distance.Feet()), Name(leg.Gait), Place(id.Team(), to))
	if late := Seconds(leg.Late()); late != Seconds(0) {
		text += T(", %s late", late)
	}
	return text + "."
}

// ScriptHead says what the times of a script are: how long the clip lasts, and
// its speed, of which 1 is the match's.
func ScriptHead(length string, speed float64) string {
	return T("Times are minutes and seconds from the start of the clip, which lasts %s at %v times match speed.", length, speed)
}

// calmWords is how many words a second a voice-over says at most: common
// practice is 150 to 160 a minute.
const calmWords = 160.0 / 60

// Say is what a speaker says in so many seconds, marked where it is too much.
func Say(text string, count int, seconds float64) string {
	if float64(count) > calmWords*seconds {
		text += T(" [%d words in %.1f s: more than can be said calmly]", count, seconds)
	}
	return T("SAY: %s", text)
}
