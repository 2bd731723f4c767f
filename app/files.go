package app

import (
	"context"
	"io"
	"path/filepath"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/dialog"

	"homeside/export"
	"homeside/model/lesson"
	"homeside/model/lessonfile"
	"homeside/words"
)

// lessonExt ends the names of lesson files.
const lessonExt = ".json"

// askOpen asks for a lesson to open beside those that are open.
func (e *Editor) askOpen() {
	askFile(e.win, words.T("Open a lesson"), words.T("Open"), e.suggestedPath(), e.open)
	e.trace.say("asking Open a lesson")
}

// open shows the lesson of a file. Those that are open stay as they are.
func (e *Editor) open(path string) {
	if i, ok := e.desk.Find(path); ok {
		e.showLesson(i)
		return
	}
	l, err := lessonfile.Open(path)
	if err != nil {
		e.fail(err, words.T("The lessons you had open are still here, unchanged."))
		return
	}
	e.openLesson(l, path)
	e.trace.say("opened %s", path)
}

func (e *Editor) save() { e.saveThen(func() {}) }

// saveThen saves the lesson shown, asking for a file where it has none, and goes
// on when it is there.
func (e *Editor) saveThen(goOn func()) {
	if e.session.Path() == "" {
		e.askSaveAsThen(goOn)
		return
	}
	e.saveTo(e.session.Path(), goOn)
}

func (e *Editor) askSaveAs() { e.askSaveAsThen(func() {}) }

func (e *Editor) askSaveAsThen(goOn func()) {
	e.askPath(words.T("Save the lesson"), words.T("Save"), e.suggestedPath(), nil, func(path string) {
		if filepath.Ext(path) == "" {
			path += lessonExt
		}
		e.unlessExists(path, e.session.Path(), func() { e.saveTo(path, goOn) })
	})
}

// saveTo writes the lesson, whole or not at all.
func (e *Editor) saveTo(path string, goOn func()) {
	e.session.Cancel()
	if err := writeLesson(path, e.session.Lesson()); err != nil {
		e.fail(err, words.T("Your lesson is still open here; save it under another name or in another folder."))
		return
	}
	e.session.Saved(path)
	e.title()
	e.say(words.T("Saved %s", path))
	e.trace.say("saved %s", path)
	goOn()
}

// askPath shows a path dialog over the window.
func (e *Editor) askPath(title, confirm, path string, extra fyne.CanvasObject, accept func(string)) {
	askPath(e.win, title, confirm, path, extra, accept)
	e.trace.say("asking %s", title)
}

func writeLesson(path string, l lesson.Lesson) error {
	return export.Save(context.Background(), path, func(w io.Writer) error { return lessonfile.Write(w, l) })
}

// suggestedPath is the lesson's own path or one made from its title.
func (e *Editor) suggestedPath() string {
	if p := e.session.Path(); p != "" {
		return p
	}
	return filepath.Join(documents(), fileName(e.session.Lesson().Title)+lessonExt)
}

// fileName is a title as a file name: letters and digits, words joined by hyphens.
func fileName(title string) string {
	words := strings.FieldsFunc(strings.ToLower(title), func(r rune) bool {
		return !(r >= 'a' && r <= 'z' || r >= '0' && r <= '9' || r > 127)
	})
	if len(words) == 0 {
		return "lesson"
	}
	return strings.Join(words, "-")
}

// unlessExists goes on at once or, when a file other than own would be replaced, after a yes.
func (e *Editor) unlessExists(path, own string, goOn func()) {
	if path == own || !exists(path) {
		goOn()
		return
	}
	dialog.ShowConfirm("Replace the file?", path+" exists already.", func(yes bool) {
		if yes {
			goOn()
		}
	}, e.win)
}

func (e *Editor) fail(err error, kept string) {
	e.trace.say("failed %v", err)
	dialog.ShowInformation("Homeside", explain(err, kept), e.win)
}
