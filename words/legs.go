package words

import (
	"fmt"

	"homeside/model/advice"
	"homeside/model/finding"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

// told is a finding with the lesson that has the names.
type told struct {
	finding.Finding
	lesson lesson.Lesson
}

// value is a figure of a finding, its zero value where the finding has none.
func value[T any](t told, name string) T {
	v, _ := t.Args.Get(name)
	out, _ := v.(T)
	return out
}

func (t told) who() string                   { return t.lesson.NameOf(t.Player) }
func (t told) name(arg string) string        { return t.lesson.NameOf(value[game.Player](t, arg)) }
func (t told) feet(arg string) string        { return FeetInches(value[units.Feet](t, arg)) }
func (t told) time(arg string) string        { return Seconds(value[units.Seconds](t, arg)) }
func (t told) speed(arg string) string       { return Speed(value[units.MetresPerSecond](t, arg)) }
func (t told) ball() string                  { return lesson.ShotName(value[int](t, "shot")) }
func (t told) hasNot(arg string) bool        { _, ok := t.Args.Get(arg); return !ok }
func (t told) is(arg string) bool            { return value[int](t, arg) == 1 }
func (t told) place() string                 { return Place(t.Player.Team(), t.Where) }
func (t told) say(f string, a ...any) string { return fmt.Sprintf(f, a...) }

// Speed is a speed of legs: "19.7 ft/s (6.0 m/s)".
func Speed(v units.MetresPerSecond) string {
	return fmt.Sprintf("%.1f ft/s (%.1f m/s)", v.FeetPerSecond(), float64(v))
}

// legSentences are the sentences for what the legs find.
var legSentences = map[finding.ID]func(told) string{
	finding.LateArrival: func(t told) string {
		s := t.say("%s is %s late, %s.", t.who(), t.time("late"), t.place())
		if t.hasNot("needs") {
			return s + " No speed is enough."
		}
		return s + t.say(" The plan needs a top speed of %s; here it is %s.", t.speed("needs"), t.speed("speed"))
	},
	finding.NotInPlace: func(t told) string {
		return t.say("%s still runs when the return bounces: %s to go, in place %s later.", t.who(), t.feet("short"), t.time("after"))
	},
	finding.NotSet: func(t told) string {
		return t.say("%s still runs when the third arrives: %s to go, set %s later.", t.who(), t.feet("short"), t.time("after"))
	},
	finding.OutOfReach: func(t told) string {
		return t.say("%s cannot reach the %s: it is %s beyond arm, paddle and lunge.", t.who(), t.ball(), t.feet("beyond"))
	},
	finding.CloseCrossing: closeCrossing,
	finding.CrossingOrder: func(t told) string {
		return t.say("%s goes in front where the paths cross, the play says %s.", t.name("front"), t.name("stated"))
	},
	finding.RunsBackward: func(t told) string {
		return t.say("%s goes %s backwards: turn and run, never backpedal.", t.who(), t.feet("distance"))
	},
	finding.NearObstacle: func(t told) string {
		return t.say("%s passes %s from an obstacle.", t.who(), t.feet("distance"))
	},
	finding.ShortOfLine: func(t told) string {
		if t.is("moving") {
			return t.say("At third contact %s is %s short of the kitchen line, moving: that is normal, slow down before the ball comes.", t.who(), t.feet("short"))
		}
		return t.say("At third contact %s is %s short of the kitchen line, balanced: that is normal.", t.who(), t.feet("short"))
	},
	finding.Lunge: func(t told) string {
		return t.say("%s lunges for the %s, %s away.", t.who(), t.ball(), t.feet("distance"))
	},
	finding.Backhand: func(t told) string { return t.say("%s takes the %s on the backhand.", t.who(), t.ball()) },
	finding.NoStack: func(t told) string {
		s := t.say("Do not stack on %s's return:", t.who())
		if t.hasNot("needs") {
			return s + " no return buys the time for that run."
		}
		return s + t.say(" it would have to rise to %s, and more than %s is too much to ask.", t.feet("needs"), t.feet("cap"))
	},
}

func closeCrossing(t told) string {
	front := value[game.Player](t, "front")
	s := t.say("%s and %s come within %s of one another", t.lesson.NameOf(front), t.lesson.NameOf(front.Partner()), t.feet("distance"))
	if t.is("level") {
		return s + ", neither in front: agree who goes in front."
	}
	return s + t.say(", %s in front: agree who goes in front.", t.lesson.NameOf(front))
}

// legSentence is the sentence for a finding of the legs; false for any other.
func legSentence(f finding.Finding, l lesson.Lesson) (string, bool) {
	say, ok := legSentences[f.ID]
	if !ok {
		return "", false
	}
	return say(told{f, l}), true
}

// Remedy says what a remedy does: "Return 8 ft 6 in high".
func Remedy(r advice.Remedy) string {
	switch r.How {
	case advice.HigherReturn:
		return "Return " + FeetInches(units.Feet(r.By)) + " high"
	case advice.DeeperReturn:
		return "Return to " + FeetInches(units.Feet(r.By)) + " inside the baseline"
	case advice.MoveLater:
		return "Be there " + Seconds(units.Seconds(r.By)) + " later"
	case advice.MoveEarlier:
		return "Be there " + Seconds(units.Seconds(r.By)) + " earlier"
	case advice.MoveNearer:
		return "Run " + FeetInches(units.Feet(r.By)) + " less"
	case advice.StateOrder:
		return "Take the order as run"
	}
	return ""
}
