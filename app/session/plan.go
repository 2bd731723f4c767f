package session

import (
	"errors"
	"fmt"

	"homeside/model/court"
	"homeside/model/edit"
	"homeside/model/formation"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/plan"
	"homeside/words"
)

// Policies lists the policies to choose from, the most stacking first.
var Policies = [...]plan.Policy{
	plan.Full(), plan.ThreeQuarter(game.Near1), plan.ThreeQuarter(game.Near2), plan.Half(), plan.HalfReturn(), plan.None(),
}

// PlanAsk is whose game is planned and how.
type PlanAsk struct {
	Team    court.End
	Policy  plan.Policy
	Chances plan.Chances
}

// MatchPlan is a pair's game with the lesson's players and scoring.
type MatchPlan struct {
	plan.Plan // with the lesson's starting server
	Starters  plan.Starters
	Worth     plan.Worth
	Plays     []int // by row: the lesson's play of that situation, -1 where it has none
}

// MatchPlan plans the game of a pair; the error says in one line what is wrong
// with what is asked or with the sides the pair wants.
func (s *Session) MatchPlan(a PlanAsk) (MatchPlan, error) {
	l := s.history.Lesson()
	starters, err := plan.CompareStarters(l.Settings(), plan.Pair{Lesson: l, Team: a.Team, Policy: a.Policy}, a.Chances, plan.Plays{})
	if err != nil {
		return MatchPlan{}, err
	}
	m := MatchPlan{Plan: starters[l.Team(a.Team).StarterOf(a.Team).Number()-1], Starters: starters}
	if m.Worth, err = m.Plan.Worth(); err != nil {
		return MatchPlan{}, err
	}
	m.Plays = playsOf(l, m.Plan)
	return m, nil
}

// playsOf is the lesson's play for each row: the one that the program writes
// for it if it is there, else the first of that situation.
func playsOf(l lesson.Lesson, p plan.Plan) []int {
	first := map[plan.Situation]int{}
	for i, play := range l.Plays {
		for _, at := range situationsOf(l, play, p.Pair.Team) {
			if _, met := first[at]; !met {
				first[at] = i
			}
		}
	}
	plays := make([]int, len(p.Rows))
	for i, r := range p.Rows {
		plays[i] = -1
		if at, ok := first[r.Situation]; ok {
			plays[i] = at
		}
		if written, err := writeRow(p, i); err == nil {
			if at := indexOf(l, written); at >= 0 {
				plays[i] = at
			}
		}
	}
	return plays
}

// situationsOf are the situations of the plan that a play can be of; more than
// one where its score leaves open who receives.
func situationsOf(l lesson.Lesson, p lesson.Play, team court.End) []plan.Situation {
	if server, ok := p.Server(); !ok || server.Team() != p.Situation.Serving || p.Situation.Call == (game.Call{}) && !l.Scoring.Format.Rally() {
		return nil
	}
	states, err := l.QueryOf(p).Who()
	if err != nil {
		return nil // no game comes to it: the score strip says so
	}
	var at []plan.Situation
	for _, st := range states {
		lead := st.Receiver()
		if st.Serving() == team {
			lead = st.Server()
		}
		at = append(at, plan.Situation{Serving: st.Serving() == team, Score: court.Side(st.Score()[team] & 1), Lead: lead, From: st.SideOf(lead)})
	}
	return at
}

// writeRow writes the play of a row at the first score it comes up at.
func writeRow(p plan.Plan, row int) (lesson.Play, error) {
	for _, st := range p.States {
		if st.Row != row {
			continue
		}
		w, err := formation.Write(formation.Situation{Lesson: p.Pair.At(st.State), State: st.State, Team: p.Pair.Team}, p.Rows[row].Formation)
		if err != nil {
			return lesson.Play{}, fmt.Errorf("at %v: %w", st.State.Call(), err)
		}
		return words.Entitled(w).Play, nil
	}
	return lesson.Play{}, errors.New("the game never comes to it")
}

// indexOf is where a lesson has this play, whatever it is called there; -1 if nowhere.
func indexOf(l lesson.Lesson, p lesson.Play) int {
	for i, have := range l.Plays {
		if alike(have, p) {
			return i
		}
	}
	return -1
}

// WriteMatch writes a play for every row of the plan behind the lesson's plays,
// as one step, and shows the first of them. Those that the lesson has already
// are not written again. If one is refused none is written: the error says why.
func (s *Session) WriteMatch(a PlanAsk) (written int, err error) {
	m, err := s.MatchPlan(a)
	if err != nil {
		return 0, err
	}
	l := s.history.Lesson()
	first := len(l.Plays)
	for i := range m.Rows {
		p, err := writeRow(m.Plan, i)
		if err != nil {
			return 0, err
		}
		if indexOf(l, p) < 0 {
			l = edit.AddPlay(l, p)
		}
	}
	if len(l.Plays) > lesson.MaxPlays {
		return 0, ErrFull
	}
	if len(l.Plays) > first {
		s.Do(words.T("write the whole match"), l)
		s.SelectPlay(first)
	}
	return len(l.Plays) - first, nil
}

// WantFor sets the sides that a pair wants by a goal, as one step; x is the
// player it is about, nil where nobody is named. The error says in one line why
// the goal does not lead to sides.
func (s *Session) WantFor(team court.End, g plan.Goal, x *game.Player) error {
	pair := plan.Pair{Lesson: s.history.Lesson(), Team: team}
	wants, err := pair.Wants(g, x)
	if err != nil {
		return err
	}
	if after := pair.With(wants).Lesson; after.Teams != pair.Lesson.Teams {
		s.Do(words.T("sides for %s", words.Name(g)), after)
	}
	return nil
}

// PlayForGoal sets the sides that a pair wants by a goal and puts the play that
// brings the partners there, at the score of the play shown, behind it: one
// step. Where the score gives them their sides already it is an ordinary one.
// The error says in one line why there are no sides or no play; nothing is
// changed then.
func (s *Session) PlayForGoal(team court.End, g plan.Goal, x *game.Player) error {
	s.Cancel()
	state, err := s.ScoreState()
	if err != nil {
		return err
	}
	l, w, err := writeForGoal(s.history.Lesson(), state, team, g, x)
	if err != nil {
		return err
	}
	return s.insert(words.T("sides for %s, with their play", words.Name(g)), l, w.Play)
}

// writeForGoal is the lesson with the sides that a pair wants by a goal, and the
// play that brings the partners there at a state.
func writeForGoal(l lesson.Lesson, state game.State, team court.End, g plan.Goal, x *game.Player) (lesson.Lesson, formation.Written, error) {
	pair := plan.Pair{Lesson: l, Team: team, Policy: plan.Full()}
	wants, err := pair.Wants(g, x)
	if err != nil {
		return l, formation.Written{}, err
	}
	pair = pair.With(wants)
	p, err := plan.Of(state, pair, plan.Chances{0.5, 0.5}, plan.Plays{}) // the chances do not matter to the first play
	if err != nil {
		return l, formation.Written{}, err
	}
	at, _ := p.StateAt(state)
	w, err := formation.Write(formation.Situation{Lesson: pair.At(state), State: state, Team: team}, p.Formation(at))
	if err != nil {
		return l, w, err
	}
	return pair.Lesson, words.Entitled(w), nil
}
