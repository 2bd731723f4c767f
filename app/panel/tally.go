package panel

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"homeside/app/session"
	"homeside/model/court"
	"homeside/model/lesson"
	"homeside/words"
)

// tally notes what was played in the rally at the walk.
type tally struct {
	box     *fyne.Container
	session *session.Session
	names   [2]*widget.Label
	did     [2]*Dropdown
	went    *Dropdown
}

func newTally(s *session.Session) *tally {
	t := &tally{session: s}
	form := container.NewVBox(widget.NewLabelWithStyle(words.T("What was played"), fyne.TextAlignLeading, fyne.TextStyle{Bold: true}))
	for _, e := range court.Ends {
		t.names[e] = wrapped()
		t.did[e] = NewDropdown(formationNames(), nil)
		t.did[e].OnChanged = func(string) { s.NoteFormation(e, lesson.Formation(t.did[e].SelectedIndex())) }
		form.Add(container.NewGridWithColumns(2, t.names[e], t.did[e]))
	}
	t.went = NewDropdown(returnNames(), nil)
	t.went.OnChanged = func(string) { s.NoteReturn(lesson.ReturnTo(t.went.SelectedIndex())) }
	form.Add(container.NewGridWithColumns(2, widget.NewLabel(words.T("The return went")), t.went))
	t.box = form
	return t
}

func formationNames() (names []string) {
	for _, f := range lesson.Formations {
		names = append(names, words.Formation(f))
	}
	return names
}

func returnNames() (names []string) {
	for _, r := range lesson.ReturnsTo {
		names = append(names, words.ReturnTo(r))
	}
	return names
}

// refresh shows what is noted. Choosing what is noted already changes nothing.
func (t *tally) refresh() {
	r, _ := t.session.Tally()
	for _, e := range court.Ends {
		t.names[e].SetText(words.Team(t.session.Lesson(), e))
		chooseIndex(t.did[e], int(r.Formations[e]))
	}
	chooseIndex(t.went, int(r.Return))
}

func chooseIndex(s *Dropdown, i int) {
	if s.SelectedIndex() != i {
		s.SetSelectedIndex(i)
	}
}
