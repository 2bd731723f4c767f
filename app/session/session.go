package session

import (
	"homeside/model/edit"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
)

// Session is an editing session. Use New.
type Session struct {
	shared
	history edit.History
	draft   *lesson.Lesson // of a gesture under way
	path    string         // of the lesson's file, empty if it has none

	play    int
	now     units.Seconds
	playing bool
	stood   units.Seconds // how long the moment shown stands already, in the rally's time
	walk    walk          // through the match
	checked checked
	compare compare       // with another play
	loop    loop          // played again and again
	chosen  *rally.Timed  // what keys move in time
	more    more          // the last change that may go on
	needs   units.Seconds // an opponent's reaction and swing; 0 is the usual
	opening *game.State   // what the first play is to be served at; nil is the start of the game

	selected  game.Player   // whose card is shown
	pointed   bool          // at the selected player, while now is pointedAt
	pointedAt units.Seconds // see pointed

	picked []edit.Part // see Picked; parts that have gone among them
	reels  reels       // worked on

	solved  *rally.Rally // of the present lesson and play; nil after a change
	problem error
}

// shared is what stays when another lesson is shown; all else of a session
// belongs to its lesson.
type shared struct {
	speed    float64
	cuts     bool // a play that runs shows its events only
	revision int
	changed  func()
}

// New is a session with a lesson. changed is called after every change; nil means nobody asks.
func New(l lesson.Lesson, path string, changed func()) *Session {
	if changed == nil {
		changed = func() {}
	}
	s := &Session{shared: shared{speed: 1, changed: changed}}
	s.load(l, path)
	return s
}

// Load replaces the lesson by one from a file; an empty path is a lesson without one.
func (s *Session) Load(l lesson.Lesson, path string) {
	s.load(l, path)
	s.touch()
}

func (s *Session) load(l lesson.Lesson, path string) {
	s.history, s.path, s.draft, s.play, s.playing = edit.Begin(l), path, nil, 0, false
	s.forget()
	s.now, s.picked = 0, nil
	s.walk, s.compare = walk{rallies: len(l.Match.Rallies)}, compare{}
	s.loop, s.chosen, s.reels, s.opening = loop{}, nil, reels{}, nil
	s.walkToPlay()
}

// Lesson is the lesson as shown: a gesture's draft while one is under way.
func (s *Session) Lesson() lesson.Lesson {
	if s.draft != nil {
		return *s.draft
	}
	return s.history.Lesson()
}

// Path is the lesson's file, empty if it has none.
func (s *Session) Path() string { return s.path }

// Revision counts the changes of what is shown, the moment excepted.
func (s *Session) Revision() int { return s.revision }

// PlayIndex is the number of the play shown, from 0.
func (s *Session) PlayIndex() int { return s.play }

// Play is the play shown; false if the lesson has none.
func (s *Session) Play() (lesson.Play, bool) {
	l := s.Lesson()
	if s.play >= len(l.Plays) {
		return lesson.Play{}, false
	}
	return l.Plays[s.play], true
}

// Current is the play shown, solved; nil if it cannot be (see Problem).
func (s *Session) Current() *rally.Rally {
	if s.solved == nil && s.problem == nil {
		s.solved, s.problem = rally.Solve(s.Lesson(), s.play)
	}
	return s.solved
}

// Problem is why Current is nil.
func (s *Session) Problem() error {
	s.Current()
	return s.problem
}

// SelectPlay shows play i at its serve.
func (s *Session) SelectPlay(i int) {
	if i < 0 || i >= len(s.Lesson().Plays) || i == s.play {
		return
	}
	s.Cancel()
	s.compare.swap(i, s.play)
	s.play, s.now, s.playing, s.picked = i, 0, false, nil
	s.loop, s.chosen = loop{}, nil
	s.forget()
	s.walkToPlay()
	s.touch()
}

// forget drops the solved rally: something changed.
func (s *Session) forget() {
	s.solved, s.problem = nil, nil
	s.walk.game, s.walk.problem = nil, nil
	s.checked = checked{}
	s.compare.forget()
	s.reels.forget()
	s.revision++
}

func (s *Session) touch() { s.changed() }

// Anew has all that is made of the lesson made again: how things are said or
// drawn has changed, the lesson has not.
func (s *Session) Anew() {
	s.forget()
	s.touch()
}
