package session

import (
	"errors"
	"fmt"

	"homeside/model/court"
	"homeside/model/formation"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/plan"
	"homeside/words"
)

// PairStart is what a pair says of itself to get its first play. The pair is the
// near team.
type PairStart struct {
	Players [2]lesson.Player // names, hands, paces
	Goal    plan.Goal        // what they want from their sides
	About   int              // the player that the goal is about, 1 or 2; 0 is nobody
	Call    string           // the score as it is called
	Returns bool             // the opponents serve
	Lead    int              // who of the pair serves or receives, 1 or 2
}

// ErrNotThere says that the player named cannot serve or receive at the score.
var ErrNotThere = errors.New("no game comes to this")

// FirstLesson is a new lesson of a pair with its first play: the formation that
// its goal asks for, at the score. The error says in one line what is wrong
// with what was said.
func FirstLesson(p PairStart) (lesson.Lesson, formation.Written, error) {
	l := lesson.Lesson{Title: words.PairLesson(p.Players)}
	l.Teams[court.Near].Players = p.Players
	for i := range l.Teams[court.Far].Players {
		l.Teams[court.Far].Players[i] = words.Opponent(i)
	}
	l, state, err := p.at(l)
	if err != nil {
		return lesson.Lesson{}, formation.Written{}, err
	}
	l, w, err := writeForGoal(l, state, court.Near, p.Goal, p.about())
	if err != nil {
		return lesson.Lesson{}, formation.Written{}, err
	}
	l.Plays = []lesson.Play{w.Play}
	return l, w, nil
}

// Pair is the pair as it wants its sides by its goal; for what can be asked of it.
func (p PairStart) Pair() plan.Pair {
	l := lesson.Lesson{}
	l.Teams[court.Near].Players = p.Players
	return plan.Pair{Lesson: l, Team: court.Near}
}

func (p PairStart) about() *game.Player {
	if p.About == 0 {
		return nil
	}
	id := game.PlayerOf(court.Near, p.About)
	return &id
}

// at is the state of the game that was said, with who started as it follows.
func (p PairStart) at(l lesson.Lesson) (lesson.Lesson, game.State, error) {
	call, err := game.ParseCall(p.Call)
	if err != nil {
		return l, game.State{}, err
	}
	if err := call.Check(l.Scoring.Format, l.Scoring.To); err != nil {
		return l, game.State{}, err
	}
	serving := court.Near
	if p.Returns {
		serving = court.Far
	}
	for near := 1; near <= 2; near++ {
		l.Teams[court.Near].Starter, l.Teams[court.Far].Starter = near, 1
		states, err := game.Query{Format: l.Scoring.Format, To: l.Scoring.To, Starters: l.Starters(), Call: call, Serving: serving}.Who()
		if err != nil {
			return l, game.State{}, err
		}
		for _, st := range states {
			if s := (formation.Situation{State: st, Team: court.Near}); s.Lead() == game.PlayerOf(court.Near, p.Lead) {
				return l, st, nil
			}
		}
	}
	return l, game.State{}, fmt.Errorf("%w: %v, %s", ErrNotThere, call, l.NameOf(game.PlayerOf(court.Near, p.Lead)))
}
