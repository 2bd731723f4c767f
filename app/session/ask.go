package session

import (
	"slices"

	"homeside/model/court"
	"homeside/model/drill"
	"homeside/model/edit"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/words"
)

// Missing is what has to be asked before everybody's place at the serve is known.
type Missing struct {
	Call      bool            // nobody has said the score
	Serving   bool            // the call is said by the team that does not serve
	Questions []game.Question // who started or began, where the answer matters
	Problem   error           // why the call cannot be
}

// Missing is what has to be asked of the play shown; nothing of no play.
func (s *Session) Missing() Missing {
	l := s.Lesson()
	p, ok := s.Play()
	server, serves := p.Server()
	switch {
	case !ok || !serves:
		return Missing{}
	case p.Situation.Call == game.Call{} && !l.Scoring.Format.Rally():
		return Missing{Call: true}
	case p.Situation.Serving != server.Team():
		return Missing{Serving: true}
	}
	questions, err := l.QueryOf(p).Questions()
	questions = slices.DeleteFunc(questions, func(q game.Question) bool { return q.Kind == game.AskServer }) // the play says it
	return Missing{Questions: questions, Problem: err}
}

// Call says the score of the play shown as one step; the error says in one line
// why no game comes to it, and nothing is changed then.
func (s *Session) Call(text string, serving court.End) error {
	l := s.history.Lesson()
	call, err := game.ParseCall(text)
	if err != nil {
		return err
	}
	if err := call.Check(l.Scoring.Format, l.Scoring.To); err != nil {
		return err
	}
	to := lesson.Situation{Call: call, Serving: serving}
	if s.play < len(l.Plays) && l.Plays[s.play].Situation != to {
		s.Do(words.T("call %v", call), edit.ReplacePlay(l, s.play, edit.Situate(l.Plays[s.play], to)))
		s.walkToPlay()
		s.touch()
	}
	return nil
}

// Started says who served first for a team in this game, as one step.
func (s *Session) Started(p game.Player) {
	l := s.history.Lesson()
	s.Do(words.T("%s started", l.NameOf(p)), edit.Starter(l, p.Team(), p.Number()))
}

// Agree says what a team's signs mean, as one step; nothing happens where they mean it.
func (s *Session) Agree(e court.End, signs drill.Meanings) {
	if l := s.history.Lesson(); drill.MeaningsOf(l.Team(e).Signs) != signs {
		s.Do(words.T("what signs of %s mean", words.Team(l, e)), edit.Signs(l, e, lesson.Signs(signs)))
	}
}

// Began says which team served first in this game, as one step.
func (s *Session) Began(e court.End) {
	l := s.history.Lesson()
	s.Do(words.T("%s served first", words.Team(l, e)), edit.FirstTeam(l, e))
}
