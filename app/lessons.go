package app

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/widget"

	"homeside/app/panel"
	"homeside/model/lesson"
	"homeside/words"
)

// showLesson shows another of the open lessons.
func (e *Editor) showLesson(i int) {
	e.court.Cancel()
	e.desk.Show(i)
	e.trace.say("lesson %d of %d: %s", e.desk.Shown()+1, e.desk.Len(), e.session.Lesson().Title)
}

func (e *Editor) stepLesson(by int) {
	n := e.desk.Len()
	e.showLesson(((e.desk.Shown()+by)%n + n) % n)
}

// openLesson shows a lesson in a tab of its own; path is empty if it has no file.
func (e *Editor) openLesson(l lesson.Lesson, path string) {
	e.court.Cancel()
	e.desk.Open(l, path)
}

// closeLesson takes a lesson from the window; unsaved changes are asked about first.
func (e *Editor) closeLesson(i int) {
	e.court.Cancel()
	gone := func() {
		e.desk.Close(i)
		e.trace.say("lesson closed, %d open", e.desk.Len())
	}
	if !e.desk.Paper(i).Modified {
		gone()
		return
	}
	e.showLesson(i)
	e.askUnsaved(words.T("Close this lesson?"), []int{i}, gone)
}

func (e *Editor) quit() {
	e.askUnsaved(words.T("Close Homeside?"), e.desk.Modified(), func() {
		e.trace.say("closed")
		e.win.Close()
	})
}

// askUnsaved goes on at once where nothing is unsaved, or after an answer that
// saves the lessons or lets them go.
func (e *Editor) askUnsaved(question string, unsaved []int, goOn func()) {
	if len(unsaved) == 0 {
		goOn()
		return
	}
	var names []string
	for _, i := range unsaved {
		names = append(names, "• "+panel.LessonTitle(e.desk.Paper(i).Lesson.Title))
	}
	text := widget.NewLabel(words.T("These lessons have changes that are in no file yet:") + "\n" + strings.Join(names, "\n"))
	text.Wrapping = fyne.TextWrapWord
	var d *dialog.CustomDialog
	answer := func(label string, then func()) *widget.Button {
		return widget.NewButton(label, func() { d.Hide(); then() })
	}
	save := answer(words.T("Save"), func() { e.saveThese(unsaved, goOn) })
	save.Importance = widget.HighImportance
	d = dialog.NewCustomWithoutButtons(question, container.NewPadded(text), e.win)
	d.SetButtons([]fyne.CanvasObject{answer(words.T("Cancel"), func() {}), answer(words.T("Do not save"), goOn), save})
	d.Resize(fyne.NewSize(460, 200))
	d.Show()
	e.win.Canvas().Focus(save)
	e.trace.say("asking about unsaved lessons")
	e.traceNamed(map[string]fyne.CanvasObject{"unsaved-save": save})
}

// saveThese saves one lesson after the other and goes on when all are in their
// files; those without one are asked about.
func (e *Editor) saveThese(these []int, goOn func()) {
	if len(these) == 0 {
		goOn()
		return
	}
	e.showLesson(these[0])
	e.saveThen(func() { e.saveThese(these[1:], goOn) })
}
