package words

import (
	"homeside/model/court"
	"homeside/model/drill"
	"homeside/model/game"
	"homeside/model/lesson"
)

// SignName is what a hand shows, as partners say it.
func SignName(s drill.Sign) string {
	switch s {
	case drill.Fist:
		return T("Closed fist")
	case drill.OpenHand:
		return T("Open hand")
	case drill.TwoFingers:
		return T("Two fingers")
	default:
		return T("Hidden sign")
	}
}

// MeaningName is what a signal asks for.
func MeaningName(m lesson.Meaning) string {
	switch m {
	case lesson.Switch:
		return T("Switch")
	case lesson.Fake:
		return T("Fake")
	default:
		return T("Stay")
	}
}

// PairOf is a pair with its players: "Harbour Lane: Ines and Tobin".
func PairOf(l lesson.Lesson, e court.End) string {
	return capital(Team(l, e)) + ": " + T("%s and %s", l.NameOf(game.PlayerOf(e, 1)), l.NameOf(game.PlayerOf(e, 2)))
}

// SignMeans is what a sign means: "Open hand: switch".
func SignMeans(a drill.SignalAsk) string {
	if a.Sign == drill.Unclear {
		return T("Nobody could read it: unsure means stay.")
	}
	return T("%s means: %s.", SignName(a.Sign), MeaningName(a.Meaning))
}

// SignalDoes is what a pair does after a signal.
func SignalDoes(m lesson.Meaning, serves bool) string {
	switch m {
	case lesson.Switch:
		return KindDoes(lesson.Switched, serves)
	case lesson.Fake:
		return T("The partner starts as if to switch, and both stay.")
	default:
		return T("Nobody changes sides.")
	}
}

// DrillCount counts the answers of a drill.
func DrillCount(s drill.Streak) string {
	return T("In a row: %d · Best: %d · Right: %d of %d", s.Run, s.Best, s.Right, s.Asked)
}

// DrillScoring is what a score drill takes from the lesson: the scoring and who
// started.
func DrillScoring(l lesson.Lesson) string {
	set := l.Settings()
	said := T("%s to %d, as the lesson says.", capital(Format(set.Format)), set.Points())
	if s, err := set.Start(); err == nil {
		said += " " + drillStarters(l, s)
	}
	if none := NoSwaps(set.Format); none != "" {
		said += " " + none
	}
	for _, id := range game.Players {
		if l.Player(id).Name == "" {
			return said + " " + T("Players without a name are called near1, near2, far1 and far2: name them in the lesson.")
		}
	}
	return said
}

func drillStarters(l lesson.Lesson, s game.State) string {
	of := func(e court.End) string { return T("%s for %s", l.NameOf(s.Starter(e)), Team(l, e)) }
	return T("Started: %s.", of(court.Near)+", "+of(court.Far))
}

// DrillPairs are both pairs and who started for each.
func DrillPairs(l lesson.Lesson, s game.State) string {
	return PairOf(l, court.Near) + " · " + PairOf(l, court.Far) + " · " + drillStarters(l, s)
}

// ScoreLed says how the rally before led to a serve that is asked about, and
// where the score does not tell places, who stood on the right before it.
func ScoreLed(l lesson.Lesson, a drill.ScoreAsk) string {
	before, team := l.NameOf(a.Before.Server()), Team(l, a.State.Serving())
	switch a.Led() {
	case drill.Began:
		return T("The game begins: %s serves first.", team)
	case drill.Partner:
		return T("%s, the first server, has lost the rally.", before)
	}
	said := T("%s served and won the rally.", before)
	if a.Led() == drill.Over {
		said = T("Side out: %s served and lost the rally.", before)
	}
	if a.State.Format() == game.RallyOwnServe {
		said += " " + T("%s and %s stood on the right.", l.NameOf(a.Before.On(court.Near, court.Right)), l.NameOf(a.Before.On(court.Far, court.Right)))
	}
	return said
}

// ScoreServerWhy says why it is this player's serve.
func ScoreServerWhy(l lesson.Lesson, a drill.ScoreAsk) string {
	server, from := l.NameOf(a.State.Server()), Name(a.State.From())
	byParity := a.State.Format() == game.RallyFixed || a.State.Format() == game.RallyOwnServe && a.Led() == drill.Over
	switch {
	case a.Led() == drill.Began:
		return T("The game begins with the starting server, %s, from the %v.", server, from)
	case byParity:
		return T("An even score is served from the right and an odd one from the left: now from the %v, by %s.", from, server)
	case a.Led() == drill.Partner:
		return T("The first server lost the rally: now the partner serves, %s, from the %v.", server, from)
	case a.Led() == drill.Over:
		return T("After a side out the player on the right serves first: %s.", server)
	}
	return T("The server of a team that wins the rally serves again: %s, now from the %v.", server, from)
}

// ScorePlacesWhy says why the pair stands as it does.
func ScorePlacesWhy(l lesson.Lesson, a drill.ScoreAsk) string {
	points, starter := a.State.Score()[a.Team], a.State.Starter(a.Team)
	team, who := capital(Team(l, a.Team)), l.NameOf(starter)
	switch f := a.State.Format(); {
	case f == game.RallyFixed:
		return T("Nobody changes sides in this scoring: %s, who started, stays on the right.", who)
	case f == game.RallyOwnServe:
		return T("Partners change sides only when they win a rally on their own serve: now %s is on the right.", l.NameOf(a.Answer().Right))
	case points%2 == 0:
		return T("%s has %d, an even score: %s, who started, is on the right.", team, points, who)
	}
	return T("%s has %d, an odd score: %s, who started, is on the left, so %s is on the right.", team, points, who, l.NameOf(starter.Partner()))
}
