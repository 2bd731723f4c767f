package words

import (
	"strings"

	"homeside/model/formation"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

// FormationNotes is what a written formation comes to, in sentences: whether the
// pair is in time and what it would take, who goes in front, what it gives away.
func FormationNotes(w formation.Written, tell *formation.Tell) string {
	said := []string{FormationAnswer(w)}
	if front, ok := w.Order(); ok {
		said = append(said, Order(w.Situation.Lesson, front)+": say so before the serve.")
	}
	if tell != nil {
		said = append(said, "The formation "+Sign(tell.Place)+".")
	}
	return strings.Join(said, " ")
}

// FormationAnswer says whether the pair is in time.
func FormationAnswer(w formation.Written) string {
	switch w.Answer.Verdict {
	case formation.Raised:
		return "In time with a " + ownShot(w) + " " + Length(w.Answer.Apex) + " high. " + timeLeft(w)
	case formation.TooLate:
		return timeLeft(w) + " " + notWithTheseLegs(w)
	}
	return "In time. " + timeLeft(w)
}

func ownShot(w formation.Written) string { return lesson.ShotName(w.Answer.Shot) }

// notWithTheseLegs is the honest advice.
func notWithTheseLegs(w formation.Written) string {
	switch {
	case w.Kind == lesson.Poached:
		return "Do not poach with these legs."
	case w.Answer.Needed == 0:
		return "No " + ownShot(w) + " buys that time: do not " + w.Kind.String() + " here."
	}
	return "The " + ownShot(w) + " would have to rise to " + Length(w.Answer.Needed) + ", more than " +
		Length(formation.MostApex) + " is too much to ask: do not " + w.Kind.String() + " here."
}

// timeLeft is what each of the pair has to spare: "Ivo has 0.25 s to spare, Mara is 0.10 s late."
func timeLeft(w formation.Written) string {
	var said []string
	for n := range 2 {
		id := game.PlayerOf(w.Situation.Team, n+1)
		m, ok := w.Margins[id]
		if !ok {
			continue
		}
		name := w.Situation.Lesson.NameOf(id)
		if m < 0 {
			said = append(said, name+" is "+Seconds(-m)+" late")
		} else {
			said = append(said, name+" has "+Seconds(m)+" to spare")
		}
	}
	if len(said) == 0 {
		return "Nobody has to run."
	}
	return strings.Join(said, ", ") + "."
}

// Order is who goes in front: "Mara in front".
func Order(l lesson.Lesson, front game.Player) string { return l.NameOf(front) + " in front" }

// Sign says when something shows, for opponents: "shows 0.31 s before they hit:
// seen, too late to use".
func Sign(s formation.Sign) string {
	switch s.Use {
	case formation.ShowsAtServe:
		return "shows before the serve"
	case formation.InTimeToUse:
		return "shows " + Seconds(s.Before) + " before they hit: early enough to aim elsewhere"
	case formation.TooLateToUse:
		return "shows " + Seconds(s.Before) + " before they hit: seen, too late to use"
	case formation.AfterTheyHit:
		return "shows " + Seconds(max(-s.Before, units.Seconds(0))) + " after they hit: too late to see"
	}
	return "never shows"
}
