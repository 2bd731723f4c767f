package app

import (
	"context"
	"errors"
	"io"
	"path/filepath"
	"strings"

	"homeside/app/session"
	"homeside/export"
	"homeside/model/lesson"
	"homeside/model/lessonfile"
	"homeside/words"
)

// lessonExt ends the names of lesson files.
const lessonExt = ".json"

// askOpen asks for a lesson to open beside those that are open.
func (e *Editor) askOpen() {
	e.askFile(words.T("Open a lesson"), words.T("Open"), e.suggestedPath(), e.open)
}

// open shows the lesson of a file. Those that are open stay as they are.
func (e *Editor) open(path string) { e.openAll([]string{path}) }

// openAll shows the lessons of some files, each in a tab of its own.
func (e *Editor) openAll(paths []string) {
	var read []readFile
	e.background(words.T("Opening…"), func() error {
		read = readAll(paths)
		return nil
	}, func(err error) {
		if err != nil {
			e.say(words.T("Cancelled; nothing was opened."))
			return
		}
		e.showRead(read)
	})
}

// showRead shows what was read and says what could not be.
func (e *Editor) showRead(read []readFile) {
	var bad []readFile
	for _, f := range read {
		if f.err != nil {
			bad = append(bad, f)
			continue
		}
		e.showOne(f)
	}
	switch len(bad) {
	case 0:
	case 1:
		e.fail(bad[0].err, e.stillOpen())
	default:
		e.failAll(bad, len(read))
	}
	for _, f := range bad {
		e.forgetRecent(f.path)
	}
}

func (e *Editor) showOne(f readFile) {
	if f.roster != nil {
		e.openMatchPlan()
		e.setRoster(*f.roster, f.path)
		e.plan.ShowPairs()
	} else if i, ok := e.desk.Find(f.path); ok {
		e.showLesson(i)
	} else {
		e.openLesson(f.lesson, f.path)
		e.stamps[e.desk.Paper(e.desk.Shown()).ID] = f.stamp
	}
	if f.roster == nil {
		e.remember(f.path)
	}
	e.trace.say("opened %s", f.path)
}

// failAll says of several files what is wrong with each.
func (e *Editor) failAll(bad []readFile, of int) {
	const most = 8 // lines that a dialog holds
	var lines []string
	for _, f := range bad[:min(len(bad), most)] {
		e.trace.say("failed %v", f.err)
		lines = append(lines, filepath.Base(f.path)+": "+reason(f.err))
	}
	if len(bad) > most {
		lines = append(lines, "…")
	}
	text := words.T("%d of %d files could not be opened:", len(bad), of) + "\n\n" + strings.Join(lines, "\n")
	if kept := e.stillOpen(); kept != "" {
		text += "\n\n" + kept
	}
	e.inform("Homeside", text)
}

// stillOpen says what has become of the lessons that are open, if any are.
func (e *Editor) stillOpen() string {
	if e.desk.Blank() {
		return ""
	}
	return words.T("The lessons you had open are still here, unchanged.")
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
		path = absolute([]string{path})[0]
		e.unlessExists(path, e.session.Path(), func() { e.saveTo(path, goOn) })
	})
}

// saveTo writes the lesson shown, whole or not at all. Where another program
// has written the file meanwhile it asks first.
func (e *Editor) saveTo(path string, goOn func()) {
	e.session.Cancel()
	id := e.desk.Paper(e.desk.Shown()).ID
	var before stamp
	if path == e.session.Path() {
		before = e.stamps[id]
	}
	e.write(path, before, goOn)
}

// write writes the lesson shown over a file that is as it was stamped.
func (e *Editor) write(path string, before stamp, goOn func()) {
	paper := e.desk.Paper(e.desk.Shown())
	var after stamp
	e.stoppable(words.T("Saving…"), func(ctx context.Context) (err error) {
		if err = before.check(path); err == nil {
			err = writeLesson(ctx, path, paper.Lesson)
		}
		if err == nil {
			after, err = stampOf(path)
		}
		return err
	}, func(err error) {
		switch {
		case errors.Is(err, errChanged):
			e.askOverwrite(path, goOn)
		case err != nil:
			e.saveFailed(err, goOn)
		default:
			e.saved(paper, path, after)
			goOn()
		}
	})
}

// saveFailed says why a lesson could not be saved, what is kept and where, and
// offers to save it elsewhere.
func (e *Editor) saveFailed(err error, goOn func()) {
	e.trace.say("failed %v", err)
	if errors.Is(err, context.Canceled) {
		e.say(words.T("Saving was cancelled."))
		return
	}
	kept := words.T("Your lesson is still open here; save it under another name or in another folder.")
	if e.autosave.keeps() {
		kept += " " + words.T("Its changes are also kept, for a crash, in %s.", briefPath(e.state))
	}
	e.ask("Homeside", explain(err, kept), answer{label: words.T("Close")},
		answer{label: words.T("Save under another name…"), do: func() { e.askSaveAsThen(goOn) }})
}

func (e *Editor) saved(p session.Paper, path string, s stamp) {
	e.stamps[p.ID] = s
	e.desk.Saved(p, path)
	e.remember(path)
	e.title()
	e.noteUnsaved()
	e.say(words.T("Saved %s", path))
	e.trace.say("saved %s", path)
}

// askOverwrite asks what is to become of a file that another program has written.
func (e *Editor) askOverwrite(path string, goOn func()) {
	e.trace.say("changed on disk %s", path)
	e.ask(words.T("Replace the file?"), words.T("%s has been changed by another program since it was opened here. Saving replaces what it has written.", path),
		answer{label: words.T("Cancel")},
		answer{label: words.T("Replace it"), do: func() { e.write(path, stamp{}, goOn) }},
		answer{label: words.T("Save under another name…"), do: func() { e.askSaveAsThen(goOn) }})
}

func writeLesson(ctx context.Context, path string, l lesson.Lesson) error {
	return export.Save(ctx, path, func(w io.Writer) error { return lessonfile.Write(w, l) })
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
	e.ask(words.T("Replace the file?"), words.T("%s exists already.", path), answer{label: words.T("Cancel")}, answer{label: words.T("Replace it"), do: goOn})
}

func (e *Editor) fail(err error, kept string) {
	e.trace.say("failed %v", err)
	e.inform("Homeside", explain(err, kept))
}
