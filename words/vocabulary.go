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

// The words for the members of closed sets, by language.
var (
	sideWords    = [languages][2]string{English: {court.Right: "right", court.Left: "left"}}
	teamWords    = [languages][2]string{English: {court.Near: "the near team", court.Far: "the far team"}}
	supportWords = [languages][2]string{English: {finding.Foot: "foot", finding.RearWheel: "rear wheel"}}
	formatWords  = [languages][len(game.Formats)]string{English: {
		game.SideOut:       "side-out scoring",
		game.RallyParity:   "rally scoring by parity",
		game.RallyOwnServe: "rally scoring with a swap on the own serve",
		game.RallyFixed:    "rally scoring with fixed sides",
	}}
	shotWords = [languages]func(i int) string{English: lesson.ShotName}
)

// reasonWords is why a shot cannot be hit.
var reasonWords = [languages]func(flight.Reason) string{English: flight.Reason.String}

// ruleSentence is the sentence for a finding of the rules; false for any other.
func ruleSentence(f finding.Finding, l lesson.Lesson, in Language) (string, bool) {
	w, ok := ruleSentences[f.ID]
	if !ok || in >= languages {
		return "", false
	}
	pairs := []string{"{player}", l.NameOf(f.Player)}
	for _, a := range f.Args {
		pairs = append(pairs, "{"+a.Name+"}", said(a.Value, l, in))
	}
	return capital(strings.NewReplacer(pairs...).Replace(w[in])), true
}

// said is a finding's argument in words; empty for a type that finding.Arg does not name.
func said(v any, l lesson.Lesson, in Language) string {
	switch v := v.(type) {
	case game.Player:
		return l.NameOf(v)
	case court.End:
		if n := l.Team(v).Name; n != "" {
			return n
		}
		return teamWords[in][v&1]
	case court.Side:
		return sideWords[in][v&1]
	case finding.Support:
		return supportWords[in][v&1]
	case game.Format:
		return formatWords[in][int(v)%len(game.Formats)]
	case finding.Shot:
		return shotWords[in](int(v))
	case flight.Reason:
		return reasonWords[in](v)
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
