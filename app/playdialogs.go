package app

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/widget"

	"homeside/model/edit"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/words"
)

// askRenamePlay asks for the title of the play shown.
func (e *Editor) askRenamePlay() {
	p, ok := e.session.Play()
	if !ok {
		e.say("There is no play to rename.")
		return
	}
	title := newEscapeEntry(p.Title)
	var d *dialog.ConfirmDialog
	done := func(ok bool) {
		d.Hide()
		if ok {
			r := []rune(title.Text)
			e.session.RenamePlay(string(r[:min(len(r), lesson.MaxTitle)]))
		}
	}
	d = dialog.NewCustomConfirm("Title of the play", "Rename", words.T("Cancel"), widget.NewForm(widget.NewFormItem("Title", title)), done, e.win)
	title.cancel = func() { d.Hide() }
	title.OnSubmitted = func(string) { done(true) }
	d.Resize(fyne.NewSize(560, 160))
	d.Show()
	e.win.Canvas().Focus(title)
}

// newLesson shows a lesson with one ordinary play and nobody's names.
func (e *Editor) newLesson() {
	l := lesson.Lesson{Title: words.T("New lesson"), Plays: []lesson.Play{edit.OrdinaryPlay()}}
	for i, id := range game.Players {
		letter := string(rune('A' + i))
		l = l.WithPlayer(id, lesson.Player{Name: words.T("Player %s", letter), Initials: letter})
	}
	e.openLesson(l, "")
	e.trace.say("new lesson")
}
