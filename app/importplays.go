package app

import (
	"path/filepath"

	"homeside/app/panel"
	"homeside/words"
)

// askImport lets plays of another lesson be put behind the one shown: of a lesson
// that is open, of a built-in one, or of a file.
func (e *Editor) askImport() { e.importing() }

// importing is askImport with what lets plays be ticked.
func (e *Editor) importing() *panel.PlayImport {
	e.rest()
	var q *question
	var p *panel.PlayImport
	put := func() {
		plays := p.Plays()
		if err := e.session.InsertPlays(words.T("import plays"), plays...); err != nil {
			e.refuse(err)
			return
		}
		e.say(words.T("Imported: %s", words.Plays(len(plays))))
		e.trace.say("imported %d", len(plays))
	}
	ready := func() {
		if q != nil {
			q.lastUnless(p.Hindered())
		}
	}
	p = panel.NewPlayImport(e.importSources(), ready, func() { e.askImportFile(p) }, func() { q.enter() }, func() { q.first() })
	q = e.askWith(words.T("Import plays"), p.Box, answer{label: words.T("Cancel")}, answer{label: words.T("Import"), do: put})
	q.size(640, 620)
	ready()
	q.focus(p.FocusOn())
	return p
}

// importSources are the other lessons that are open, then the built-in ones.
func (e *Editor) importSources() (all []panel.Source) {
	for i, p := range e.desk.Papers() {
		if i != e.desk.Shown() && len(p.Lesson.Plays) > 0 {
			all = append(all, panel.Source{Name: panel.LessonTitle(p.Lesson.Title), Lesson: p.Lesson})
		}
	}
	for _, l := range builtIn() {
		all = append(all, panel.Source{Name: words.T("Built in: %s", l.Title), Lesson: l})
	}
	return all
}

// askImportFile asks for a file and offers its plays.
func (e *Editor) askImportFile(p *panel.PlayImport) {
	e.askFile(words.T("Import from a lesson"), words.T("Choose"), filepath.Join(filepath.Dir(e.suggestedPath()), ""), func(path string) {
		var f readFile
		e.background(words.T("Opening…"), func() error {
			f = readOne(path)
			return f.err
		}, func(err error) {
			if err != nil {
				e.fail(err, words.T("Your lesson is unchanged."))
				return
			}
			p.Add(panel.Source{Name: filepath.Base(path), Lesson: f.lesson})
		})
	})
}
