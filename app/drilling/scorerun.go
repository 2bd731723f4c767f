package drilling

import (
	"homeside/model/drill"
	"homeside/model/game"
)

// scoreTurn is a question of the score drill and what has come of it.
type scoreTurn struct {
	outcome
	ask     drill.ScoreAsk
	server  *game.Player // as answered; nil while nobody has
	right   *game.Player
	verdict drill.ScoreVerdict
}

// scoreRun is a score drill under way.
type scoreRun struct {
	turns[scoreTurn]
	drill *drill.Scores
}

// newScoreRun is a drill with its first question. The error is that of
// drill.NewScores.
func newScoreRun(o drill.ScoreOptions) (*scoreRun, error) {
	d, err := drill.NewScores(o)
	if err != nil {
		return nil, err
	}
	r := &scoreRun{drill: d}
	r.add(scoreTurn{ask: d.Ask()})
	return r, nil
}

func (r *scoreRun) open() bool { return r.last() && r.now().outcome == asked }

// serves answers who serves.
func (r *scoreRun) serves(id game.Player) {
	if r.open() {
		r.now().server = &id
		r.judge()
	}
}

// stands answers who stands on the right.
func (r *scoreRun) stands(id game.Player) {
	if r.open() {
		r.now().right = &id
		r.judge()
	}
}

// judge judges as soon as both are answered.
func (r *scoreRun) judge() {
	t := r.now()
	if t.server == nil || t.right == nil {
		return
	}
	t.verdict = r.drill.Say(drill.ScoreAnswer{Server: *t.server, Right: *t.right})
	t.outcome = outcomeOf(t.verdict.Right())
}

// say counts an answer that was shown as known or not known.
func (r *scoreRun) say(known bool) {
	t := r.now()
	if !r.last() || t.outcome != shown {
		return
	}
	a := t.ask.Answer()
	if !known {
		a.Server, a.Right = a.Server.Partner(), a.Right.Partner()
	}
	t.verdict = r.drill.Say(a)
	t.outcome = outcomeOf(known)
}

// step shows the answer of an open question, and goes on from any other. What
// was answered of it by half is dropped.
func (r *scoreRun) step() {
	switch t := r.now(); {
	case r.forward():
	case t.outcome == asked:
		t.server, t.right, t.outcome = nil, nil, shown
	default:
		r.add(scoreTurn{ask: r.drill.Next()})
	}
}
