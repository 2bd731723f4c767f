package words

import (
	"fmt"
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
		return fmt.Sprintf("Who served first for %s in this game?", l.NameOfTeam(q.Team))
	case game.AskBegan:
		return "Which team served first in this game?"
	default:
		return "Who served in this turn's last rally?"
	}
}

// Won is the button of a team that has won the rally.
func Won(l lesson.Lesson, e court.End) string { return capital(l.NameOfTeam(e)) + " won the rally" }

// MatchState is a state of a match in the walk's list.
func MatchState(l lesson.Lesson, s game.State) string {
	if s.Over() {
		return GameOver(l, s)
	}
	return fmt.Sprintf("%v  %s, %v, to %s", s.Call(), l.NameOf(s.Server()), s.From(), l.NameOf(s.Receiver()))
}

// GameOver says who has won a game and how; nothing while it goes on.
func GameOver(l lesson.Lesson, s game.State) string {
	winner, over := s.Winner()
	if !over {
		return ""
	}
	score := s.Score()
	return fmt.Sprintf("%s won %d-%d.", capital(l.NameOfTeam(winner)), score[winner], score[winner.Other()])
}

// EndsChange says that the teams change ends before the next serve.
const EndsChange = "The teams change ends now."

var formationWords = map[lesson.Formation]string{
	lesson.FormationUnsaid: "not noted", lesson.Ordinary: "ordinary places", lesson.Stacked: "stacked",
	lesson.Switched: "switched", lesson.Stayed: "stayed", lesson.Poached: "poached",
}

// Formation is what a pair did in a rally.
func Formation(f lesson.Formation) string { return formationWords[f] }

var returnWords = map[lesson.ReturnTo]string{
	lesson.ReturnUnsaid: "not noted", lesson.ToMover: "to the one who moves", lesson.ToMiddle: "to the middle",
	lesson.DownLine: "down the line", lesson.Short: "short",
}

// ReturnTo is where a return went.
func ReturnTo(r lesson.ReturnTo) string { return returnWords[r] }

// Counts says how a team's rallies went by what the pair did; nothing where
// nothing has been noted.
func Counts(l lesson.Lesson, e court.End) string {
	var said []string
	for i, c := range l.Match.ByFormation(e) {
		if f := lesson.Formation(i); f != lesson.FormationUnsaid && c.Rallies > 0 {
			said = append(said, fmt.Sprintf("%s %d, won %d", Formation(f), c.Rallies, c.Won))
		}
	}
	if len(said) == 0 {
		return ""
	}
	return capital(l.NameOfTeam(e)) + ": " + strings.Join(said, "; ") + "."
}

func capital(s string) string {
	first, size := utf8.DecodeRuneInString(s)
	return string(unicode.ToUpper(first)) + s[size:]
}
