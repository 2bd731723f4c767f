package words

import (
	"errors"
	"fmt"
	"strings"

	"homeside/model/formation"
	"homeside/model/game"
	"homeside/model/lesson"
)

// kindWords are a kind's name and what the pair does, on the serve and on the return.
var kindWords = map[formation.Kind][2][2]string{
	lesson.Ordinary: {
		{Text("Ordinary places"), Text("Both stay on the sides that the score gives.")},
		{Text("Ordinary places"), Text("Both stay on the sides that the score gives.")},
	},
	lesson.Stacked: {
		{Text("Stack"), Text("Partners on one side; the server crosses after the serve.")},
		{Text("Stack"), Text("The partner waits off court and slides in behind the return.")},
	},
	lesson.Switched: {
		{Text("Switch"), Text("Ordinary look; after the serve the partners change sides.")},
		{Text("Switch"), Text("Ordinary look; the partners change sides behind the return.")},
	},
	lesson.Stayed: {
		{Text("Stay"), Text("The look of a switch, and nobody moves.")},
		{Text("Stay"), Text("The look of a switch, and nobody moves.")},
	},
	lesson.Poached: {
		{Text("Poach"), Text("After a driven third the server's partner takes the fourth.")},
		{Text("Poach"), Text("The receiver's partner leaves early and volleys the third.")},
	},
}

// KindTitle is a kind of formation as the head of its drawing.
func KindTitle(k formation.Kind) string { return Said(kindWords[k][0][0]) }

// KindDoes says in a line what a pair does in a kind of formation.
func KindDoes(k formation.Kind, serves bool) string {
	if serves {
		return Said(kindWords[k][0][1])
	}
	return Said(kindWords[k][1][1])
}

// ServesTo are the words for where a serve goes, by formation.ServeTo.
func ServesTo() []string {
	return []string{T("to the middle of the court"), T("wide, near the sideline"), T("down the centreline")}
}

// PairAt says which pair serves or receives: "Harbour Lane: Ivo serves".
func PairAt(s formation.Situation) string {
	return fmt.Sprintf("%s: %s %s", capital(Team(s.Lesson, s.Team)), s.Lesson.NameOf(s.Lead()), serveOrReceive(s.Serves()))
}

// FormationRefused is why a formation cannot be written, with the lesson's names.
func FormationRefused(err error, l lesson.Lesson) string {
	var r formation.Refusal
	if errors.As(err, &r) {
		return Sentence(errors.New(Said(r.Text, refusalArgs(r, l)...)))
	}
	pairs := make([]string, 0, 2*len(game.Players))
	for _, id := range game.Players {
		pairs = append(pairs, id.String(), l.NameOf(id))
	}
	return Sentence(errors.New(strings.NewReplacer(pairs...).Replace(err.Error())))
}

// refusalArgs are what a refusal tells, in words.
func refusalArgs(r formation.Refusal, l lesson.Lesson) []any {
	args := make([]any, len(r.Args))
	for i, a := range r.Args {
		switch v := a.(type) {
		case game.Player:
			args[i] = l.NameOf(v)
		case fmt.Stringer:
			args[i] = Name(v)
		default:
			args[i] = a
		}
	}
	return args
}

// Changed says what a sibling plays otherwise and who takes the ball.
func Changed(s formation.Sibling) (title, takes string) {
	return capital(Name(s.Change)), T("%s takes it.", s.Situation.Lesson.NameOf(s.Takes))
}

// MistakeTitle heads a usual mistake.
func MistakeTitle(m formation.Mistake) string { return capital(Name(m)) }

// AsItWas says what a mistake inserts.
func AsItWas() string {
	return T("Two plays come in: as it was and, behind it, as it should be. Compare them to see both on one clock.")
}

// NotWritten says why there is nothing to vary in a play.
func NotWritten() string {
	return T("Only for plays as New play from the score writes them (Ctrl+Shift+N).")
}

// TellSentence says what two plays give away: the pair's name, who shows it by
// the place and by the facing, and what it is worth to the opponents. The plays
// are counted from 0.
func TellSentence(l lesson.Lesson, t formation.Tell, shown, other int) string {
	beside := T("Beside play %d", other+1)
	if l.Plays[shown].Situation != l.Plays[other].Situation {
		beside = T("%s, at another score", beside)
	}
	if !t.Place.Shows && !t.Facing.Shows {
		return T("%s: the two plays look alike to the end.", beside)
	}
	var said []string
	if t.Place.Shows {
		said = append(said, T("%s's place %s", l.NameOf(t.Place.Who), Sign(t.Place)))
	}
	if t.Facing.Shows {
		said = append(said, T("%s's facing %s", l.NameOf(t.Facing.Who), Sign(t.Facing)))
	}
	return beside + ": " + strings.Join(said, "; ") + "."
}

// OpponentsNeed asks how long opponents take to react and swing at another place.
func OpponentsNeed() string { return T("They react and swing in") }

// PlaceShows is the word for a sign on the rally strip.
func PlaceShows() string { return T("place shows") }

// FacingShows is the word for a sign on the rally strip.
func FacingShows() string { return T("facing shows") }
