package formation

import (
	"errors"
	"fmt"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
)

// ErrRefused is what every refusal wraps: the formation makes no sense as asked.
var ErrRefused = errors.New("formation refused")

// Refusal is a refusal in plain words: a text and what its verbs (see fmt) stand
// for, so that it can be said with names and in another language.
type Refusal struct {
	Text string
	Args []any
}

func (r Refusal) Error() string { return fmt.Sprintf(r.Text, r.Args...) }
func (r Refusal) Unwrap() error { return ErrRefused }

func refuse(format string, args ...any) error { return Refusal{format, args} }

// Moves says whether the partners end on the sides that the score does not give.
func Moves(k Kind) bool { return k == lesson.Stacked || k == lesson.Switched }

// check says why a kind makes no sense in a situation; nil if it does.
func (s Situation) check(k Kind) error {
	if s.State.Over() {
		return refuse("the game is over at %v: nobody serves", s.State.Call())
	}
	if k == lesson.FormationUnsaid || int(k) >= len(lesson.Formations) {
		return refuse("formation %q: want ordinary, stack, switch, stay or poach", k)
	}
	if s.Lob && s.Third == DriveAtRunner || k == lesson.Poached && (s.Lob || s.Third == DriveAtRunner) {
		return refuse("one ball cannot be played in two ways: choose the drive, the lob or the poach")
	}
	for _, check := range [...]func(Kind) error{s.checkWants, s.checkFront, s.checkRoom} {
		if err := check(k); err != nil {
			return err
		}
	}
	return nil
}

// checkWants: partners cannot end on one side, and who stands on the wanted side
// already has no reason to move.
func (s Situation) checkWants(k Kind) error {
	lead := s.Lead()
	mate := lead.Partner()
	a, b := s.Want(lead), s.Want(mate)
	if a != lesson.Either && a == b {
		return refuse("%v and %v both want the %v side: one of them has to take the other", min(lead, mate), max(lead, mate), a)
	}
	if !Moves(k) {
		return nil
	}
	for _, id := range [2]game.Player{lead, mate} {
		if want, ok := sideOf(s.Want(id)); ok && want == s.State.SideOf(id) {
			return refuse("%v already stands on the %v, where %v wants to be: no need to %v", id, want, id, k)
		}
	}
	return nil
}

// checkRoom: a stacked receiver's partner needs room beside the court, partners
// who cross on the serve room behind it.
func (s Situation) checkRoom(k Kind) error {
	_, behind := s.room()
	if _, ok := s.offCourt(); k == lesson.Stacked && !s.Serves() && !ok {
		return refuse("no room to stand beside the court for a stack on the return: switch instead")
	}
	if k == lesson.Switched && s.Serves() && behind < serverBehind+passApart {
		return refuse("no room behind the baseline for the partner to pass behind the server: stack instead")
	}
	return nil
}

// sideOf is the side that a wish names; false for one who does not mind.
func sideOf(w lesson.Want) (court.Side, bool) {
	return court.Side(w - lesson.WantRight), w != lesson.Either
}

// checkFront: on the serve the server goes in front and the partner behind, on
// the return the partner at the kitchen line goes in front.
func (s Situation) checkFront(k Kind) error {
	if s.Front == nil {
		return nil
	}
	front, ok := s.front(k)
	switch {
	case s.Front.Team() != s.Team:
		return refuse("%v is not of the %v team", *s.Front, s.Team)
	case !ok:
		return refuse("nobody changes sides in this formation (%v): there is no order to state", k)
	case *s.Front == front:
		return nil
	case s.Serves():
		return refuse("%v cannot go in front: %v stands at the baseline and the partner passes behind, since nobody may be inside until the return has bounced", *s.Front, front)
	default:
		return refuse("%v cannot go in front: %v is at the kitchen line and %v comes from behind the baseline", *s.Front, front, *s.Front)
	}
}

// front is who goes in front where partners change sides; false where nobody does.
func (s Situation) front(k Kind) (game.Player, bool) {
	lead := s.Lead()
	switch {
	case Moves(k) && s.Serves():
		return lead, true
	case Moves(k) || k == lesson.Poached && !s.Serves():
		return lead.Partner(), true
	}
	return 0, false
}
