package words

import (
	"fmt"
	"slices"
	"strings"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
)

// Situation is the score strip's sentence: the call, who serves and from where,
// who started, who must receive, the sides the pairs want. What nobody has said
// is left out.
func Situation(l lesson.Lesson, p lesson.Play) string {
	server, ok := p.Server()
	if !ok {
		return T("Nobody serves yet.")
	}
	said := []string{serves(l, p, server), receives(l, p), started(l, p.Situation.Serving), wants(l, server.Team()), NoSwaps(l.Scoring.Format)}
	return strings.Join(slices.DeleteFunc(said, func(s string) bool { return s == "" }), " ")
}

// serves names the server and the side that the score gives or, where it leaves
// that open, the side the server stands on in the play.
func serves(l lesson.Lesson, p lesson.Play, server game.Player) string {
	from := court.SideOf(server.Team(), p.AtServe(server).Place)
	if states, err := l.QueryOf(p).Who(); err == nil && len(states) == 1 && states[0].Server() == server {
		from = states[0].From()
	}
	s := T("%s serves from the %v.", nameOf(l, server), Name(from))
	if CallSaid(l, p) {
		return p.Situation.Call.String() + ": " + s
	}
	return s
}

// CallSaid says whether the play's score has been said. In rally scoring 0-0 is
// both a call and what stands there before anybody says one.
func CallSaid(l lesson.Lesson, p lesson.Play) bool {
	return p.Situation.Call != (game.Call{}) || l.Scoring.Format.Rally()
}

// receives names who must receive, both where it depends on what nobody has said.
func receives(l lesson.Lesson, p lesson.Play) string {
	states, err := l.QueryOf(p).Who()
	if err != nil {
		return ""
	}
	var names []string
	for _, s := range states {
		if n := nameOf(l, s.Receiver()); !slices.Contains(names, n) {
			names = append(names, n)
		}
	}
	if len(names) == 0 {
		return ""
	}
	return T("%s must receive.", strings.Join(names, T(" or ")))
}

// started names the starting servers that have been said, the serving team's first.
func started(l lesson.Lesson, serving court.End) string {
	var said []string
	for _, e := range []court.End{serving, serving.Other()} {
		if l.Team(e).Starter != 0 {
			said = append(said, T("%s for %s", nameOf(l, l.Team(e).StarterOf(e)), Team(l, e)))
		}
	}
	if len(said) == 0 {
		return ""
	}
	return T("Started: %s.", strings.Join(said, ", "))
}

// wants says which sides are wanted after this serve.
func wants(l lesson.Lesson, serving court.End) string {
	var said []string
	for _, id := range game.Players {
		want := l.Player(id).Receiving
		if id.Team() == serving {
			want = l.Player(id).Serving
		}
		if want != lesson.Either {
			said = append(said, fmt.Sprintf("%s %s", nameOf(l, id), Name(want)))
		}
	}
	if len(said) == 0 {
		return ""
	}
	return T("Wanted sides: %s.", strings.Join(said, ", "))
}

// NoSwaps says of a format in which nobody swaps that stacking has no purpose in it.
func NoSwaps(f game.Format) string {
	if f.SwapsSides() {
		return ""
	}
	return T("Nobody swaps sides in this format, so stacking has no purpose.")
}
