package app

import (
	"strings"

	"homeside/app/panel"
	"homeside/model/lesson"
	"homeside/words"
)

// showLesson shows another of the open lessons.
func (e *Editor) showLesson(i int) {
	e.court.Cancel()
	e.closeStart()
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
	e.closeStart()
	e.desk.Open(l, path)
}

// openUnsaved shows a lesson that would be lost if it were not saved.
func (e *Editor) openUnsaved(l lesson.Lesson, path string) {
	e.court.Cancel()
	e.closeStart()
	e.desk.OpenUnsaved(l, path)
}

// closeLesson takes a lesson from the window; unsaved changes are asked about first.
func (e *Editor) closeLesson(i int) {
	e.court.Cancel()
	gone := func() {
		e.desk.Close(i)
		e.noteUnsaved()
		if e.desk.Blank() {
			e.openStart()
		}
		e.trace.say("lesson closed, %d open", e.desk.Len())
	}
	if !e.desk.Paper(i).Modified {
		gone()
		return
	}
	e.showLesson(i)
	e.askUnsaved(words.T("Close this lesson?"), []int{i}, gone)
}

// quit closes the window, after what may be lost was asked about.
func (e *Editor) quit() {
	if e.exports.Busy() {
		e.ask(words.T("Close Homeside?"), words.T("An export is under way. Closing cancels it, and nothing of it is written."),
			answer{label: words.T("Cancel the export and close"), do: e.close}, answer{label: words.T("Go on exporting")})
		return
	}
	e.close()
}

func (e *Editor) close() {
	e.askUnsaved(words.T("Close Homeside?"), e.desk.Modified(), func() {
		if e.autosave != nil {
			e.autosave.close()
		}
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
	text := words.T("These lessons have changes that are in no file yet:")
	if len(unsaved) == 1 {
		text = words.T("This lesson has changes that are in no file yet:")
	}
	e.ask(question, text+"\n"+strings.Join(names, "\n"),
		answer{label: words.T("Cancel")}, answer{label: words.T("Do not save"), do: goOn}, answer{label: words.T("Save"), do: func() { e.saveThese(unsaved, goOn) }})
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
