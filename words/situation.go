package words

import (
	"fmt"
	"strings"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
)

// Situation is the score strip's sentence: the call, who serves and from where,
// who started, what the serving pair wants.
func Situation(l lesson.Lesson, p lesson.Play) string {
	server, ok := p.Server()
	if !ok {
		return "Nobody serves yet."
	}
	team := p.Situation.Serving
	parts := []string{
		fmt.Sprintf("%s: %s serves from the %s.", p.Situation.Call, l.Player(server).Name, servedFrom(p, server)),
		fmt.Sprintf("%s started for %s.", l.Player(l.Team(team).StarterOf(team)).Name, teamName(l, team)),
	}
	if w := wants(l, team); w != "" {
		parts = append(parts, w)
	}
	return strings.Join(parts, " ")
}

// servedFrom is the side the server stands on in the play.
func servedFrom(p lesson.Play, server game.Player) court.Side {
	return court.SideOf(server.Team(), p.Tracks[server][0].Place)
}

func teamName(l lesson.Lesson, e court.End) string {
	if n := l.Team(e).Name; n != "" {
		return n
	}
	return "the " + e.String() + " team"
}

// wants says which sides the partners of a team want after their serve.
func wants(l lesson.Lesson, e court.End) string {
	var said []string
	for _, who := range l.Team(e).Players {
		if who.Serving != lesson.Either {
			said = append(said, fmt.Sprintf("%s wants the %s", who.Name, who.Serving))
		}
	}
	if len(said) == 0 {
		return ""
	}
	return strings.Join(said, ", ") + "."
}
