package drill

import (
	"cmp"
	"errors"
	"fmt"
	"math/rand/v2"

	"homeside/model/lesson"
)

// Role is who is drilled.
type Role uint8

// The roles: a reader sees a sign and answers with the move, a giver is told the
// move and makes the sign.
const (
	Reader Role = iota
	Giver
)

// SignalOptions say what is drilled. The zero value never switches; Meanings
// that are all Stay, the zero value, are the usual ones.
type SignalOptions struct {
	Role     Role
	Meanings Meanings
	Switch   float64 // share of switches among stays and switches, 0 to 1
	Fake     float64 // share of fakes, 0 to 1
	Unclear  float64 // share of signs that cannot be read, 0 to 1; a reader's only
	Seed     uint64
}

// ErrShare says that a share is outside [0, 1] or that shares make more than 1.
var ErrShare = errors.New("share out of range")

// Check says what is wrong: an ErrShare or an ErrMeanings.
func (o SignalOptions) Check() error {
	return cmp.Or(
		share("switches", o.Switch), share("fakes", o.Fake), share("unclear signs", o.Unclear),
		share("fakes and unclear signs together", o.Fake+o.Unclear),
		o.meanings().Check(),
	)
}

func share(of string, v float64) error {
	if v >= 0 && v <= 1 {
		return nil
	}
	return fmt.Errorf("%w: %s %v, want 0 to 1", ErrShare, of, v)
}

func (o SignalOptions) meanings() Meanings {
	if o.Meanings == (Meanings{}) {
		return Usual()
	}
	return o.Meanings
}

// SignalAsk is one question: the sign shown, and what it means, which a reader
// has to say and a giver is told.
type SignalAsk struct {
	Sign    Sign
	Meaning lesson.Meaning
}

// Signals is a signal drill. Use NewSignals.
type Signals struct {
	options SignalOptions
	means   Meanings
	draw    *rand.Rand
	ask     SignalAsk
	streak  Streak
}

// signalStream keeps the draws of one seed apart from other uses of it.
const signalStream = 0x6472696c6c73

// NewSignals is a drill with its first question. The error is that of Check.
func NewSignals(o SignalOptions) (*Signals, error) {
	if err := o.Check(); err != nil {
		return nil, err
	}
	s := &Signals{options: o, means: o.meanings(), draw: rand.New(rand.NewPCG(o.Seed, signalStream))}
	s.Next()
	return s, nil
}

// Ask is the present question.
func (s *Signals) Ask() SignalAsk { return s.ask }

// Streak counts the answers so far.
func (s *Signals) Streak() Streak { return s.streak }

// Next draws the next question, whether or not the present one was answered. It
// does not depend on the answers.
func (s *Signals) Next() SignalAsk {
	kind, move := s.draw.Float64(), s.draw.Float64()
	unclear := s.options.Unclear
	if s.options.Role == Giver {
		unclear = 0
	}
	switch {
	case kind < s.options.Fake:
		s.ask = s.asking(lesson.Fake)
	case kind < s.options.Fake+unclear:
		s.ask = SignalAsk{Unclear, lesson.Stay}
	case move < s.options.Switch:
		s.ask = s.asking(lesson.Switch)
	default:
		s.ask = s.asking(lesson.Stay)
	}
	return s.ask
}

func (s *Signals) asking(what lesson.Meaning) SignalAsk {
	return SignalAsk{s.means.SignFor(what), what}
}

// Read is a reader's answer to the present question; it says whether it is right.
func (s *Signals) Read(move lesson.Meaning) bool { return s.judged(move == s.ask.Meaning) }

// Give is a giver's answer: the sign made for the meaning asked.
func (s *Signals) Give(sign Sign) bool {
	return s.judged(sign < Unclear && s.means.Of(sign) == s.ask.Meaning)
}

func (s *Signals) judged(right bool) bool {
	s.streak = s.streak.With(right)
	return right
}
