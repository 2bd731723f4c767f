package words

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
)

// Sentence makes a line of an error: a capital first and a full stop.
func Sentence(err error) string {
	s := err.Error()
	first, size := utf8.DecodeRuneInString(s)
	return strings.TrimRight(string(unicode.ToUpper(first))+s[size:], ".") + "."
}

// Question is what the score strip asks.
func Question(l lesson.Lesson, q game.Question) string {
	switch q.Kind {
	case game.AskStarter:
		return T("Who served first for %s in this game?", Team(l, q.Team))
	case game.AskBegan:
		return T("Which team served first in this game?")
	default:
		return T("Who served in this turn's last rally?")
	}
}

// Won is the button of a team that has won the rally.
func Won(l lesson.Lesson, e court.End) string { return capital(T("%s won the rally", Team(l, e))) }

// MatchState is a state of a match in the walk's list.
func MatchState(l lesson.Lesson, s game.State) string {
	if s.Over() {
		return GameOver(l, s)
	}
	return T("%v  %s, %v, to %s", s.Call(), l.NameOf(s.Server()), Name(s.From()), l.NameOf(s.Receiver()))
}

// GameOver says who has won a game and how; nothing while it goes on.
func GameOver(l lesson.Lesson, s game.State) string {
	winner, over := s.Winner()
	if !over {
		return ""
	}
	score := s.Score()
	return T("%s won %d-%d.", capital(Team(l, winner)), score[winner], score[winner.Other()])
}

// EndsChange says that the teams change ends before the next serve.
func EndsChange() string { return T("The teams change ends now.") }

var formationWords = map[lesson.Formation]string{
	lesson.FormationUnsaid: Text("not noted"), lesson.Ordinary: Text("ordinary places"), lesson.Stacked: Text("stacked"),
	lesson.Switched: Text("switched"), lesson.Stayed: Text("stayed"), lesson.Poached: Text("poached"),
}

// Formation is what a pair did in a rally.
func Formation(f lesson.Formation) string { return Said(formationWords[f]) }

var returnWords = map[lesson.ReturnTo]string{
	lesson.ReturnUnsaid: Text("not noted"), lesson.ToMover: Text("to the one who moves"), lesson.ToMiddle: Text("to the middle"),
	lesson.DownLine: Text("down the line"), lesson.Short: Text("short"),
}

// ReturnTo is where a return went.
func ReturnTo(r lesson.ReturnTo) string { return Said(returnWords[r]) }

// Counts says how a team's rallies went by what the pair did; nothing where
// nothing has been noted.
func Counts(l lesson.Lesson, e court.End) string {
	var said []string
	for i, c := range l.Match.ByFormation(e) {
		if f := lesson.Formation(i); f != lesson.FormationUnsaid && c.Rallies > 0 {
			said = append(said, T("%s %d, won %d", Formation(f), c.Rallies, c.Won))
		}
	}
	if len(said) == 0 {
		return ""
	}
	return capital(Team(l, e)) + ": " + strings.Join(said, "; ") + "."
}

// Capital begins a text with a capital letter.
func Capital(s string) string { return capital(s) }

func capital(s string) string {
	first, size := utf8.DecodeRuneInString(s)
	return string(unicode.ToUpper(first)) + s[size:]
}
