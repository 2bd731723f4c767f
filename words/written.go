package words

import (
	"fmt"
	"slices"

	"homeside/model/formation"
	"homeside/model/game"
	"homeside/model/lesson"
)

// What the program writes into a lesson is written in the language spoken then; a
// lesson keeps it so.

// Entitled is a written play with its title and its answers in words.
func Entitled(w formation.Written) formation.Written {
	does := T("%v: %s, %s receives from the %s")
	if w.Situation.Serves() {
		does = T("%v: %s, %s serves from the %s")
	}
	state := w.Situation.State
	w.Play = answered(w.Play)
	w.Play.Title = fmt.Sprintf(does, state.Call(), Name(w.Kind), w.Situation.Lesson.NameOf(w.Situation.Lead()), Name(state.From()))
	return w
}

// EntitledSibling is what is played otherwise than in a play that has a title.
func EntitledSibling(of formation.Written, s formation.Sibling) lesson.Play {
	p := answered(s.Play)
	p.Title = of.Play.Title + ": " + Name(s.Change)
	return p
}

// EntitledPair is a mistake and its mend, of a play that has a title.
func EntitledPair(of formation.Written, m formation.Pair) []lesson.Play {
	was, should := answered(m.Was), answered(m.Should)
	was.Title = T("%s, as it was: %s", of.Play.Title, Name(m.Mistake))
	should.Title = T("%s, as it should be", of.Play.Title)
	return []lesson.Play{was, should}
}

// CarriedTitle is the title of a play that is carried to another score.
func CarriedTitle(l lesson.Lesson, s game.State) string {
	return T("%v: %s serves from the %s", s.Call(), l.NameOf(s.Server()), Name(s.From()))
}

// answered is a play whose signals are answered in words.
func answered(p lesson.Play) lesson.Play {
	p.Cues = slices.Clone(p.Cues)
	for i, c := range p.Cues {
		if c.Kind == lesson.Signal && c.Text != "" {
			p.Cues[i].Text = T("yes")
		}
	}
	return p
}
