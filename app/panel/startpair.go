package panel

import (
	"reflect"

	"homeside/app/session"
	"homeside/model/formation"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/words"
)

// write draws the play of a pair.
func (p *Start) write(s session.PairStart) error {
	l, w, err := session.FirstLesson(s)
	if err != nil {
		return err
	}
	p.lesson, p.written = l, w
	p.small.Image = smallCourt(w.Rally, l.Venue.Surface(), firstSize, firstPoint, 0)
	p.small.Refresh()
	p.said.SetText(words.Situation(l, w.Play) + "\n\n" + words.FormationNotes(w, nil))
	return nil
}

// Pair is a lesson of the pair that is described, without plays, and the state of the
// game that the form says; false while what is said makes no sense.
func (p *Start) Pair() (lesson.Lesson, game.State, bool) {
	l := p.lesson
	ok := len(l.Plays) > 0
	l.Plays = nil
	return l, p.written.Situation.State, ok
}

// Ordinary is a lesson of the pair that is described with one play from ordinary
// places at its score; false while the form says nothing, or what makes no sense.
func (p *Start) Ordinary() (lesson.Lesson, bool) {
	s, err := p.form.Start()
	l, _, ok := p.Pair()
	if err != nil || !ok || reflect.DeepEqual(s, p.untold) {
		return l, false
	}
	w, err := formation.Write(p.written.Situation, lesson.Ordinary)
	if err != nil {
		return l, false
	}
	l.Plays = []lesson.Play{words.Entitled(w).Play}
	return l, true
}
