package plan

import (
	"errors"
	"fmt"

	"homeside/model/game"
	"homeside/model/lesson"
)

// ErrGoal says that a goal does not lead to sides; the message says why.
var ErrGoal = errors.New("goal without sides")

// Goal is what a pair wants from its sides.
type Goal uint8

// The goals: common practice of the trade.
const (
	ForehandsMiddle Goal = iota // both forehands in the middle, or that of the player named
	OnTheLeft                   // the player named on the left
	LessRunning                 // nobody changes sides
	Hide                        // the player named out of the middle: the partner's forehand takes it
)

// Goals lists the goals in order.
var Goals = [4]Goal{ForehandsMiddle, OnTheLeft, LessRunning, Hide}

// String is the goal in words.
func (g Goal) String() string {
	return [4]string{"forehands in the middle", "on the left", "less running", "hide"}[g&3]
}

// Wants is each partner's side for a goal, by number, when serving and receiving
// alike. X is the player the goal is about; LessRunning asks for none, and forehands in
// the middle for one only where both have the same hand: then only one of
// the two can be there.
func (p Pair) Wants(g Goal, x *game.Player) ([2]lesson.Want, error) {
	if x != nil && x.Team() != p.Team {
		return [2]lesson.Want{}, fmt.Errorf("%w: %v is not on the %v team", ErrGoal, *x, p.Team)
	}
	switch {
	case g == LessRunning:
		return [2]lesson.Want{}, nil
	case g == ForehandsMiddle && x == nil && p.hand(p.Player(1)) != p.hand(p.Player(2)):
		return p.middle(p.Player(1)), nil
	case x == nil && g == ForehandsMiddle:
		return [2]lesson.Want{}, fmt.Errorf("%w: both play with the %v hand: say who takes the middle, usually the stronger", ErrGoal, p.hand(p.Player(1)))
	case x == nil:
		return [2]lesson.Want{}, fmt.Errorf("%w: %v: say who", ErrGoal, g)
	case g == ForehandsMiddle:
		return p.middle(*x), nil
	case g == Hide:
		return p.middle(x.Partner()), nil
	default:
		return sides(*x, lesson.WantLeft), nil
	}
}

func (p Pair) hand(id game.Player) lesson.Hand { return p.Lesson.Player(id).Hand }

// middle puts a player's forehand in the middle: a right-hander on the left.
func (p Pair) middle(id game.Player) [2]lesson.Want {
	if p.hand(id) == lesson.LeftHanded {
		return sides(id, lesson.WantRight)
	}
	return sides(id, lesson.WantLeft)
}

// sides gives a player one side and the partner the other.
func sides(id game.Player, w lesson.Want) [2]lesson.Want {
	other := lesson.WantLeft
	if w == lesson.WantLeft {
		other = lesson.WantRight
	}
	var out [2]lesson.Want
	out[id.Number()-1], out[id.Partner().Number()-1] = w, other
	return out
}

// With is the pair with those wishes for serving and receiving.
func (p Pair) With(wants [2]lesson.Want) Pair {
	for i, w := range wants {
		id := p.Player(i + 1)
		who := p.Lesson.Player(id)
		who.Serving, who.Receiving = w, w
		p.Lesson = p.Lesson.WithPlayer(id, who)
	}
	return p
}
