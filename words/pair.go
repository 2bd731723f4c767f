package words

import (
	"homeside/model/court"
	"homeside/model/lesson"
	"homeside/model/roster"
	"homeside/model/units"
)

// Pair is a pair of a roster in one line.
func Pair(p roster.Pair) string {
	names := pairNames(p)
	if p.Name == "" {
		return names
	}
	return p.Name + ": " + names
}

func pairNames(p roster.Pair) string {
	return T("%s and %s", nameOr(p.Players[0], T("first")), nameOr(p.Players[1], T("second")))
}

func nameOr(p lesson.Player, otherwise string) string {
	if p.Name == "" {
		return otherwise
	}
	return p.Name
}

// PairName is what a pair without a name is kept as.
func PairName(p roster.Pair) string { return clipped(pairNames(p), lesson.MaxName) }

func clipped(s string, most int) string {
	r := []rune(s)
	return string(r[:min(len(r), most)])
}

// PairPlayer is what a roster knows of a player.
func PairPlayer(p lesson.Player) string {
	chair := ""
	if p.Wheelchair {
		chair = T(", plays in a wheelchair")
	}
	return T("%s: %s%s; on the serve %s, on the return %s; %s from standing in about %s.",
		nameOr(p, T("No name")), Hands()[p.Hand&1], chair, Wants()[p.Serving%3], Wants()[p.Receiving%3], Length(10), Seconds(p.Legs().Through(units.Feet(10).Metres())))
}

// PairPut says that a pair is a team of the lesson now.
func PairPut(p roster.Pair, e court.End) string {
	return T("%s is %s now.", capital(nameOr(lesson.Player{Name: p.Name}, pairNames(p))), Said(teamWords[e&1]))
}
