package panel

import (
	"fmt"
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"homeside/app/session"
)

// keyList is a list that keeps the keys it moves with and hands on the others.
type keyList struct {
	widget.List
	keys func(*fyne.KeyEvent)
}

// TypedKey implements fyne.Focusable.
func (l *keyList) TypedKey(k *fyne.KeyEvent) {
	switch k.Name {
	case fyne.KeyUp, fyne.KeyDown:
		l.List.TypedKey(k)
	default:
		l.keys(k)
	}
}

// PlayPicker is a list of the other plays, those at the score of the play shown
// first: the likely ones to compare it with.
type PlayPicker struct {
	List    *keyList
	session *session.Session
	plays   []int
	picked  func(play int)
}

// NewPlayPicker is a picker of a session's plays; cancel is called on Escape.
func NewPlayPicker(s *session.Session, picked func(play int), cancel func()) *PlayPicker {
	p := &PlayPicker{session: s, picked: picked, plays: likely(s)}
	p.List = &keyList{keys: func(k *fyne.KeyEvent) {
		switch k.Name {
		case fyne.KeyEscape:
			cancel()
		case fyne.KeyReturn, fyne.KeyEnter, fyne.KeySpace:
			p.List.List.TypedKey(&fyne.KeyEvent{Name: fyne.KeySpace})
		}
	}}
	p.List.Length = func() int { return len(p.plays) }
	p.List.CreateItem = func() fyne.CanvasObject { return newPlayRow(false) }
	p.List.UpdateItem = p.fill
	p.List.OnSelected = func(i widget.ListItemID) { p.picked(p.plays[i]) }
	p.List.ExtendBaseWidget(p.List)
	return p
}

// likely are the numbers of the other plays, those at the same score first.
func likely(s *session.Session) []int {
	all := s.Lesson().Plays
	var same, others []int
	for i := range all {
		switch {
		case i == s.PlayIndex():
		case all[i].Situation == all[s.PlayIndex()].Situation:
			same = append(same, i)
		default:
			others = append(others, i)
		}
	}
	return slices.Concat(same, others)
}

func (p *PlayPicker) fill(i widget.ListItemID, o fyne.CanvasObject) {
	l, play := p.session.Lesson(), p.plays[i]
	o.(*playRow).set(PlayName(p.session, play), l.Plays[play], Thumb(l, play))
}

// PlayName is a play's number and title.
func PlayName(s *session.Session, i int) string {
	return fmt.Sprintf("%d. %s", i+1, s.Lesson().Plays[i].Title)
}
