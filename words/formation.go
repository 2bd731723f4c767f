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
		said = append(said, T("%s: say so before the serve.", Order(w.Situation.Lesson, front)))
	}
	if tell != nil {
		said = append(said, T("The formation %s.", Sign(tell.Place)))
	}
	return strings.Join(said, " ")
}

// FormationAnswer says whether the pair is in time.
func FormationAnswer(w formation.Written) string {
	switch w.Answer.Verdict {
	case formation.Raised:
		return T("In time with a %s %s high. %s", ownShot(w), Length(w.Answer.Apex), timeLeft(w))
	case formation.TooLate:
		return timeLeft(w) + " " + notWithTheseLegs(w)
	}
	return T("In time. %s", timeLeft(w))
}

func ownShot(w formation.Written) string { return Shot(w.Answer.Shot) }

// notWithTheseLegs is the honest advice.
func notWithTheseLegs(w formation.Written) string {
	switch {
	case w.Kind == lesson.Poached:
		return T("Do not poach with these legs.")
	case w.Answer.Needed == 0:
		return T("No %s buys that time: do not %s here.", ownShot(w), Name(w.Kind))
	}
	return T("%s would have to rise to %s, more than %s is too much to ask: do not %s here.",
		capital(TheShot(w.Answer.Shot)), Length(w.Answer.Needed), Length(formation.MostApex), Name(w.Kind))
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
			said = append(said, T("%s is %s late", name, Seconds(-m)))
		} else {
			said = append(said, T("%s has %s to spare", name, Seconds(m)))
		}
	}
	if len(said) == 0 {
		return T("Nobody has to run.")
	}
	return strings.Join(said, ", ") + "."
}

// Order is who goes in front: "Mara in front".
func Order(l lesson.Lesson, front game.Player) string { return T("%s in front", l.NameOf(front)) }

// Sign says when something shows, for opponents: "shows 0.31 s before they hit:
// seen, too late to use".
func Sign(s formation.Sign) string {
	switch s.Use {
	case formation.ShowsAtServe:
		return T("shows before the serve")
	case formation.InTimeToUse:
		return T("shows %s before they hit: early enough to aim elsewhere", Seconds(s.Before))
	case formation.TooLateToUse:
		return T("shows %s before they hit: seen, too late to use", Seconds(s.Before))
	case formation.AfterTheyHit:
		return T("shows %s after they hit: too late to see", Seconds(max(-s.Before, units.Seconds(0))))
	}
	return T("never shows")
}
