package plan

import (
	"fmt"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
)

// Pair is whose plan it is.
type Pair struct {
	Lesson lesson.Lesson // the persons with their wishes, hands and paces, the venue; its plays and its match do not count
	Team   court.End
	Policy Policy
}

// Player is one of the pair, by number.
func (p Pair) Player(number int) game.Player { return game.PlayerOf(p.Team, number) }

// want is the side that one of the pair wants.
func (p Pair) want(id game.Player, serving bool) lesson.Want {
	if serving {
		return p.Lesson.Player(id).Serving
	}
	return p.Lesson.Player(id).Receiving
}

// WantedRight is who is to end on the right when the pair serves or receives;
// false if neither minds.
func (p Pair) WantedRight(serving bool) (game.Player, bool) {
	for i := range 2 {
		id := p.Player(i + 1)
		switch p.want(id, serving) {
		case lesson.WantRight:
			return id, true
		case lesson.WantLeft:
			return id.Partner(), true
		}
	}
	return p.Player(1), false
}

// Check says what is wrong with the pair: an ErrWants if both want one side, an
// ErrPolicy.
func (p Pair) Check() error {
	for _, serving := range [2]bool{true, false} {
		one, two := p.Player(1), p.Player(2)
		if w := p.want(one, serving); w != lesson.Either && w == p.want(two, serving) {
			when := "receiving"
			if serving {
				when = "serving"
			}
			return fmt.Errorf("%w: %s and %s both want the %v side when %s", ErrWants, p.Lesson.NameOf(one), p.Lesson.NameOf(two), w, when)
		}
	}
	return p.Policy.Check()
}

// formation is what the pair does at a state by its policy. Where nobody swaps
// sides the pair chooses them once, before the game, and never stacks.
func (p Pair) formation(s game.State) lesson.Formation {
	serving, lead := p.lead(s)
	right, minds := p.WantedRight(serving)
	if !minds || right == s.On(p.Team, court.Right) || !s.Format().SwapsSides() {
		return lesson.Ordinary
	}
	return p.Policy.at(serving, lead)
}

// lead is whether the pair serves and who of it serves or receives.
func (p Pair) lead(s game.State) (serving bool, lead game.Player) {
	if s.Serving() == p.Team {
		return true, s.Server()
	}
	return false, s.Receiver()
}

// moves says whether a formation takes the partners to each other's sides.
func moves(f lesson.Formation) bool { return f == lesson.Stacked || f == lesson.Switched }
