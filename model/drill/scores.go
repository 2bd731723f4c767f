package drill

import (
	"math/rand/v2"

	"homeside/model/court"
	"homeside/model/game"
)

// ScoreOptions say which scores are asked.
type ScoreOptions struct {
	Settings game.Settings
	Team     court.End // the pair that is drilled
	Seed     uint64
}

// ScoreAsk is one question: at this state, who serves, and who of the team
// stands on the right? A call alone does not tell who serves: what came before
// it does.
type ScoreAsk struct {
	State  game.State
	Before game.State // at the rally before; State itself at the game's first serve
	Team   court.End
}

// Led is how the rally before led to the serve that is asked about.
type Led uint8

// The ways to a serve.
const (
	Began   Led = iota // the game begins
	Point              // the serving pair won the rally and serves on
	Partner            // the first server lost the serve, the partner has it
	Over               // the other pair has it
)

// Led says how the rally before led to the serve.
func (a ScoreAsk) Led() Led {
	switch {
	case a.Before == a.State:
		return Began
	case a.Before.Serving() != a.State.Serving():
		return Over
	case a.State.Score() == a.Before.Score():
		return Partner
	}
	return Point
}

// ScoreAnswer is what the pair says.
type ScoreAnswer struct {
	Server game.Player
	Right  game.Player // of the team, who belongs on the right, from its own view
}

// Answer is the right answer.
func (a ScoreAsk) Answer() ScoreAnswer {
	return ScoreAnswer{a.State.Server(), a.State.On(a.Team, court.Right)}
}

// ScoreVerdict says what of an answer is right.
type ScoreVerdict struct{ Server, Places bool }

// Right tells whether all of it is.
func (v ScoreVerdict) Right() bool { return v.Server && v.Places }

// Scores is a score drill. Use NewScores.
type Scores struct {
	options ScoreOptions
	start   game.State
	draw    *rand.Rand
	ask     ScoreAsk
	streak  Streak
}

// scoreStream keeps the draws of one seed apart from other uses of it.
const scoreStream = 0x73636f726573

// NewScores is a drill with its first question. The error is that of
// game.Settings.Start.
func NewScores(o ScoreOptions) (*Scores, error) {
	start, err := o.Settings.Start()
	if err != nil {
		return nil, err
	}
	s := &Scores{options: o, start: start, draw: rand.New(rand.NewPCG(o.Seed, scoreStream))}
	s.Next()
	return s, nil
}

// Ask is the present question.
func (s *Scores) Ask() ScoreAsk { return s.ask }

// Streak counts the answers so far.
func (s *Scores) Streak() Streak { return s.streak }

// mostRallies is how long a drawn game may last before a question: all but the
// longest games to 11 between equals (35 rallies on average, facts of the
// Markov chain of DeFord and Ethier 2023).
const mostRallies = 60

// Next draws the next question: a game between equals, stopped after a drawn
// number of rallies or before the one that ends it.
func (s *Scores) Next() ScoreAsk {
	st, before := s.start, s.start
	for range s.draw.IntN(mostRallies) {
		next := st.Next(court.End(s.draw.IntN(2)))
		if next.Over() {
			break
		}
		st, before = next, st
	}
	s.ask = ScoreAsk{st, before, s.options.Team}
	return s.ask
}

// Say judges an answer to the present question.
func (s *Scores) Say(a ScoreAnswer) ScoreVerdict {
	right := s.ask.Answer()
	v := ScoreVerdict{Server: a.Server == right.Server, Places: a.Right == right.Right}
	s.streak = s.streak.With(v.Right())
	return v
}
