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
)

// lessonExt ends the names of lesson files.
const lessonExt = ".json"

// askOpen asks for a lesson to open; unsaved changes are asked about first.
func (e *Editor) askOpen() {
	e.unlessModified("Open another lesson?", func() {
		askFile(e.win, "Open a lesson", "Open", e.suggestedPath(), e.open)
		e.trace.say("asking Open a lesson")
	})
}

// open shows the lesson of a file. The one shown stays if it cannot be read.
func (e *Editor) open(path string) {
	l, err := lessonfile.Open(path)
	if err != nil {
		e.fail(err, "The lesson you had open is still here, unchanged.")
		return
	}
	e.session.Load(l, path)
	e.trace.say("opened %s", path)
}

func (e *Editor) save() {
	if e.session.Path() == "" {
		e.askSaveAs()
		return
	}
	e.saveTo(e.session.Path())
}

func (e *Editor) askSaveAs() {
	e.askPath("Save the lesson", "Save", e.suggestedPath(), nil, func(path string) {
		if filepath.Ext(path) == "" {
			path += lessonExt
		}
		e.unlessExists(path, e.session.Path(), func() { e.saveTo(path) })
	})
}

// saveTo writes the lesson, whole or not at all.
func (e *Editor) saveTo(path string) {
	e.session.Cancel()
	if err := writeLesson(path, e.session.Lesson()); err != nil {
		e.fail(err, "Your lesson is still open here; save it under another name or in another folder.")
		return
	}
	e.session.Saved(path)
	e.title()
	e.say("Saved " + path)
	e.trace.say("saved %s", path)
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

// unlessModified goes on at once or, when there are unsaved changes, after a yes.
func (e *Editor) unlessModified(question string, goOn func()) {
	if !e.session.Modified() {
		goOn()
		return
	}
	dialog.ShowConfirm(question, "The lesson has changes that are not saved. They will be lost.", func(yes bool) {
		if yes {
			goOn()
		}
	}, e.win)
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

func (e *Editor) quit() {
	e.unlessModified("Close Homeside?", func() {
		e.trace.say("closed")
		e.win.Close()
	})
}

func (e *Editor) fail(err error, kept string) {
	e.trace.say("failed %v", err)
	dialog.ShowInformation("Homeside", explain(err, kept), e.win)
}
