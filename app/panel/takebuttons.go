package panel

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/theme"

	"homeside/app/heard"
	"homeside/app/session"
	"homeside/words"
)

// takeButtons change which takes there are and in which order.
type takeButtons struct {
	box                           fyne.CanvasObject
	add, copy, left, right, erase *heard.Button
}

func (p *Reels) newTakeButtons() *takeButtons {
	s := p.session
	b := &takeButtons{
		add:   p.button("take-add", words.T("Add"), theme.ContentAddIcon(), s.AddTake),
		copy:  p.button("take-copy", words.T("Copy"), theme.ContentCopyIcon(), s.DuplicateTake),
		left:  p.button("take-left", "", theme.NavigateBackIcon(), func() { s.MoveTake(-1) }).Says(func() string { return words.T("Moves the take to before the one on its left") }),
		right: p.button("take-right", "", theme.NavigateNextIcon(), func() { s.MoveTake(1) }).Says(func() string { return words.T("Moves the take to behind the one on its right") }),
		erase: p.button("take-delete", words.T("Delete"), theme.DeleteIcon(), s.DeleteTake),
	}
	b.left.Then, b.right.Then = other(b.right), other(b.left)
	b.erase.Then, b.copy.Then = other(b.add), other(b.add)
	b.box = container.NewGridWithColumns(2, b.add, b.copy, b.left, b.right, b.erase)
	return b
}

// other is a button that gets the keys where the one pressed is off.
func other(b *heard.Button) func() fyne.Focusable { return func() fyne.Focusable { return b } }

// refresh turns off what has no take to work on, and says why.
func (b *takeButtons) refresh(s *session.Session) {
	noPlay, noTake, first, last := "", "", "", ""
	if len(s.Lesson().Plays) == 0 {
		noPlay = words.SentenceOf(words.T("this lesson has no plays"))
	}
	r, _ := s.Reel()
	pick := s.ReelPick()
	if _, ok := s.Take(); !ok {
		noTake = words.T("Pick a take first: a card stays where it is.")
		first, last = noTake, noTake
	} else if pick == 0 {
		first = words.T("This take is the first.")
	}
	if noTake == "" && pick == len(r.Takes)-1 {
		last = words.T("This take is the last.")
	}
	b.add.Unless(noPlay)
	b.copy.Unless(noTake)
	b.erase.Unless(noTake)
	b.left.Unless(first)
	b.right.Unless(last)
}
