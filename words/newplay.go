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
		{"Ordinary places", "Both stay on the sides that the score gives."},
		{"Ordinary places", "Both stay on the sides that the score gives."},
	},
	lesson.Stacked: {
		{"Stack", "Partners on one side; the server crosses after the serve."},
		{"Stack", "The partner waits off court and slides in behind the return."},
	},
	lesson.Switched: {
		{"Switch", "Ordinary look; after the serve the partners change sides."},
		{"Switch", "Ordinary look; the partners change sides behind the return."},
	},
	lesson.Stayed: {
		{"Stay", "The look of a switch, and nobody moves."},
		{"Stay", "The look of a switch, and nobody moves."},
	},
	lesson.Poached: {
		{"Poach", "After a driven third the server's partner takes the fourth."},
		{"Poach", "The receiver's partner leaves early and volleys the third."},
	},
}

// KindTitle is a kind of formation as the head of its drawing.
func KindTitle(k formation.Kind) string { return kindWords[k][0][0] }

// KindDoes says in a line what a pair does in a kind of formation.
func KindDoes(k formation.Kind, serves bool) string {
	if serves {
		return kindWords[k][0][1]
	}
	return kindWords[k][1][1]
}

// ServesTo are the words for where a serve goes, by formation.ServeTo.
func ServesTo() []string {
	return []string{"to the middle of the court", "wide, near the sideline", "down the centreline"}
}

// PairAt says which pair serves or receives: "Harbour Lane: Ivo serves".
func PairAt(s formation.Situation) string {
	verb := "receives"
	if s.Serves() {
		verb = "serves"
	}
	return fmt.Sprintf("%s: %s %s", capital(s.Lesson.NameOfTeam(s.Team)), s.Lesson.NameOf(s.Lead()), verb)
}

// FormationRefused is why a formation cannot be written, with the lesson's names.
func FormationRefused(err error, l lesson.Lesson) string {
	pairs := make([]string, 0, 2*len(game.Players))
	for _, id := range game.Players {
		pairs = append(pairs, id.String(), l.NameOf(id))
	}
	return Sentence(errors.New(strings.NewReplacer(pairs...).Replace(err.Error())))
}

// Changed says what a sibling plays otherwise and who takes the ball.
func Changed(s formation.Sibling) (title, takes string) {
	return capital(s.Change.String()), s.Situation.Lesson.NameOf(s.Takes) + " takes it."
}

// MistakeTitle heads a usual mistake.
func MistakeTitle(m formation.Mistake) string { return capital(m.String()) }

// AsItWas says what a mistake inserts.
const AsItWas = "Two plays come in: as it was and, behind it, as it should be. Compare them to see both on one clock."

// NotWritten says why there is nothing to vary in a play.
const NotWritten = "This play is not as the program writes one at this score: write it first with New play from the score."

// TellSentence says what two plays give away: the pair's name, who shows it by
// the place and by the facing, and what it is worth to the opponents. The plays
// are counted from 0.
func TellSentence(l lesson.Lesson, t formation.Tell, shown, other int) string {
	beside := fmt.Sprintf("Beside play %d", other+1)
	if l.Plays[shown].Situation != l.Plays[other].Situation {
		beside += ", at another score"
	}
	if !t.Place.Shows && !t.Facing.Shows {
		return beside + ": the two plays look alike to the end."
	}
	var said []string
	if t.Place.Shows {
		said = append(said, fmt.Sprintf("%s's place %s", l.NameOf(t.Place.Who), Sign(t.Place)))
	}
	if t.Facing.Shows {
		said = append(said, fmt.Sprintf("%s's facing %s", l.NameOf(t.Facing.Who), Sign(t.Facing)))
	}
	return beside + ": " + strings.Join(said, "; ") + "."
}

// OpponentsNeed asks how long opponents take to react and swing at another place.
const OpponentsNeed = "They react and swing in"

// The words for signs on the rally strip.
const (
	PlaceShows  = "place shows"
	FacingShows = "facing shows"
)
