package plan

import (
	"fmt"

	"homeside/model/court"
	"homeside/model/finding"
	"homeside/model/formation"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/rules"
	"homeside/model/units"
)

// Plays tells the efforts from the play that package formation writes for a
// state: the ways run from the serve's contact to the play's end, the worst
// margin at the pair's deadline, and whether the rules find no fault.
type Plays struct{}

// Effort writes the play and judges it. The error is a formation.ErrRefused
// where the formation makes no sense, or a lesson that cannot be solved.
func (Plays) Effort(p Pair, s game.State, f lesson.Formation) (Effort, error) {
	l := p.At(s)
	w, err := formation.Write(formation.Situation{Lesson: l, State: s, Team: p.Team}, f)
	if err != nil {
		return Effort{}, fmt.Errorf("%v at %v: %w", f, s.Call(), err)
	}
	var e Effort
	for i := range e.Feet {
		id := p.Player(i + 1)
		e.Feet[i] = runs(w.Rally.Tracks[id])
		if m, ok := w.Margins[id]; ok && (e.Margin == nil || m < *e.Margin) {
			e.Margin = &m
		}
	}
	legal := true
	for _, found := range rules.Check(w.Rally, l) {
		legal = legal && found.Severity != finding.Fault
	}
	e.Legal = &legal
	return e, nil
}

// At is the pair's lesson as it is played at a state: its format and who started.
func (p Pair) At(s game.State) lesson.Lesson {
	l := p.Lesson
	l.Plays, l.Match = nil, lesson.Match{}
	l.Scoring = lesson.Scoring{Format: s.Format(), To: s.Points()}
	for _, e := range court.Ends {
		l.Teams[e].Starter = s.Starter(e).Number()
	}
	return l
}

// runs is how far a player runs after the serve's contact.
func runs(t rally.Track) units.Feet {
	sum := units.Feet(0)
	for _, leg := range t.Legs {
		if leg.To > 0 {
			sum += leg.Run.Distance.Feet()
		}
	}
	return sum
}
