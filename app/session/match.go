package session

import (
	"errors"
	"fmt"
	"slices"

	"homeside/model/court"
	"homeside/model/edit"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/words"
)

// walk is where in the lesson's match the session is. It counts states: state i
// is the serve before rally i, the last one is after the last rally.
type walk struct {
	at      int
	rallies int               // of the match when at was set
	pending lesson.MatchRally // the tally of the rally still to be played
	game    *game.Match       // of the present lesson; nil after a change
	problem error
}

// Why a rally cannot be counted.
var (
	ErrGameOver   = errors.New("the game is over")
	ErrOutOfMatch = errors.New("this play is not at the score of the match")
	ErrNoPlay     = errors.New("the lesson has no play to start from")
)

// Match is the lesson's match as the score sees it; MatchProblem says why it is
// only a start where the lesson's match cannot be.
func (s *Session) Match() game.Match {
	if s.walk.game == nil {
		m, err := s.history.Lesson().Game()
		s.walk.game, s.walk.problem = &m, err
	}
	return *s.walk.game
}

// MatchProblem is why the lesson's match cannot be walked.
func (s *Session) MatchProblem() error {
	s.Match()
	return s.walk.problem
}

// MatchAt is the state of the match that the walk is at, from 0.
func (s *Session) MatchAt() int { return s.walk.at }

// MatchState is the score at the walk.
func (s *Session) MatchState() game.State { return s.Match().States()[s.walk.at] }

// InMatch says whether the play shown belongs to the state of the walk: it is
// served at that score or, after the end, the game's last rally was shown by it.
func (s *Session) InMatch() bool {
	p, ok := s.Play()
	if !ok || !s.history.Lesson().Match.Begun() || s.MatchProblem() != nil {
		return false
	}
	if st := s.MatchState(); !st.Over() {
		return p.Fits(st)
	}
	return recorded(s.history.Lesson(), s.walk.at-1) == s.play
}

// OutOfMatch says whether a match is kept but the play shown is at another score.
func (s *Session) OutOfMatch() bool {
	return len(s.history.Lesson().Match.Rallies) > 0 && !s.InMatch()
}

// ShowState walks to a state of the match and opens the play that fits it. A
// state that no play fits leaves the play shown: see InMatch and DrawState.
func (s *Session) ShowState(i int) {
	if i < 0 || i >= len(s.Match().States()) {
		return
	}
	s.Cancel()
	s.goTo(i)
	s.touch()
}

// goTo walks without telling.
func (s *Session) goTo(i int) {
	s.walk.at, s.walk.rallies, s.walk.pending = i, len(s.history.Lesson().Match.Rallies), lesson.MatchRally{}
	if p, ok := playFor(s.history.Lesson(), s.Match().States()[i], i, s.play); ok && p != s.play {
		s.play, s.now = p, 0
	}
	s.forget()
	s.playing = false
	s.clampNow()
}

// playFor is the play for state i: the one that was shown there, the one shown
// now, or the first that fits. The end of a game has the last rally's.
func playFor(l lesson.Lesson, st game.State, i, shown int) (int, bool) {
	if st.Over() {
		p := recorded(l, i-1)
		return p, p >= 0
	}
	for _, p := range [2]int{recorded(l, i), shown} {
		if p >= 0 && p < len(l.Plays) && l.Plays[p].Fits(st) {
			return p, true
		}
	}
	p := slices.IndexFunc(l.Plays, func(p lesson.Play) bool { return p.Fits(st) })
	return p, p >= 0
}

// recorded is the play that rally i was shown by, -1 if there is none.
func recorded(l lesson.Lesson, i int) int {
	if i < 0 || i >= len(l.Match.Rallies) || l.Match.Rallies[i].Play > len(l.Plays) {
		return -1
	}
	return l.Match.Rallies[i].Play - 1
}

// FirstState, PreviousState, NextState and LastState walk through the match.
func (s *Session) FirstState() { s.ShowState(0) }

// PreviousState walks one rally back.
func (s *Session) PreviousState() { s.ShowState(s.walk.at - 1) }

// NextState walks one rally on.
func (s *Session) NextState() { s.ShowState(s.walk.at + 1) }

// LastState walks to where the match stands.
func (s *Session) LastState() { s.ShowState(len(s.Match().States()) - 1) }

// StartMatch begins a match at the score of the play shown, as one step. What
// was kept before is dropped.
func (s *Session) StartMatch() error {
	m, err := s.opened()
	if err != nil {
		return err
	}
	s.doMatch(words.T("start a match"), edit.ReplaceMatch(s.history.Lesson(), m), 0)
	return nil
}

// opened is a match without rallies that begins at the play shown.
func (s *Session) opened() (lesson.Match, error) {
	l := s.history.Lesson()
	if s.play >= len(l.Plays) {
		return lesson.Match{}, ErrNoPlay
	}
	o, _ := l.Plays[s.play].OpeningOf()
	m := lesson.Match{First: l.Match.First, From: &o}
	if o.Call == game.StartCall(l.Scoring.Format) && o.Server == l.Starters()[o.Serving] {
		m = lesson.Match{First: &o.Serving}
	}
	if _, err := edit.ReplaceMatch(l, m).Game(); err != nil {
		return lesson.Match{}, fmt.Errorf("start a match: %w", err)
	}
	return m, nil
}

// RallyWon counts the rally of the play shown for a team, as one step, and opens
// the play of the new score; where no play fits, one is carried over from the
// nearest. A match that has no rallies yet begins at the play shown. In the
// middle of a match it puts that rally's winner right; the later ones stay won
// as they were.
func (s *Session) RallyWon(winner court.End) error {
	l := s.history.Lesson()
	if len(l.Match.Rallies) == 0 && !s.InMatch() {
		m, err := s.opened()
		if err != nil {
			return err
		}
		l, s.walk.at = edit.ReplaceMatch(l, m), 0
	} else if !s.InMatch() {
		return ErrOutOfMatch
	} else if s.MatchState().Over() {
		return ErrGameOver
	}
	if i := s.walk.at; i < len(l.Match.Rallies) && l.Match.Rallies[i].Winner == winner {
		s.NextState()
		return nil
	}
	return s.count(l, winner)
}

// count writes the winner of the rally at the walk into a lesson's match.
func (s *Session) count(l lesson.Lesson, winner court.End) error {
	i := s.walk.at
	r := s.rallyOf(l)
	r.Winner, r.Play = winner, s.play+1
	l = edit.ReplaceMatch(l, l.Match.WithRally(i, r))
	m, err := l.Game()
	if err != nil {
		return err
	}
	l = edit.ReplaceMatch(l, l.Match.UpTo(m.Rallies())) // none is played after the end
	l = s.withPlayFor(l, m.States()[i+1], i+1)
	s.doMatch(words.T("rally won by %s", words.Team(l, winner)), l, i+1)
	return nil
}

// withPlayFor is the lesson with a play for state i, carried over where none fits.
func (s *Session) withPlayFor(l lesson.Lesson, st game.State, i int) lesson.Lesson {
	if _, ok := playFor(l, st, i, s.play); ok || st.Over() || len(l.Plays) >= lesson.MaxPlays {
		return l
	}
	return edit.AddPlay(l, carried(l, s.play, st))
}

// carried is edit.Carry with a title in words.
func carried(l lesson.Lesson, shown int, st game.State) lesson.Play {
	p := edit.Carry(l, shown, st)
	p.Title = words.CarriedTitle(l, st)
	return p
}

// DrawState adds a play for the state of the walk, carried over from the
// nearest, as one step; nothing happens where one fits or the game is over.
func (s *Session) DrawState() {
	l := s.history.Lesson()
	if with := s.withPlayFor(l, s.MatchState(), s.walk.at); len(with.Plays) > len(l.Plays) {
		s.doMatch(words.T("draw %v", s.MatchState().Call()), with, s.walk.at)
	}
}

// TakeBackRally takes the last rally out of the match, as one step, and walks to
// where it was played from. Its play stays.
func (s *Session) TakeBackRally() {
	l := s.history.Lesson()
	if n := len(l.Match.Rallies); n > 0 {
		s.doMatch(words.T("take the last rally back"), edit.ReplaceMatch(l, l.Match.UpTo(n-1)), n-1)
	}
}

// doMatch makes l the lesson as one step and walks to state i.
func (s *Session) doMatch(name string, l lesson.Lesson, i int) {
	s.draft = nil
	s.history = s.history.Do(name, l)
	s.compare.of = len(l.Plays) // they come behind the last
	s.forget()
	s.goTo(i)
	s.touch()
}

// followMatch keeps the walk with the lesson after any other change: to where
// the match stands when rallies have come or gone.
func (s *Session) followMatch() {
	last := len(s.Match().States()) - 1
	if len(s.history.Lesson().Match.Rallies) != s.walk.rallies {
		s.goTo(last)
	}
	s.walk.at = min(s.walk.at, last)
}

// walkToPlay walks to the state nearest to the walk that the play shown fits,
// if there is one.
func (s *Session) walkToPlay() {
	p, ok := s.Play()
	if !ok || s.InMatch() && !s.MatchState().Over() {
		return
	}
	best, states := -1, s.Match().States()
	for i, st := range states {
		if p.Fits(st) && (best < 0 || away(i, s.walk.at) < away(best, s.walk.at)) {
			best = i
		}
	}
	if best >= 0 && s.history.Lesson().Match.Begun() {
		s.walk.at, s.walk.pending = best, lesson.MatchRally{}
	}
}

func away(i, j int) int { return max(i-j, j-i) }
