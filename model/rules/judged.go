package rules

import (
	"homeside/model/game"
)

// judged is what the score says of the serve.
type judged struct {
	missing bool
	err     error        // the call cannot come up
	verdict game.Verdict // the mildest over all states that agree with the call
	states  []game.State // those with that verdict
}

// judge asks the score who serves. Where nobody said it there is nothing to ask.
func (s *sheet) judge() judged {
	call := s.Play.Situation.Call
	if call == (game.Call{}) && !s.lesson.Scoring.Format.Rally() {
		return judged{missing: true}
	}
	q := game.Query{
		Format: s.lesson.Scoring.Format, To: s.lesson.Scoring.To, Call: call, Serving: s.Play.Situation.Serving,
		Starters: s.lesson.Starters(), Began: s.lesson.Match.First,
	}
	all, err := q.Who()
	j := judged{err: err, verdict: game.WrongTeam}
	for _, state := range all {
		switch v := state.Served(s.server, s.from); {
		case v < j.verdict:
			j.verdict, j.states = v, append(j.states[:0], state)
		case v == j.verdict:
			j.states = append(j.states, state)
		}
	}
	return j
}

// decided says whether the score tells who serves and this team does.
func (j judged) decided() bool { return !j.missing && j.err == nil && j.verdict != game.WrongTeam }
