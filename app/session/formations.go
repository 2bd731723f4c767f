package session

import (
	"errors"
	"fmt"

	"homeside/model/court"
	"homeside/model/edit"
	"homeside/model/formation"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/words"
)

// Why no play can be written.
var (
	ErrNoScore   = errors.New("say the score first: it decides who stands where")
	ErrOpenScore = errors.New("answer first what is asked below the score: who must receive depends on it")
	ErrFull      = fmt.Errorf("a lesson holds at most %d plays", lesson.MaxPlays)
)

// Request is what a new play is to be, beside what the lesson and the score say.
type Request struct {
	Kind    formation.Kind
	Returns bool // it is the formation of the pair that receives, not of the one that serves
	Serve   formation.ServeTo
	WalkOn  bool // it begins where the play shown ends, and everybody walks to their places
}

// ScoreState is the state of the game that the play shown is served at; of a
// lesson without plays what it was begun at, or the start of its game. The error
// says what is missing.
func (s *Session) ScoreState() (game.State, error) {
	l := s.history.Lesson()
	switch m := s.Missing(); {
	case s.InMatch() && !s.MatchState().Over():
		return s.MatchState(), nil
	case s.play >= len(l.Plays) && s.opening != nil:
		return *s.opening, nil
	case s.play >= len(l.Plays):
		return l.Settings().Start()
	case m.Call || m.Serving:
		return game.State{}, ErrNoScore
	case m.Problem != nil:
		return game.State{}, m.Problem
	case len(m.Questions) > 0:
		return game.State{}, ErrOpenScore
	}
	return served(l, l.Plays[s.play])
}

// served is the state that a play is served at.
func served(l lesson.Lesson, p lesson.Play) (game.State, error) {
	server, ok := p.Server()
	if !ok {
		return game.State{}, ErrNoScore
	}
	states, err := l.QueryOf(p).Who()
	switch {
	case err != nil:
		return game.State{}, err
	case len(states) == 0:
		return game.State{}, fmt.Errorf("%w: at %v %v does not hold the serve", lesson.ErrNoServe, p.Situation.Call, l.NameOf(server))
	}
	return states[0], nil
}

// Situation is what a request asks formations to be written for.
func (s *Session) Situation(r Request) (formation.Situation, error) {
	state, err := s.ScoreState()
	if err != nil {
		return formation.Situation{}, err
	}
	out := formation.Situation{Lesson: s.history.Lesson(), State: state, Team: state.Serving(), Serve: r.Serve}
	if r.Returns {
		out.Team = out.Team.Other()
	}
	if r.WalkOn {
		out.Places = s.lastPlaces()
	}
	return out, nil
}

// lastPlaces is where the play shown leaves the players; nil if it cannot be solved.
func (s *Session) lastPlaces() *[4]court.Point {
	r := s.Current()
	if r == nil {
		return nil
	}
	var at [4]court.Point
	for _, id := range game.Players {
		at[id] = r.Tracks[id].RunAt(r.To).Place
	}
	return &at
}

// WriteFormation writes the play that is asked for, without putting it into the
// lesson. The error is a refusal in plain words.
func (s *Session) WriteFormation(r Request) (formation.Written, error) {
	situation, err := s.Situation(r)
	if err != nil {
		return formation.Written{}, err
	}
	w, err := formation.Write(situation, r.Kind)
	if err != nil {
		return w, err
	}
	return words.Entitled(w), nil
}

// InsertPlays puts plays behind the one shown as one named step and opens the
// first of them at its serve. Nothing happens where the lesson has no room.
func (s *Session) InsertPlays(name string, plays ...lesson.Play) error {
	s.Cancel()
	return s.insert(name, s.history.Lesson(), plays...)
}

// insert makes l with the plays put behind the one shown the lesson.
func (s *Session) insert(name string, l lesson.Lesson, plays ...lesson.Play) error {
	if len(l.Plays)+len(plays) > lesson.MaxPlays {
		return ErrFull
	}
	at := min(s.play+1, len(l.Plays))
	s.history = s.history.Do(name, edit.InsertPlays(l, at, plays...))
	s.compare.inserted(at, len(plays))
	s.play, s.now, s.playing = at, 0, false
	s.forget()
	s.walkToPlay()
	s.clampNow()
	s.touch()
	return nil
}

// InsertWritten puts a written play behind the one shown, as InsertPlays does.
func (s *Session) InsertWritten(w formation.Written) error {
	return s.InsertPlays(words.T("new play: %s", stepName(w)), w.Play)
}

// stepName is a written play in a step's name: "stack on the serve".
func stepName(w formation.Written) string {
	if w.Situation.Serves() {
		return words.T("%s on the serve", words.Name(w.Kind))
	}
	return words.T("%s on the return", words.Name(w.Kind))
}
