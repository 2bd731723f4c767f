package words

import (
	"strconv"
	"strings"

	"homeside/model/court"
	"homeside/model/finding"
	"homeside/model/flight"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

// The words for the members of closed sets whose String is not for people.
var (
	teamWords    = [2]string{court.Near: Text("the near team"), court.Far: Text("the far team")}
	supportWords = [2]string{finding.Foot: Text("foot"), finding.RearWheel: Text("rear wheel")}
	formatWords  = [len(game.Formats)]string{
		game.SideOut:       Text("side-out scoring"),
		game.RallyParity:   Text("rally scoring by parity"),
		game.RallyOwnServe: Text("rally scoring with a swap on the own serve"),
		game.RallyFixed:    Text("rally scoring with fixed sides"),
	}
)

// shotWords are the shots that have a name.
var shotWords = [...]string{Text("serve"), Text("return"), Text("third"), Text("fourth"), Text("fifth")}

// Shot is the name of shot i, counted from 0: "serve", "shot6".
func Shot(i int) string {
	if i >= 0 && i < len(shotWords) {
		return Said(shotWords[i])
	}
	return T("shot%d", i+1)
}

// Format is a way of scoring: "side-out scoring".
func Format(f game.Format) string { return Said(formatWords[int(f)%len(game.Formats)]) }

// Team is a team by its name or its end: "the near team".
func Team(l lesson.Lesson, e court.End) string {
	if n := l.Team(e).Name; n != "" {
		return n
	}
	return Said(teamWords[e&1])
}

// End is a team by its end of the court: "the near team".
func End(e court.End) string { return Said(teamWords[e&1]) }

// lineOfWords are the painted lines of both ends by the names that court gives them.
var lineOfWords = [2]map[string]string{
	court.Near: {
		court.BaselineName: Text("near baseline"), court.KitchenName: Text("near kitchen line"), court.CentrelineName: Text("near centreline"),
		"right sideline": Text("near right sideline"), "left sideline": Text("near left sideline"),
	},
	court.Far: {
		court.BaselineName: Text("far baseline"), court.KitchenName: Text("far kitchen line"), court.CentrelineName: Text("far centreline"),
		"right sideline": Text("far right sideline"), "left sideline": Text("far left sideline"),
	},
}

// LineOf is a painted line of one end: "near baseline".
func LineOf(e court.End, line string) string { return Said(lineOfWords[e&1][line]) }

// AboutTeam is a text about the team of an end, which %s in it stands for.
func AboutTeam(text string, e court.End) string { return contracted(Said(text, End(e))) }

// OfShot is a text about shot i, which %s in it stands for: "change the top of the serve".
func OfShot(text string, i int) string { return contracted(Said(text, TheShot(i))) }

// Pace is a pace to choose by its name in movement.Presets.
func Pace(name string) string { return Said(name) }

// ruleSentence is the sentence for a finding of the rules; false for any other.
func ruleSentence(f finding.Finding, l lesson.Lesson) (string, bool) {
	w, ok := ruleSentences[f.ID]
	if !ok {
		return "", false
	}
	return filled(w, f, l), true
}

// filled is a sentence with what a finding tells, and its place as {where}.
func filled(sentence string, f finding.Finding, l lesson.Lesson) string {
	pairs := []string{"{player}", nameOf(l, f.Player), "{where}", Place(f.Player.Team(), f.Where)}
	for _, a := range f.Args {
		pairs = append(pairs, "{"+a.Name+"}", told(a.Value, l))
		if s, ok := a.Value.(finding.Shot); ok {
			pairs = append(pairs, "{the"+a.Name+"}", TheShot(int(s)))
		}
	}
	return capital(contracted(strings.NewReplacer(pairs...).Replace(Said(sentence))))
}

// told is a finding's argument in words; empty for a type that finding.Arg does not name.
func told(v any, l lesson.Lesson) string {
	switch v := v.(type) {
	case game.Player:
		return nameOf(l, v)
	case court.End:
		return Team(l, v)
	case court.Side:
		return Name(v)
	case finding.Support:
		return Said(supportWords[v&1])
	case game.Format:
		return Format(v)
	case finding.Shot:
		return Shot(int(v))
	case flight.Reason:
		return Name(v)
	default:
		return figure(v)
	}
}

// figure is an argument that is said the same in every language.
func figure(v any) string {
	switch v := v.(type) {
	case units.Feet:
		return Length(v)
	case units.Seconds:
		return Seconds(v)
	case units.MetresPerSecond:
		return Speed(v)
	case game.Call:
		return v.String()
	case int:
		return strconv.Itoa(v)
	case string:
		return v
	}
	return ""
}
